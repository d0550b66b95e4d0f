import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { epwText } from './epw-text.ts';
import { example, firstfire, temporaryFolder } from './run.ts';

/** The weather of the bundled place as a file. */
function weatherFile(edit: (text: string) => string = (text) => text): string {
  const place = catalog.climate.PLACES.find((one) => one.id === 'denver');
  const hours = place && heat.hourlyWeather(catalog.climate.normalsOf(place));
  if (!hours?.ok) throw new Error('no weather');
  const file = join(temporaryFolder(), 'weather.epw');
  writeFileSync(file, edit(epwText('Somewhere', hours.value)));
  return file;
}

/** The text with one field of one line replaced, both counted from 1. */
function withField(text: string, [line, column]: readonly [number, number], value: string): string {
  const lines = text.split('\n');
  const fields = (lines[line - 1] ?? '').split(',');
  fields[column - 1] = value;
  lines[line - 1] = fields.join();
  return lines.join('\n');
}

const fuels = (out: string): number[] =>
  JSON.parse(out).basins.map(({ covered }: { covered: { answer: { fuel: number[] } } }) =>
    covered.answer.fuel.reduce((a, b) => a + b, 0),
  );

describe('year', () => {
  it('prints fuel, cost and carbon of each basin, with its cover and without', () => {
    const { out, status } = firstfire(['year', example('house-pool')]);
    for (const text of ['POOL', 'SPA', 'with cover', 'carbon dioxide', 'Denver', 'Marched alone'])
      expect(out).toContain(text);
    expect(status).toBe(0);
  });

  it('says what it needs of an unfinished survey', () => {
    const { out, status } = firstfire(['year', example('unfinished')]);
    expect(out).toContain('needs');
    expect(status).toBe(3);
  });

  it('takes its weather from a file, names the place, and finds what the bundled weather of it gives', () => {
    const file = weatherFile();
    expect(firstfire(['year', example('house-pool'), '--epw', file]).out).toContain('Somewhere');
    const [bundled, own] = [[], ['--epw', file]].map((more) =>
      fuels(firstfire(['year', example('house-pool'), '--json', ...more]).out),
    );
    // The file rounds to 0.1 K, 0.1 m/s and tenths of the sky.
    for (const [i, fuel] of (bundled ?? []).entries())
      expect(Math.abs((own?.[i] ?? 0) / fuel - 1)).toBeLessThan(0.01);
  });

  it('says which hours of the file were filled', () => {
    const file = weatherFile((text) => withField(text, [100, 22], '999'));
    expect(firstfire(['year', example('house-pool'), '--epw', file]).out).toContain('wind speed 1 h');
  });

  it.each([
    [
      'a wind of 140 m/s',
      (text: string) => withField(text, [20, 22], '140'),
      'line 20, column 22 (wind speed)',
    ],
    ['a latitude of 95°', (text: string) => withField(text, [1, 7], '95'), 'line 1, latitude'],
    ['no year', (text: string) => text.split('\n').slice(0, 50).join('\n'), 'line 50: '],
  ])('refuses a weather file with %s, saying where', (_, edit, where) => {
    const { error, status } = firstfire(['year', example('house-pool'), '--epw', weatherFile(edit)]);
    expect(error).toContain(`weather.epw: ${where}`);
    expect(status).toBe(2);
  });
});
