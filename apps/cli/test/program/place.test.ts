/** The yard map from a shell. Distances are worked by hand from the corners that the example's survey draws. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXAMPLES, example, firstfire, temporaryFolder } from './run.ts';

interface Limit {
  readonly thing: number;
  readonly required: number;
  readonly found: number;
  readonly margin: number;
}
interface Spot {
  readonly at: { readonly x: number; readonly y: number };
  readonly margin: number;
  readonly limits: readonly Limit[];
}

/** The survey of the house pool, changed, as a job. */
function house(change: (survey: Record<string, Record<string, unknown>[]>) => void): string {
  const survey = JSON.parse(readFileSync(join(EXAMPLES, 'house-pool.survey.json'), 'utf8'));
  change(survey);
  const folder = temporaryFolder();
  const [from, to] = [join(folder, 'survey.json'), join(folder, 'yard.job.json')];
  writeFileSync(from, JSON.stringify(survey));
  const made = firstfire(['new', to, '--from', from]);
  if (made.status !== 0) throw new Error(made.error);
  return to;
}

function only<T>(list: readonly T[]): T {
  const [one] = list;
  if (one === undefined) throw new Error('there is none');
  return one;
}

describe('place', () => {
  const { out, status } = firstfire(['place', example('house-pool')]);

  it('counts the spots, lists the best with what limits each, and maps the yard with its legend', () => {
    // 62.83 ft by 50 ft at 10 cm: 192 by 152 middles and part of a row, all within the line.
    expect(out).toMatch(/of 29,184 spots of the yard/);
    for (const text of [
      'Property line: ',
      ' asked',
      'connections face the pump',
      '+ may stand here',
      '~ pool',
    ])
      expect(out).toContain(text);
    expect(out.match(/^ {2,3}\d+ +\+\d+ %/gm)).toHaveLength(10);
    expect(out.match(/^ +H +\+\d+ %/gm)).toHaveLength(1);
    expect(status).toBe(0);
  });

  it('draws every kind of thing in the map by a sign of its own, and no line is wider than a screen', () => {
    const rows = out.split('\n').filter((line) => /^:.*:$/.test(line));
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows) expect(row.length).toBeLessThanOrEqual(80);
    for (const sign of ['#', '~', 'H', 'a', 'f', 'W', '=', '1']) expect(rows.join('')).toContain(sign);
  });

  it('gives the spots to programs, each with every limit, none in another', () => {
    const { heaters } = JSON.parse(
      firstfire(['place', example('house-pool'), '--json', '--step', '50cm']).out,
    );
    const { yard, state } = only<{
      state: string;
      yard: { spots: Spot[]; allowed: number; tried: number; heater: { width: number; depth: number } };
    }>(heaters);
    expect(state).toBe('known');
    expect(yard.allowed).toBeGreaterThan(0);
    expect(yard.allowed).toBeLessThan(yard.tried);
    yard.spots.forEach(({ at, limits, margin }, i) => {
      expect(margin).toBe(Math.min(...limits.map((one) => one.found / one.required - 1)));
      for (const other of yard.spots.slice(0, i))
        expect(Math.hypot(at.x - other.at.x, at.y - other.at.y)).toBeGreaterThan(
          Math.max(yard.heater.width, yard.heater.depth),
        );
    });
  });

  it('draws the plan where it is told to, and closes every element', () => {
    const file = join(temporaryFolder(), 'yard.svg');
    const done = firstfire(['place', example('house-pool'), '--svg', file, '--step', '50cm', '--lang', 'es']);
    expect(done.status).toBe(0);
    const svg = readFileSync(file, 'utf8');
    for (const text of ['<svg', '</svg>', 'Lilac', 'rayado', 'url(#hatch)', '>1</text>'])
      expect(svg).toContain(text);
    const opened = svg.match(/<[a-z][^>]*[^/]>/g)?.length;
    expect(svg.match(/<\/[a-z]+>/g)?.length).toBe(opened);
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('keeps signs of a name out of the drawing’s own', () => {
    const file = join(temporaryFolder(), 'yard.svg');
    const job = house(({ planObjects = [] }) => {
      for (const one of planObjects) if (one['id'] === 'shrub') one['name'] = '<b onload="x">&';
    });
    firstfire(['place', job, '--svg', file, '--step', '1 m']);
    expect(readFileSync(file, 'utf8')).toContain('&lt;b onload=&quot;x&quot;&gt;&amp;');
  });

  // Of 50 ft by 63 ft with a house and a pool in it no spot is 30 ft from everything on four sides.
  it('fails where a heater fits nowhere, and still maps the yard', () => {
    const job = house(({ heaters = [] }) => {
      for (const one of heaters)
        for (const side of ['Front', 'Back', 'Water', 'Far']) one[`clearance${side}`] = 'nameplate 30 ft';
    });
    const { out: text, status: fails } = firstfire(['place', job, '--step', '50cm']);
    expect(text).toContain('Nowhere on this plan');
    expect(text).toContain('~ pool');
    expect(fails).toBe(1);
  });

  it('names the readings it needs where no plan is drawn', () => {
    const { out: text, status: unknown } = firstfire(['place', example('swap')]);
    expect(text).toContain('a property line on the plan');
    expect(unknown).toBe(3);
    const file = join(temporaryFolder(), 'none.svg');
    const none = firstfire(['place', example('swap'), '--svg', file]);
    expect(none.error).toContain('nothing was drawn');
    expect(existsSync(file)).toBe(false);
  });

  it('says what is wrong with a plan that crosses itself', () => {
    const job = house(({ planObjects = [] }) => {
      for (const one of planObjects)
        if (one['id'] === 'line')
          one['corners'] = {
            value: [
              [0, 0],
              [60, 50],
              [60, 0],
              [0, 50],
            ],
            unit: 'ft, ft',
            how: 'drawing',
          };
    });
    const crossed = firstfire(['place', job]);
    expect(crossed.out).toMatch(/cross/);
    expect(crossed.status).toBe(3);
  });

  it.each([
    [['place'], 'firstfire place JOB'],
    [['place', example('house-pool'), '--step', '10'], '--step'],
    [['place', example('house-pool'), '--step', '10 kg'], '--step'],
    [['place', example('house-pool'), '--heater', 'nobody'], 'h1 (Heater)'],
    [['place', example('public-pool'), '--svg', 'x.svg'], '--heater'],
  ])('%j is bad use', (args, text) => {
    const { error, status: bad } = firstfire(args);
    expect(error).toContain(text);
    expect(bad).toBe(2);
  });

  it('refuses a step too fine for the yard', () => {
    const { out: text, status: fine } = firstfire(['place', example('house-pool'), '--step', '1mm']);
    expect(text).toContain('step');
    expect(fine).toBe(3);
  });
});
