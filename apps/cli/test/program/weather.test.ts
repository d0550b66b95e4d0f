import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import { describe, expect, it } from 'vitest';
import { epwText } from './epw-text.ts';
import { example, firstfire, temporaryFolder } from './run.ts';

/** The weather of a place on board as a file. */
function weatherFile(id: string): string {
  const place = catalog.climate.PLACES.find((one) => one.id === id);
  const hours = place && heat.hourlyWeather(catalog.climate.normalsOf(place));
  if (!hours?.ok) throw new Error('no weather');
  const file = join(temporaryFolder(), `${id}.epw`);
  writeFileSync(file, epwText(`Town of ${id}`, hours.value));
  return file;
}

interface Found {
  readonly rule: string;
  readonly subject: { readonly id: string };
  readonly outcome: { readonly found: number };
}

function warmUpTime(...more: readonly string[]): number {
  const { out } = firstfire(['check', example('house-pool'), '--line', 'heat', '--json', ...more]);
  const { lines } = JSON.parse(out) as { lines: { findings: Found[] }[] };
  const findings = lines.flatMap((line) => line.findings);
  const one = findings.find(({ rule, subject }) => rule === 'heat.warm-in-time' && subject.id === 'pool');
  return one?.outcome.found ?? Number.NaN;
}

describe('check with a weather file', () => {
  it('sizes for the months of the file: those of the place itself change nothing, a warmer one is sooner warm', () => {
    const own = warmUpTime();
    // Humidity is the mean of hours made from dew points; the file prints tenths.
    expect(Math.abs(warmUpTime('--epw', weatherFile('denver')) / own - 1)).toBeLessThan(0.02);
    expect(warmUpTime('--epw', weatherFile('miami'))).toBeLessThan(0.95 * own);
  });

  it('says whose weather it is in the working', () => {
    const file = weatherFile('denver');
    const working = ['check', example('house-pool'), '--working', 'heat.warm-in-time@pool'];
    expect(firstfire(working).out).toContain('Denver');
    const { out, status } = firstfire([...working, '--epw', file]);
    expect(out).toContain('Town of denver');
    expect(out).toContain('Mains water');
    expect(status).toBe(0);
  });

  it('refuses a file that is none', () => {
    const file = join(temporaryFolder(), 'none.epw');
    writeFileSync(file, 'LOCATION,');
    const { error, status } = firstfire(['check', example('house-pool'), '--epw', file]);
    expect(error).toContain('none.epw');
    expect(status).toBe(2);
  });
});
