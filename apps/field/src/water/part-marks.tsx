/** The parts of the picture as buttons: a tap takes one in hand, and its row in the list with it. */
import { useMemo } from 'react';
import { useText } from '../text/use-text.tsx';
import type { Drawn } from './drawn.ts';
import { partRows } from './part-rows.ts';
import { type PartSpot, partSpots } from './part-spots.ts';
import type { Chosen } from './use-chosen.ts';

interface MarksProps extends Drawn {
  readonly chosen: Chosen;
}

export function PartMarks({ picture, layout, state, chosen }: MarksProps) {
  const text = useText();
  const names = useMemo(
    () => new Map(partRows({ picture, state, text }).map(({ id, name }) => [id, name])),
    [picture, state, text],
  );
  return partSpots({ picture, layout, state }).map((spot) => {
    const isTaken = spot.id === chosen.id;
    if (spot.slight)
      return isTaken && <span key={spot.id} className="water-part taken" style={styleOf(spot)} />;
    return (
      <button
        key={spot.id}
        type="button"
        className="water-part"
        aria-label={names.get(spot.id)}
        aria-pressed={isTaken}
        style={styleOf(spot)}
        onClick={() => chosen.take(spot.id, 'picture')}
      />
    );
  });
}

function styleOf({ x, y, width, height }: PartSpot): React.CSSProperties {
  return { left: x, top: y, width, height };
}
