/** A round as a walk: what is missing, station by station, the most telling first at each. */
import type { Missing } from './measure-next.ts';
import { minutesOf, STATIONS, type Station, stationOf } from './stations.ts';

export interface Stop {
  readonly station: Station;
  readonly readings: readonly Missing[];
  /** Minutes the readings take, about. */
  readonly minutes: number;
}

export function walkOf(missing: readonly Missing[]): readonly Stop[] {
  return STATIONS.flatMap((station) => {
    const readings = missing.filter((one) => stationOf(one.path) === station);
    if (readings.length === 0) return [];
    return [{ station, readings, minutes: Math.ceil(minutesFor(readings)) }];
  });
}

function minutesFor(readings: readonly Missing[]): number {
  return readings.reduce((sum, one) => sum + minutesOf(one.path), 0);
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
