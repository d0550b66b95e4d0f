import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { example, firstfire, temporaryFolder } from './run.ts';

describe('check', () => {
  it('prints every line, each with its smallest margin', () => {
    const { out, status } = firstfire(['check', example('house-pool')]);
    for (const line of ['Heat', 'Gas', 'Air', 'Water', 'Power', 'Place']) expect(out).toContain(line);
    expect(out).toMatch(/^Air +meets/m);
    expect(out).toMatch(/^Place +meets/m);
    expect(out).not.toContain('not built');
    expect(status).toBe(1);
  });

  it('ends with 3 when nothing fails but something is unknown', () => {
    const { status, out } = firstfire(['check', example('unfinished'), '--line', 'gas']);
    expect(out).toContain('unknown');
    expect(status).toBe(3);
  });

  it('shows one line alone, in SI, and as JSON with SI values', () => {
    const { out } = firstfire(['check', example('house-pool'), '--line', 'gas', '--units', 'si']);
    expect(out).not.toMatch(/^Water/m);
    expect(out).toMatch(/kPa/);
    const json = JSON.parse(firstfire(['check', example('house-pool'), '--json']).out) as {
      format: string;
      lines: { line: string; built: boolean }[];
    };
    expect(json.format).toBe('firstfire-study');
    expect(json.lines.find((line) => line.line === 'air')?.built).toBe(true);
    expect(json.lines.find((line) => line.line === 'place')?.built).toBe(true);
  });

  it('opens the working of a finding down to formula and citation', () => {
    const { out, status } = firstfire([
      'check',
      example('house-pool'),
      '--working',
      'gas.section-capacity@s1',
    ]);
    expect(out).toContain('19.17');
    expect(out).toContain('Equation 4-1');
    expect(status).toBe(0);
  });

  it('checks a named variant, and names the variants there are', () => {
    const { out, status } = firstfire([
      'check',
      example('house-pool'),
      '--line',
      'gas',
      '--variant',
      'larger',
    ]);
    expect(out).not.toMatch(/fails/);
    expect(status).toBe(0);
    const wrong = firstfire(['check', example('house-pool'), '--variant', 'smaller']);
    expect(wrong.error).toContain('larger');
    expect(wrong.status).toBe(2);
  });

  it('never colours what is not a terminal', () => {
    expect(firstfire(['check', example('house-pool')]).out).not.toContain('\u001b');
  });

  it.each([
    [['check'], 'takes one job file'],
    [['check', 'no-such.json'], 'there is no such file'],
    [['check', '/'], 'is a folder'],
    [['check', example('house-pool'), '--line', 'steam'], 'one of heat, gas, air, water, power, place'],
    [['check', example('house-pool'), '--units', 'cgs'], 'one of us, si, mixed'],
    [['check', example('house-pool'), '--wrong'], 'Options here:'],
    [['check', example('house-pool'), '--working', 'gas.none@x'], 'has no finding'],
    [['polish'], 'is not a command'],
  ])('answers bad use %j with what would be right, on the error output', (args, text) => {
    const { out, error, status } = firstfire(args);
    expect(error).toContain(text);
    expect(out).toBe('');
    expect(status).toBe(2);
  });

  const whole = readFileSync(example('unfinished'), 'utf8');
  it.each([
    ['truncated', whole.slice(0, whole.length / 2), 'stops in the middle'],
    ['damaged', whole.replace('"log": [', '"log": {['), 'not JSON'],
    ['foreign', '{"type":"FeatureCollection"}', 'not a job file'],
    ['newer', whole.replace('"version": 1', '"version": 99'), 'newer program'],
    ['nested', `{"format":"firstfire-job","version":1,"log":${'['.repeat(100_000)}`, 'nested deeper'],
    ['polluting', whole.replace('"format"', '"__proto__":{"x":1},"format"'), 'refused'],
    ['empty', '', ''],
  ])('refuses a %s file with its place, and leaves it as it is', (name, text, says) => {
    const file = join(temporaryFolder(), `${name}.json`);
    writeFileSync(file, text);
    const { error, status } = firstfire(['check', file]);
    expect(error).toMatch(/:\d+:\d+/);
    expect(error).toContain(says);
    expect(status).toBe(2);
    expect(readFileSync(file, 'utf8')).toBe(text);
  });
});

describe('new', () => {
  it('begins a job that check can read, and never writes over a file', () => {
    const file = join(temporaryFolder(), 'job.json');
    expect(firstfire(['new', file, '--name', 'Test']).status).toBe(0);
    const before = readFileSync(file, 'utf8');
    expect(firstfire(['check', file]).status).toBe(3);
    const again = firstfire(['new', file]);
    expect(again.error).toContain('exists already');
    expect(again.status).toBe(2);
    expect(readFileSync(file, 'utf8')).toBe(before);
  });

  it('names every text of a survey that it cannot read, with its place', () => {
    const survey = join(temporaryFolder(), 'survey.json');
    writeFileSync(
      survey,
      JSON.stringify({ site: { altitude: 'measured high' }, gasSupply: { fuel: 'coal' }, attic: {} }),
    );
    const { error, status } = firstfire(['new', `${survey}.job`, '--from', survey]);
    for (const place of ['site.altitude', 'gasSupply.fuel', 'attic']) expect(error).toContain(place);
    expect(status).toBe(2);
  });
});

describe('schema', () => {
  it('is JSON Schema that names every collection', () => {
    const schema = JSON.parse(firstfire(['schema']).out) as {
      properties: { document: { properties: object } };
    };
    expect(Object.keys(schema.properties.document.properties)).toContain('gasSegments');
  });
});

describe('editions', () => {
  it('lists what another edition would change, with both sources', () => {
    const { out, status } = firstfire([
      'editions',
      example('house-pool'),
      '--from',
      'IFGC 2018',
      '--to',
      'IFGC 2021',
    ]);
    expect(out).toContain('gas.test-duration@-');
    expect(out.replace(/\s+/g, ' ')).toContain('International Residential Code 2021');
    expect(status).toBe(0);
  });

  it('names the editions there are', () => {
    const { error, status } = firstfire([
      'editions',
      example('house-pool'),
      '--from',
      'IFGC 2018',
      '--to',
      'IFGC 1999',
    ]);
    expect(error).toContain('IFGC 2021');
    expect(status).toBe(2);
  });
});
