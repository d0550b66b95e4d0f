/** The picture of the water line for the job as it stands, and which of its states is looked at. */
import { type JobView, type WaterPicture, type WaterStateShown, waterPictureOf } from '@firstfire/job';
import { useMemo, useState } from 'react';
import { useMoment } from '../session/use-job.tsx';

export interface Look {
  readonly speed: string;
  readonly basin: string;
  readonly filter: 'clean' | 'dirty';
  /** The heater whose limits are looked at. */
  readonly heater: string;
}

export interface Water {
  readonly view: JobView;
  readonly picture: WaterPicture;
  readonly look: Look;
  readonly state: WaterStateShown | undefined;
  /** Greatest flow in any state: what the widest pipe carries. */
  readonly most: number;
  readonly change: (look: Partial<Look>) => void;
}

export function useWater(): Water {
  const { view } = useMoment();
  const picture = useMemo(() => waterPictureOf(view), [view]);
  const [asked, setAsked] = useState<Partial<Look>>({});
  return useMemo(() => {
    const look = lookAt(picture, asked);
    return {
      view,
      picture,
      look,
      state: picture.states.find(
        ({ speed, basin, filter }) => speed === look.speed && basin === look.basin && filter === look.filter,
      ),
      most: Math.max(...picture.states.map((one) => one.flowing?.flow ?? 0), 1e-9),
      change: (changed) => setAsked({ ...look, ...changed }),
    };
  }, [view, picture, asked]);
}

/** What was asked for where there is such a state; else the first state in which a heater runs. */
function lookAt(picture: WaterPicture, asked: Partial<Look>): Look {
  const { states, heaters } = picture;
  const { speed, basin, filter = 'clean' } = asked;
  const heater = heaters.find(({ id }) => id === asked.heater) ?? heaters[0];
  const ofSpeed = states.filter((one) => one.speed === speed);
  const found =
    ofSpeed.find((one) => one.basin === basin) ??
    ofSpeed[0] ??
    states.find((one) => one.heating) ??
    states[0];
  return { speed: found?.speed ?? '', basin: found?.basin ?? '', filter, heater: heater?.id ?? '' };
}
