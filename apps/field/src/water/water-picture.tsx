/** The water line as a picture: the loop running, its heater at every speed, its curves, the window of its switch. */
import { memo, useDeferredValue } from 'react';
import { useSlide } from '../ui/use-slide.ts';
import { Blank } from './blank.tsx';
import { Curves } from './curves.tsx';
import { FlowRows } from './flow-rows.tsx';
import { LoopPicture } from './loop-picture.tsx';
import { PartCard } from './part-card.tsx';
import { PartList } from './part-list.tsx';
import { StateChoice } from './state-choice.tsx';
import { SwitchWindow } from './switch-bar.tsx';
import { TurnRow } from './turn-row.tsx';
import { useChosen } from './use-chosen.ts';
import { useWater, type Water } from './use-water.ts';
import { Waiting } from './waiting.tsx';
import '../ui/picture.css';
import './water.css';

export default function WaterPicture() {
  const water = useWater();
  const slide = useSlide();
  const chosen = useChosen();
  // What stands below follows a moment later, so that a handle being turned never waits for it.
  const later = useDeferredValue(water);
  if (!water.picture.drawn) return <Blank />;
  return (
    <div className="water-picture">
      {water.picture.states.length > 0 && <StateChoice water={water} />}
      <LoopPicture water={water} slide={slide} chosen={chosen} />
      <PartCard water={water} chosen={chosen} />
      <TurnRow water={water} slide={slide} />
      <Waiting water={water} />
      <FlowRows water={water} />
      <Below water={later} />
      <PartList water={later} chosen={chosen} />
    </div>
  );
}

const Below = memo(function Below({ water }: { readonly water: Water }) {
  return (
    <>
      <Curves water={water} />
      <SwitchWindow water={water} />
    </>
  );
});
