/** A junction in hand: what can go on from here. */
import type { GasNode } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { ReadingLine } from '../ui/reading-line.tsx';
import { hungName, SUPPLY } from './names.ts';
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
        <button
          key={`${one.kind} ${one.id}`}
          type="button"
          className="button plain"
          onClick={() => draw((drawing) => drawing.hang(one, node))}
        >
          {text.phrase('gas.hang', { name: hungName(one, text) })}
        </button>
      ))}
    </div>
  );
}
