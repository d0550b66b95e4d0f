/**
 * The pressure staircase: from what the regulator leaves to the heater, the line as thick as the pipe, a step at meter
 * and regulators. Under it a table of the sections, so that no label can collide; its cells reach up over the picture,
 * so that a tap on a stretch takes it in hand.
 */
import type { ByState, GasHeaterSeen, GasPart, GasPicture, GasState } from '@firstfire/job';
import { useLayoutEffect, useRef } from 'react';
import { useMoment } from '../session/use-job.tsx';
import { useSlide } from '../ui/use-slide.ts';
import { SUPPLY } from './names.ts';
import { leastWidth, type Reach, stairOf } from './stair.ts';
import { StairEnd } from './stair-end.tsx';
import { StairGround } from './stair-ground.tsx';
import { StairLines } from './stair-lines.tsx';
import { SupplyGrip, SupplyKnob } from './supply-grip.tsx';
import { supplySliding } from './supply-sliding.ts';
import { useWidth } from './use-width.ts';
import { WayNames, WayTable } from './way-table.tsx';

export interface StaircaseProps {
  readonly picture: GasPicture;
  readonly heater: GasHeaterSeen;
  readonly state: GasState;
  readonly plusMinus: ByState;
  readonly part: GasPart | undefined;
  readonly onTake: (part: GasPart | undefined) => void;
}

const LOW = 230;
const TALL = 330;
const WIDE = 560;

export function Staircase(props: StaircaseProps) {
  const { heater, state, part, onTake } = props;
  const slide = useSlide();
  const sliding = supplySliding(useMoment().view, state);
  const reach = useRef<Reach>(undefined);
  const place = useRef<HTMLDivElement>(null);
  const { width: room, em } = useWidth(place);
  const width = Math.max(room, leastWidth(heater, em));
  const hasBand = heater.way.some(({ link }) => link.type === 'regulator');
  const height = ((width > WIDE ? TALL : LOW) + (hasBand ? 60 : 0)) * em;
  const keep = slide.held ? reach.current : undefined;
  const stair = stairOf(heater, { state, keep }, { width, height, em });
  useLayoutEffect(() => {
    reach.current = stair.reach;
  });
  // The ± takes many runs of the model: it stands again when the hand is off.
  const plusMinus = slide.held ? {} : props.plusMinus;
  const { hold } = stair;
  return (
    <div className="gas-stair" ref={place}>
      <svg width={width} height={height} aria-hidden="true">
        <StairGround stair={stair} state={state} />
        <StairLines stair={stair} dearest={heater.dearest} state={state} />
        {hold !== undefined && sliding !== undefined && <SupplyKnob hold={hold} />}
        <StairEnd stair={stair} heater={heater} state={state} plusMinus={plusMinus} />
      </svg>
      <WayTable {...props} stair={stair} height={height} em={em} />
      {hold !== undefined && sliding !== undefined && (
        <SupplyGrip
          {...{ hold, slide, sliding, heater, state }}
          onTap={() => onTake(part?.id === SUPPLY ? undefined : { type: 'node', id: SUPPLY })}
        />
      )}
      <WayNames picture={props.picture} heater={heater} stair={stair} em={em} />
    </div>
  );
}
