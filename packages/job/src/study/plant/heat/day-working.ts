/** The design day in the working of whatever stands on it: whose climate, which month, and what it comes to. */
import type { Recorder } from '@firstfire/engine';
import type { DesignDay, MonthClimate, Weather } from './design-day.ts';

export function recordDay(recorder: Recorder, { climate, indoors }: DesignDay, weather: Weather): void {
  if (climate === undefined) return;
  recorder.open();
  recorder.given({
    id: 'heat.climate-of',
    value: climate.place || climate.source,
    reading: sayingOf(climate),
  });
  recorder.given({ id: 'heat.design-month', value: climate.month, kind: 'ratio' });
  if (!indoors) recordOutdoors(recorder, climate, weather);
  recorder.given({ id: 'heat.design-ground', value: weather.groundTemperature, kind: 'temperature' });
  recorder.given({ id: 'heat.design-mains', value: weather.mainsTemperature, kind: 'temperature' });
  recorder.closeGroup({ id: 'heat.design-day' });
}

function recordOutdoors(recorder: Recorder, { airTemperature: air }: MonthClimate, weather: Weather): void {
  recorder.given({
    id: 'heat.design-air',
    value: weather.airTemperature,
    kind: 'temperature',
    ...(typeof air === 'string' ? { reading: air } : {}),
  });
  recorder.given({ id: 'heat.design-wind', value: weather.airSpeed, kind: 'velocity' });
  recorder.given({ id: 'heat.design-sky', value: weather.skyTemperature, kind: 'temperature' });
}

function sayingOf({ source }: MonthClimate): string {
  return source === 'bundled' ? 'site/-/climatePlace' : 'site/-/climateName';
}
