/** A junction in hand: what can go on from here. */
import type { GasHung, GasNode } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { ReadingLine } from '../ui/reading-line.tsx';
import { hungName, nodesOf, SUPPLY } from './names.ts';
import type { PanelProps } from './part-panel.tsx';
import { SupplyPad } from './supply-pad.tsx';

const SUPPLY_READINGS = [
  'fuel',
  'setPressure',
  'lockUpPressure',
  'meterBadge',
  'meterBadgeDrop',
  'regulatorCapacity',
  'regulatorDroop',
  'existingLoad',
] as const;

export function NodePanel(props: PanelProps & { readonly node: GasNode }) {
  const { node } = props;
  return (
    <>
      {node.id === SUPPLY && <SupplyPad picture={props.picture} state={props.state} />}
      <NodeActions {...props} node={node.id} />
      {node.id === SUPPLY &&
        SUPPLY_READINGS.map((field) => <ReadingLine key={field} path={`gasSupply/-/${field}`} />)}
    </>
  );
}

/** Pipe, appliance, or something that is there already and hangs elsewhere or nowhere. */
export function NodeActions({ picture, node, draw }: PanelProps & { readonly node: string }) {
  const text = useText();
  const { links, hung } = picture.loose;
  const elsewhere = nodesOf(picture.root)
    .filter((one) => one.id !== node)
    .flatMap((one) => one.hung);
  const sections = links.filter((link) => link.type === 'section');
  return (
    <div className="gas-actions">
      <button type="button" className="button main" onClick={() => draw((drawing) => drawing.pipe(node))}>
        {text.phrase('gas.add-pipe')}
      </button>
      <button
        type="button"
        className="button main"
        onClick={() => draw((drawing) => drawing.appliance(node))}
      >
        {text.phrase('gas.add-appliance')}
      </button>
      {sections.map((link) => (
        <button
          key={link.id}
          type="button"
          className="button plain"
          onClick={() => draw((drawing) => drawing.pipe(node, link.id))}
        >
          {text.phrase('gas.connect', { name: link.name || text.phrase('gas.section') })}
        </button>
      ))}
      {hung.map((one) => (
        <Hang key={`${one.kind} ${one.id}`} one={one} says="gas.hang" {...{ node, draw }} />
      ))}
      {elsewhere.length > 0 && (
        <details className="gas-moves">
          <summary>{text.phrase('gas.move-here')}</summary>
          <div className="gas-actions">
            {elsewhere.map((one) => (
              <Hang key={`${one.kind} ${one.id}`} one={one} says="gas.move" {...{ node, draw }} />
            ))}
          </div>
        </details>
      )}
    </div>
  );
}

interface HangProps extends Pick<PanelProps, 'draw'> {
  readonly one: GasHung;
  readonly node: string;
  readonly says: 'gas.hang' | 'gas.move';
}

function Hang({ one, node, says, draw }: HangProps) {
  const text = useText();
  return (
    <button type="button" className="button plain" onClick={() => draw((drawing) => drawing.hang(one, node))}>
      {text.phrase(says, { name: hungName(one, text) })}
    </button>
  );
}
