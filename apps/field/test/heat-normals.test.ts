/** Monthly means as typed: what a place shows is read back as what it is, in both unit systems. */
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { COLUMNS, normalsTyped, typedFrom } from '../src/heat/normals-typed.ts';

const COMMA = { decimal: ',', group: ' ', groupFrom: 5, percent: ' ' };
const HOW = [
  { system: 'us', marks: undefined, figure: String },
  { system: 'si', marks: COMMA, figure: (value: number) => String(value).replace('.', ',') },
] as const;

describe('typed months', () => {
  it.each(HOW)('are read back as they were shown ($system)', ({ system, marks, figure }) => {
    for (const place of catalog.climate.PLACES.slice(0, 12)) {
      const typed = typedFrom(place, figure, system);
      const read = normalsTyped(typed, place, { marks, system });
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      const own = catalog.climate.normalsOf(place);
      // Shown to a tenth.
      for (const { name, shown } of COLUMNS)
        for (const [month, si] of (own[name] ?? []).entries())
          expect(
            Math.abs(shown(read.value[name]?.[month] ?? Number.NaN, system) - shown(si, system)),
          ).toBeLessThan(0.0501);
    }
  });

  it('name the month that is not understood', () => {
    const [place] = catalog.climate.PLACES;
    if (place === undefined) throw new Error('no place');
    const typed = typedFrom(place, String, 'us');
    const bad = { ...typed, windSpeed: typed.windSpeed.map((one, i) => (i === 3 ? 'calm' : one)) };
    expect(normalsTyped(bad, place, { marks: undefined, system: 'us' })).toEqual({
      ok: false,
      issues: [{ code: 'not-understood', where: 'windSpeed.4', found: 'calm' }],
    });
  });
});
