/** A junction in hand: what can go on from here. */
import type { GasNode } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { hungName, nodesOf, SUPPLY } from './names.ts';
import type { PanelProps } from './part-panel.tsx';
import { ReadingLine } from './reading-line.tsx';

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
      {[...hung, ...elsewhere].map((one) => (
        <button
          key={`${one.kind} ${one.id}`}
          type="button"
          className="button plain"
          onClick={() => draw((drawing) => drawing.hang(one, node))}
        >
          {text.phrase(hung.includes(one) ? 'gas.hang' : 'gas.move', { name: hungName(one, text) })}
        </button>
      ))}
    </div>
  );
}
