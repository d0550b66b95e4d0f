/** Where a part begins or hangs, said and changed in one: all junctions it may go to. */
import type { GasBranch, GasLink, GasNode, GasPicture } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { nodeLabel, nodesOf } from './names.ts';
import type { PanelProps } from './part-panel.tsx';

interface LinkPlaceProps extends Pick<PanelProps, 'picture' | 'draw'> {
  readonly link: GasLink;
}

/** Where a section or regulator begins; with another choice it moves there, and all behind it. */
export function LinkPlace({ picture, link: { type, id }, draw }: LinkPlaceProps) {
  const text = useText();
  const near = nodesOf(picture.root).find(({ branches }) => branches.some(isOwn));
  if (near === undefined || type === 'meter') return null;
  return (
    <PlaceChoice
      picture={picture}
      label={text.phrase('gas.begins-at')}
      at={near.id}
      behind={near.branches.find(isOwn)?.end}
      onMove={(node) => draw((drawing) => drawing.move(type, id, node))}
    />
  );

  function isOwn({ link }: GasBranch): boolean {
    return link.type === type && link.id === id;
  }
}

interface PlaceProps {
  readonly picture: GasPicture;
  readonly label: string;
  /** Id of the junction where it is now. */
  readonly at: string;
  /** What cannot be gone to: what lies behind the part itself. */
  readonly behind?: GasNode | undefined;
  readonly onMove: (node: string) => void;
}

export function PlaceChoice({ picture, label, at, behind, onMove }: PlaceProps) {
  const text = useText();
  const own = new Set(behind === undefined ? [] : nodesOf(behind).map(({ id }) => id));
  const reached = reachedBy(picture.root);
  const places = nodesOf(picture.root).filter(({ id }) => !own.has(id));
  if (places.length < 2) return null;
  return (
    <div className="gas-place">
      <span className="second" aria-hidden="true">
        {label}
      </span>
      <select
        className="stage"
        aria-label={label}
        value={at}
        onChange={(event) => onMove(event.target.value)}
      >
        {places.map((node) => (
          <option key={node.id} value={node.id}>
            {[nodeLabel(node, text, picture.metered), reached.get(node.id)].filter(Boolean).join(' · ')}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The section or regulator by which a junction is reached: there may be many joints. */
function reachedBy(root: GasNode): ReadonlyMap<string, string> {
  const branches = nodesOf(root).flatMap((node) => node.branches);
  return new Map(branches.map(({ link, end }) => [end.id, link.name]));
}
