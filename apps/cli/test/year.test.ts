import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { example, firstfire, temporaryFolder } from './run.ts';

describe('year', () => {
  it('prints fuel, cost and carbon of each basin, with its cover and without', () => {
    const { out, status } = firstfire(['year', example('house-pool')]);
    for (const text of ['POOL', 'SPA', 'with cover', 'carbon dioxide', 'Denver']) expect(out).toContain(text);
    expect(status).toBe(0);
  });

  it('says what it needs of an unfinished survey', () => {
    const { out, status } = firstfire(['year', example('unfinished')]);
    expect(out).toContain('needs');
    expect(status).toBe(3);
  });

  it('refuses a weather file that is none, with the line', () => {
    const file = join(temporaryFolder(), 'weather.epw');
    writeFileSync(file, 'LOCATION,Nowhere\nnot,a,year\n');
    const { error, status } = firstfire(['year', example('house-pool'), '--epw', file]);
    expect(error).toMatch(/line\.\d/);
    expect(status).toBe(2);
  });
});
