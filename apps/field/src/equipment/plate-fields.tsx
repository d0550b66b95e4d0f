/** The fields of a plate on its drawing, part by part, and below it what only the instructions say. */
import { useText } from '../text/use-text.tsx';
import type { EquipmentKind } from './library.ts';
import { PLATES } from './plate.ts';
import { PlateCell } from './plate-cell.tsx';
import { PlateFrame } from './plate-picture.tsx';

export interface PlateFieldsProps {
  readonly kind: EquipmentKind;
  readonly id: string;
  /** Address where a field is entered. */
  readonly hrefOf: (field: string) => string;
  readonly onOpen?: (field: string) => void;
  /** How many findings wait for a field. */
  readonly settlesOf?: (field: string) => number;
}

export function PlateFields(props: PlateFieldsProps) {
  const text = useText();
  const { plate, instructions } = PLATES[props.kind] ?? { plate: [], instructions: [] };
  return (
    <>
      <PlateFrame label={text.phrase('plate')}>
        {plate.map(({ part, fields }) => (
          <section key={part} className="plate-part" aria-label={text.phrase(`plate-part.${part}`)}>
            <h2>{text.phrase(`plate-part.${part}`)}</h2>
            <Cells {...props} fields={fields} />
          </section>
        ))}
      </PlateFrame>
      <section className="plate-instructions">
        <h2>{text.phrase('plate-instructions')}</h2>
        <Cells {...props} fields={instructions} />
      </section>
    </>
  );
}

function Cells({
  kind,
  id,
  fields,
  hrefOf,
  onOpen,
  settlesOf,
}: PlateFieldsProps & { readonly fields: readonly string[] }) {
  return (
    <div className="plate-cells">
      {fields.map((field) => (
        <PlateCell
          key={field}
          at={{ collection: kind, id, field }}
          href={hrefOf(field)}
          onOpen={() => onOpen?.(field)}
          settles={settlesOf?.(field) ?? 0}
        />
      ))}
    </div>
  );
}
