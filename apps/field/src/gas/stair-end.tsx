/** What arrives at the heater: its dot, coloured by whether it is enough, the ± as a bracket beside it. */
import type { ByState, GasHeaterSeen } from '@firstfire/job';
import type { Stair } from './stair.ts';
import type { StairPart } from './stair-ground.tsx';
import { isEnough } from './verdict.ts';

export interface StairEndProps extends StairPart {
  readonly heater: GasHeaterSeen;
  readonly plusMinus: ByState;
}

export function StairEnd({ stair, heater, state, plusMinus }: StairEndProps) {
  const { scale, dots, dashed, unknownFrom } = stair;
  const end = dots.at(-1);
  const found = heater.pressures[state];
  if (scale === undefined || end === undefined || unknownFrom !== undefined || found === undefined)
    return null;
  const alone = dashed.at(-1);
  const off = plusMinus[state];
  return (
    <>
      {alone !== undefined && (
        <path className="gas-diamond" d={`M${alone[0]} ${alone[1] - 7}l7 7-7 7-7-7z`} />
      )}
      {off !== undefined && off > 0 && (
        <Bracket stair={stair} x={end.x + 14} ends={[found + off, found - off]} />
      )}
      <circle
        className={isEnough(heater, state, found) ? 'gas-dot end' : 'gas-dot end fails'}
        cx={end.x}
        cy={end.y}
        r="7"
      />
    </>
  );
}

interface BracketProps {
  readonly stair: Stair;
  readonly x: number;
  readonly ends: readonly [number, number];
}

/** Cut where the scale ends. */
function Bracket({ stair: { scale, plot, band }, x, ends }: BracketProps) {
  if (scale === undefined) return null;
  const [top, bottom] = ends.map((value) =>
    Math.min(plot.bottom, Math.max(band ?? plot.top, scale.y(value))),
  );
  return <path className="gas-bracket" d={`M${x - 5} ${top}h10m-5 0V${bottom}m-5 0h10`} />;
}
