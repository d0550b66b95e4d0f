/** Which state the picture shows: all off, the heater alone, everything on. */
import type { GasState } from '@firstfire/job';
import { useText } from '../text/use-text.tsx';

const STATES = ['all-off', 'heater-alone', 'everything-on'] as const satisfies readonly GasState[];

interface StateChoiceProps {
  readonly state: GasState;
  readonly onChange: (state: GasState) => void;
}

export function StateChoice({ state, onChange }: StateChoiceProps) {
  const text = useText();
  return (
    <fieldset className="gas-states">
      <legend className="sr">{text.phrase('gas.state')}</legend>
      {STATES.map((one) => (
        <label key={one} className={one === state ? 'chosen' : ''}>
          <input type="radio" name="gas-state" checked={one === state} onChange={() => onChange(one)} />
          {text.phrase(`gas-state.${one}`)}
        </label>
      ))}
    </fieldset>
  );
}
