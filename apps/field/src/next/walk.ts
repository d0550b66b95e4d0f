/** The survey as a walk: what is missing, station by station, the most telling first at each. */
import type { Study } from '@firstfire/job';
import { type Missing, measureNext } from './measure-next.ts';
import { minutesOf, STATIONS, type Station, stationOf } from './stations.ts';

export interface Stop {
  readonly station: Station;
  readonly readings: readonly Missing[];
  /** Minutes the readings take, about. */
  readonly minutes: number;
}

/** What `skipped` names is left out: it could not be got. */
export function walkOf(study: Study, skipped: ReadonlySet<string> = new Set()): readonly Stop[] {
  const missing = measureNext(study).filter((one) => !skipped.has(one.path));
  return STATIONS.flatMap((station) => {
    const readings = missing.filter((one) => stationOf(one.path) === station);
    if (readings.length === 0) return [];
    return [
      { station, readings, minutes: Math.ceil(readings.reduce((sum, one) => sum + minutesOf(one.path), 0)) },
    ];
  });
}

/** The next reading of the walk: at this station if anything is left there, else at the next. */
export function nextInWalk(stops: readonly Stop[], from?: string): Missing | undefined {
  const here = from === undefined ? undefined : stationOf(from);
  const at = stops.find((stop) => stop.station === here) ?? stops.find((stop) => isAfter(stop.station, here));
  return (at ?? stops[0])?.readings.find((one) => one.path !== from);
}

function isAfter(station: Station, here: Station | undefined): boolean {
  return here === undefined || STATIONS.indexOf(station) > STATIONS.indexOf(here);
}
