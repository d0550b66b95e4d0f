/** An appliance, a heater or the lump of all others in hand: its input, its name, and what goes on from where it hangs. */
import type { GasHung } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';
import { ReadingLine } from '../ui/reading-line.tsx';
import { NameField } from './name-field.tsx';
import { nodesOf } from './names.ts';
import { NodeActions } from './node-panel.tsx';
import type { PanelProps } from './part-panel.tsx';
import { PlaceChoice } from './place-choice.tsx';

const USUAL = ['range', 'furnace', 'water-heater', 'dryer', 'fireplace', 'grill', 'generator'] as const;

export function HungPanel(props: PanelProps & { readonly hung: GasHung }) {
  const { hung, picture, draw } = props;
  const text = useText();
  const node = nodesOf(picture.root).find((one) => one.hung.includes(hung));
  const isNamed = hung.name !== hung.id;
  const collection = hung.kind === 'heater' ? 'heaters' : 'gasAppliances';
  return (
    <>
      <ReadingLine path={hung.inputReading} />
      {hung.kind === 'heater' && (
        <>
          <ReadingLine path={`heaters/${hung.id}/inletLeast`} />
          <ReadingLine path={`heaters/${hung.id}/inletGreatest`} />
        </>
      )}
      {hung.kind === 'appliance' && <ReadingLine path={`gasAppliances/${hung.id}/least`} />}
      {hung.kind !== 'lump' && (
        <NameField
          collection={collection}
          id={hung.id}
          name={isNamed ? hung.name : ''}
          usual={hung.kind === 'appliance' ? USUAL.map((one) => text.phrase(`gas-usual.${one}`)) : []}
        />
      )}
      {node !== undefined && (
        <PlaceChoice
          picture={picture}
          label={text.phrase('gas.hangs-at')}
          at={node.id}
          onMove={(to) => draw((drawing) => drawing.hang(hung, to))}
        />
      )}
      {node !== undefined && <NodeActions {...props} node={node.id} />}
      {hung.kind !== 'lump' && (
        <div className="gas-actions">
          {node !== undefined && (
            <button
              type="button"
              className="button plain"
              onClick={() => draw((drawing) => drawing.ownPipe(hung, node.id))}
            >
              {text.phrase('gas.own-pipe')}
            </button>
          )}
          <button
            type="button"
            className="button plain"
            onClick={() => draw((drawing) => drawing.removeLoad(hung))}
          >
            {text.phrase(hung.kind === 'heater' ? 'gas.take-off' : 'gas.remove')}
          </button>
        </div>
      )}
    </>
  );
}
