/** Which state of the loop is looked at: pump speed, basin where the speed serves several, filter clean or due. */
import { useText } from '../text/use-text.tsx';
import { rpmText } from './figures.ts';
import { nameIn } from './names.ts';
import type { Water } from './use-water.ts';

export function StateChoice({ water }: { readonly water: Water }) {
  const text = useText();
  const { picture, look, change } = water;
  const here = picture.states.filter((one) => one.speed === look.speed && one.filter === 'clean');
  const speeds = picture.speeds.filter(({ id }) => picture.states.some((one) => one.speed === id));
  return (
    <div className="water-choices">
      <Choice
        name="water-speed"
        legend={text.phrase('water.speed')}
        value={look.speed}
        options={speeds.map(({ id, speed }) => [id, rpmText(speed, text)])}
        onChange={(speed) => change({ speed })}
      />
      {here.length > 1 && (
        <Choice
          name="water-basin"
          legend={text.phrase('water.basin')}
          value={look.basin}
          options={here.map(({ basin }) => [basin, nameIn(picture.basins, basin, { kind: 'basins', text })])}
          onChange={(basin) => change({ basin })}
        />
      )}
      <Choice
        name="water-filter"
        legend={text.phrase('water.filter')}
        value={look.filter}
        options={[
          ['clean', text.phrase('water.filter-clean')],
          ['dirty', text.phrase('water.filter-dirty')],
        ]}
        onChange={(filter) => change({ filter: filter === 'dirty' ? 'dirty' : 'clean' })}
      />
    </div>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly legend: string;
  readonly value: string;
  readonly options: readonly (readonly [id: string, label: string])[];
  readonly onChange: (id: string) => void;
}

export function Choice({ name, legend, value, options, onChange }: ChoiceProps) {
  return (
    <fieldset className="choice-row">
      <legend className="sr">{legend}</legend>
      {options.map(([id, label]) => (
        <label key={id} className={id === value ? 'chosen' : ''}>
          <input type="radio" name={name} checked={id === value} onChange={() => onChange(id)} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
