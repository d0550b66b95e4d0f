/** Monthly means as typed: what a place shows is read back as what it is, in both unit systems. */
import { climateOfMonths, plainView, withClimate } from '@firstfire/job';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { COLUMNS, meansOfJob, normalsTyped, typedFrom } from '../src/heat/normals-typed.ts';

const COMMA = { decimal: ',', group: ' ', groupFrom: 5, percent: ' ' };
const HOW = [
  { system: 'us', marks: undefined, figure: String },
  { system: 'si', marks: COMMA, figure: (value: number) => String(value).replace('.', ',') },
] as const;

describe('typed months', () => {
  it.each(HOW)('are read back as they were shown ($system)', ({ system, marks, figure }) => {
    for (const place of catalog.climate.PLACES.slice(0, 12)) {
      const own = catalog.climate.normalsOf(place);
      const read = normalsTyped(typedFrom(own, figure, system), { marks, system });
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      const { latitude } = place;
      const kept = climateOfMonths({ name: place.name, latitude, columns: read.value });
      const means = meansOfJob(withClimate(plainView({}), kept));
      // Shown to a tenth.
      for (const { name, shown } of COLUMNS)
        for (const [month, si] of (own[name] ?? []).entries())
          expect(
            Math.abs(shown(means[name]?.[month] ?? Number.NaN, system) - shown(si, system)),
          ).toBeLessThan(0.0501);
    }
  });

  it('name the month that is not understood', () => {
    const [place] = catalog.climate.PLACES;
    if (place === undefined) throw new Error('no place');
    const typed = typedFrom(catalog.climate.normalsOf(place), String, 'us');
    const bad = { ...typed, windSpeed: typed.windSpeed.map((one, i) => (i === 3 ? 'calm' : one)) };
    expect(normalsTyped(bad, { marks: undefined, system: 'us' })).toEqual({
      ok: false,
      issues: [{ code: 'not-understood', where: 'windSpeed.4', found: 'calm' }],
    });
  });

  it('are empty where nothing is known, and refuse what no month has', () => {
    const empty = typedFrom({}, String, 'si');
    expect(empty.airTemperature).toEqual(Array(12).fill(''));
    const [place] = catalog.climate.PLACES;
    if (place === undefined) throw new Error('no place');
    const typed = typedFrom(catalog.climate.normalsOf(place), String, 'si');
    const bad = {
      ...typed,
      relativeHumidity: typed.relativeHumidity.map((one, i) => (i === 6 ? '140' : one)),
    };
    const read = normalsTyped(bad, { marks: undefined, system: 'si' });
    expect(read.ok ? [] : read.issues).toMatchObject([
      { code: 'out-of-range', where: 'relativeHumidity.7', found: 1.4, max: 1 },
    ]);
  });
});
