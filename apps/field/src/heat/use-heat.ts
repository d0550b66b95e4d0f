/** The picture of the heat line for the job as it stands, which basin is looked at, and which other size is tried. */
import {
  type HeatBasinShown,
  type HeatPicture,
  HeatPictures,
  heatSizeTried,
  type WarmUpShown,
} from '@firstfire/job';
import { useMemo, useState } from 'react';
import { useMoment } from '../session/use-job.tsx';

export interface Heat {
  readonly picture: HeatPicture;
  readonly basin: HeatBasinShown | undefined;
  readonly lookAt: (basin: string) => void;
  /** Nameplate input that is tried, W. */
  readonly tried: number | undefined;
  readonly tryInput: (input: number | undefined) => void;
  readonly trial: WarmUpShown | undefined;
}

export function useHeat(): Heat {
  const { view } = useMoment();
  const [pictures] = useState(() => new HeatPictures());
  const picture = useMemo(() => pictures.of(view), [pictures, view]);
  const [asked, lookAt] = useState('');
  const [tried, tryInput] = useState<number | undefined>();
  const basin = picture.basins.find(({ id }) => id === asked) ?? picture.basins[0];
  const there = tried !== basin?.input && basin?.sizes.some(({ input }) => input === tried);
  const wanted = there ? tried : undefined;
  const trial = useMemo(
    () => (basin === undefined || wanted === undefined ? undefined : heatSizeTried(view, basin, wanted)),
    [view, basin, wanted],
  );
  return { picture, basin, lookAt, tried: wanted, tryInput, trial };
}
