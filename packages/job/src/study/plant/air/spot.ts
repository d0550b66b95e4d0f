/** What the models of the air line ask of a heater's spot before they read a number. */
import type { Where } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import { spotOf } from '../spot-of.ts';

export interface HeaterSpot {
  readonly heater: string;
  readonly spot: string;
  readonly outdoors: boolean;
  /** It takes its air through the wall and none from the room. */
  readonly directVent: boolean;
}

export function heaterSpot(view: JobView, heater: string): HeaterSpot {
  const spot = spotOf(view, heater);
  const word = (field: string): unknown => view.record('spots', spot).reading(field)?.value;
  return {
    heater,
    spot,
    outdoors: word('where') === 'outdoors',
    directVent: word('terminal') === 'direct vent',
  };
}

export function atSpot(spot: string): (field: string) => Where {
  return (field) => ({ collection: 'spots', id: spot, field });
}

export function atHeater(id: string, field: string): Where {
  return { collection: 'heaters', id, field };
}
