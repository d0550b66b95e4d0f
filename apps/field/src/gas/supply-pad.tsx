/** The supply pressure by steps and by number, for gloves and for who does not drag. */
import type { GasPicture, GasState } from '@firstfire/job';
import { useMoment } from '../session/use-job.tsx';
import { useText } from '../text/use-text.tsx';
import { MovePad } from '../ui/move-pad.tsx';
import { useSlide } from '../ui/use-slide.ts';
import { bare, pressure, pressureUnit } from './figures.ts';
import { supplySliding } from './supply-sliding.ts';

interface PadProps {
  readonly picture: GasPicture;
  readonly state: GasState;
}

export function SupplyPad({ picture: { heater }, state }: PadProps) {
  const text = useText();
  const slide = useSlide();
  const sliding = supplySliding(useMoment().view, state);
  if (sliding === undefined) return null;
  const { value, step, large } = sliding;
  const found = heater?.pressures[state];
  const unit = pressureUnit(value, text);
  return (
    <MovePad
      slide={slide}
      sliding={sliding}
      legend={text.field('gasSupply', sliding.at.field)}
      less={text.phrase('gas.lower')}
      more={text.phrase('gas.higher')}
      steps={[step, large]}
      usual={step}
      stepText={(one) => bare(one, unit, text)}
    >
      <strong>{pressure(value, text)}</strong>
      {found !== undefined && (
        <span className="second">
          {text.phrase('gas.at-heater')} {pressure(found, text)}
        </span>
      )}
    </MovePad>
  );
}
