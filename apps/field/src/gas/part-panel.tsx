/** The part in hand: what it is, what it does, and everything that can be changed of it, at the foot of the screen. */
import type { GasBranch, GasHung, GasLink, GasNode, GasPart, GasPicture, GasState } from '@firstfire/job';
import { useEffect, useRef } from 'react';
import { useText } from '../text/use-text.tsx';
import { UndoButtons } from '../ui/undo-buttons.tsx';
import { HungPanel } from './hung-panel.tsx';
import { hungName, nodeLabel, nodesOf } from './names.ts';
import { NodePanel } from './node-panel.tsx';
import { RegulatorPanel } from './regulator-panel.tsx';
import { SectionPanel } from './section-panel.tsx';
import type { Draw } from './use-gas.ts';

export interface PanelProps {
  readonly picture: GasPicture;
  readonly state: GasState;
  readonly part: GasPart;
  readonly draw: Draw;
  readonly onClose: () => void;
}

export function PartPanel(props: PanelProps) {
  const { picture, part, onClose } = props;
  const text = useText();
  const place = useRef<HTMLElement>(null);
  const found = partOf(picture, part);
  const title = found === undefined ? '' : titleOf(found, picture, text);
  useEffect(() => {
    const row = (): HTMLElement | null => document.getElementById(`gas-${part.type}-${part.id}`);
    place.current?.focus({ preventScroll: true });
    keepInSight(place.current, row());
    // Its row may have gone with it.
    return () =>
      (row() ?? document.querySelector<HTMLElement>('.gas-line .gas-row'))?.focus({ preventScroll: true });
  }, [part.type, part.id]);
  const isGone = found === undefined;
  useEffect(() => {
    if (isGone) onClose();
  }, [isGone, onClose]);
  useEffect(() => {
    // What had the focus may be gone after a repaint: a name once taken, a button that does not apply any more.
    if (document.activeElement === document.body) place.current?.focus({ preventScroll: true });
  });
  if (found === undefined) return null;
  return (
    <section
      ref={place}
      className="gas-panel"
      aria-label={title}
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <header>
        <h3>{title}</h3>
        <UndoButtons />
        <button type="button" className="icon-button" aria-label={text.phrase('gas.close')} onClick={onClose}>
          <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
            <path d="m5 5 14 14m0-14L5 19" fill="none" stroke="currentColor" strokeWidth="2.5" />
          </svg>
        </button>
      </header>
      {'branches' in found && <NodePanel {...props} node={found} />}
      {'kind' in found && <HungPanel {...props} hung={found} />}
      {'fittings' in found && found.type === 'section' && <SectionPanel {...props} link={found} />}
      {'fittings' in found && found.type === 'regulator' && <RegulatorPanel {...props} link={found} />}
    </section>
  );
}

/** What the panel is about stays in sight above it: the foot of the picture, or the row of the list. */
function keepInSight(panel: HTMLElement | null, row: HTMLElement | null): void {
  const onWay = document.querySelector('.gas-stretch[aria-pressed="true"]') !== null;
  const seen = onWay ? document.querySelector('.gas-way') : row;
  if (panel === null || seen === null) return;
  const below = seen.getBoundingClientRect().bottom + 6 - panel.getBoundingClientRect().top;
  window.scrollBy({ top: onWay ? below : Math.max(0, below), behavior: 'instant' });
}

type Found = GasNode | GasLink | GasHung;

/** The part by its name; gone when somebody took it away meanwhile. */
function partOf(picture: GasPicture, { type, id }: GasPart): Found | undefined {
  const nodes = nodesOf(picture.root);
  if (type === 'node') return nodes.find((one) => one.id === id);
  if (type === 'section' || type === 'regulator') {
    const branches: readonly GasBranch[] = nodes.flatMap((one) => one.branches);
    const links = [...branches.map(({ link }) => link), ...picture.closing, ...picture.loose.links];
    return links.find((link) => link.type === type && link.id === id);
  }
  const hung = [...nodes.flatMap((one) => one.hung), ...picture.loose.hung];
  return hung.find((one) => one.kind === type && one.id === id);
}

function titleOf(found: Found, picture: GasPicture, text: ReturnType<typeof useText>): string {
  if ('branches' in found) return nodeLabel(found, text, picture.metered);
  if ('kind' in found) return hungName(found, text);
  return found.name || text.phrase(found.type === 'regulator' ? 'gas.regulator' : 'gas.section');
}
