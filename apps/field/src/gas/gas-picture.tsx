/** The gas line as a picture: pressures along the way to the heater, and the piping drawn and changed by tapping. */
import type { GasHeaterSeen, GasState, GasPicture as Picture } from '@firstfire/job';
import { useState } from 'react';
import { useText } from '../text/use-text.tsx';
import { heaterName } from './names.ts';
import { PartPanel } from './part-panel.tsx';
import { Staircase } from './staircase.tsx';
import { StateChoice } from './state-choice.tsx';
import { Tree } from './tree.tsx';
import { useDraw, useGasPicture, usePart, usePlusMinus } from './use-gas.ts';
import { Values, Waiting } from './values.tsx';
import './gas.css';

export default function GasPicture() {
  const text = useText();
  const [state, setState] = useState<GasState>('everything-on');
  const [chosen, setChosen] = useState<string | undefined>();
  const [part, take] = usePart();
  const picture = useGasPicture(chosen);
  const plusMinus = usePlusMinus(picture.heater?.id);
  const draw = useDraw(take);
  if (!picture.drawn) return <Blank onBegin={() => draw((drawing) => drawing.begin())} />;
  const { heater } = picture;
  return (
    <div className="gas-picture">
      <p className="second">{text.phrase(`gas-fuel.${picture.fuel}`)}</p>
      {picture.heaters.length > 1 && <HeaterChoice picture={picture} heater={heater} onChange={setChosen} />}
      <StateChoice state={state} onChange={setState} />
      {heater !== undefined && (
        <>
          <Values picture={picture} heater={heater} state={state} plusMinus={plusMinus} />
          {heater.way.length > 0 && (
            <Staircase {...{ picture, heater, state, plusMinus, part }} onTake={take} />
          )}
        </>
      )}
      <Waiting picture={picture} state={state} />
      <h2>{text.phrase('gas.piping')}</h2>
      <Tree picture={picture} state={state} part={part} onTake={take} />
      {part !== undefined && (
        <PartPanel
          key={`${part.type} ${part.id}`}
          {...{ picture, state, part, draw }}
          onClose={() => take(undefined)}
        />
      )}
    </div>
  );
}

interface HeaterChoiceProps {
  readonly picture: Picture;
  readonly heater: GasHeaterSeen | undefined;
  readonly onChange: (id: string) => void;
}

function HeaterChoice({ picture, heater, onChange }: HeaterChoiceProps) {
  const text = useText();
  return (
    <select
      className="stage"
      aria-label={text.phrase('gas.which-heater')}
      value={heater?.id}
      onChange={(event) => onChange(event.target.value)}
    >
      {picture.heaters.map((one) => (
        <option key={one.id} value={one.id}>
          {heaterName(one, text)}
        </option>
      ))}
    </select>
  );
}

/** Nothing is drawn yet: the ghost of the picture, one sentence, one button. */
function Blank({ onBegin }: { readonly onBegin: () => void }) {
  const text = useText();
  return (
    <div className="gas-blank">
      <svg viewBox="0 0 340 120" aria-hidden="true">
        <path className="gas-ghost" d="M20 30H100L180 50 260 72 320 84" />
        <path className="gas-ghost" d="M20 98H320" />
        {[20, 100, 180, 260, 320].map((x, i) => (
          <circle key={x} className="gas-ghost" cx={x} cy={[30, 30, 50, 72, 84][i]} r="6" />
        ))}
      </svg>
      <p>{text.phrase('gas.blank')}</p>
      <button type="button" className="button main" onClick={onBegin}>
        {text.phrase('gas.begin')}
      </button>
    </div>
  );
}
