import { expectOk, heat } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { GROUND_DEPTHS, normalsOf, PLACES } from './index.ts';

describe('places with their climate', () => {
  it('have names of their own', () => {
    expect(new Set(PLACES.map((place) => place.id)).size).toBe(PLACES.length);
  });

  it.each(PLACES.map((place) => [place.id, place] as const))('%s can be marched through', (_, place) => {
    const weather = expectOk(heat.hourlyWeather(normalsOf(place)));
    expect(weather.hours).toBe(8760);
    if (place.ground)
      expect(place.ground.map((months) => months.length)).toEqual(GROUND_DEPTHS.map(() => 12));
    // Standard time is within an hour and a half of the sun's.
    expect(Math.abs(place.timeZone - place.longitude / 15)).toBeLessThan(1.5);
  });
});
