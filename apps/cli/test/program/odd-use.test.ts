/** Bad use of every sort: what is wrong, where, and what would be right, on the error output, and never a stack. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Answer, example, firstfire, temporaryFolder } from './run.ts';

const HOUSE = example('house-pool');

function expectRefused({ error, out, status }: Answer, text: string): void {
  expect(error).toContain(text);
  expect(error).not.toMatch(/^\s+at /m);
  expect(out).toBe('');
  expect(status).toBe(2);
}

describe('bad use', () => {
  it.each([
    [['check', HOUSE, '--line', 'gas', '--line', 'water'], '--line stands twice'],
    [['check', HOUSE, '--json', '--working', 'gas.section-capacity@s1'], 'two answers'],
    [['schema', 'basins'], 'schema takes nothing'],
    [['schema', '--json'], 'Options here: --lang.'],
    [['sum', '--csv', 'x.csv'], 'the name of a sum first'],
    [['sum', 'static-head', 'height=1 ft', 'height=2 ft'], 'height is given twice'],
    [['sum', 'static-head', 'height=1 ft', '--csv', '-'], 'in a column of its own'],
    [['sum', 'static-head', '--csv', '/'], 'is a folder'],
    [['sum', 'static-head', 'height=12'], 'height: the unit is missing'],
    [
      [
        'sum',
        'gas-capacity',
        'gas=natural',
        'equation=low',
        'inside-diameter=0 in',
        'length=1 ft',
        'pressure-drop=1 inwc',
      ],
      'inside-diameter: 0',
    ],
    [
      [
        'sum',
        'gas-drop',
        'gas=natural',
        'equation=high',
        'inside-diameter=0.5 in',
        'length=1000 ft',
        'flow=5000 ft3/h',
        'inlet-pressure=2 psi',
      ],
      'flow: the drop is larger than the pressure that is there',
    ],
    [['new', '/no-such-folder/a.json'], 'folder it should stand in does not exist'],
  ])('%j', (args, text) => {
    expectRefused(firstfire(args), text);
  });

  it('of a folder as a survey or over a file leaves everything as it was', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'survey'));
    expectRefused(
      firstfire(['new', join(folder, 'a.json'), '--from', join(folder, 'survey')]),
      'is a folder',
    );
    writeFileSync(join(folder, 'file'), '');
    expectRefused(firstfire(['new', join(folder, 'file', 'a.json')]), 'is no folder');
  });

  it('help is shown wherever it is asked for', () => {
    for (const args of [
      ['check', '--help'],
      ['sum', 'static-head', '-h'],
    ]) {
      const { out, status } = firstfire(args);
      expect(out).toContain('Exit status');
      expect(status).toBe(0);
    }
  });
});

describe('a job file', () => {
  const text = readFileSync(HOUSE, 'utf8');
  const written = (name: string, content: string): string => {
    const file = join(temporaryFolder(), name);
    writeFileSync(file, content);
    return file;
  };

  it('with a name of control characters and breaks writes them out as nothing but a name', () => {
    const file = written('name.json', text.replaceAll('Juniper Bend', 'A\\u001b[2J\\u202eB\\n\\nC'));
    const { out, status } = firstfire(['check', file, '--line', 'heat']);
    expect(out.split('\n', 1)[0]).toMatch(/^A\ufffd\[2J\ufffdB C: house pool/);
    expect(status).toBe(1);
  });

  it('with thousands of heaters is refused at once', () => {
    const job = JSON.parse(text) as { log: Record<string, unknown>[] };
    const like = job.log.find((one) => one['target'] === 'heaters/h1/input');
    for (let i = 0; i < 3000; i += 1) {
      const id = `example:${i + 5000}`;
      job.log.push({ ...like, id, group: `${id}+1`, target: `heaters/x${i}/input` });
    }
    expectRefused(
      firstfire(['check', written('crowd.json', JSON.stringify(job))]),
      'heaters holds 3001 records',
    );
  });

  it('whose log lost an entry is not good, whatever is left of it', () => {
    const job = JSON.parse(text) as { log: Record<string, unknown>[] };
    const whole = written('whole.json', JSON.stringify(job));
    const args = ['--line', 'gas', '--variant', 'larger'];
    expect(firstfire(['check', whole, ...args]).status).toBe(0);
    job.log.push({ ...job.log[60], kind: 5 });
    expect(firstfire(['check', written('lost.json', JSON.stringify(job)), ...args]).status).toBe(3);
  });
});

describe('a table', () => {
  const table = (csv: string): Answer => firstfire(['sum', 'static-head', '--csv', '-'], csv);

  it.each([
    ['with nothing in it', '', 'the table is empty; its first row names the columns'],
    ['of empty lines', '\n\n', 'the table is empty'],
    ['parted by semicolons', 'height [ft];note\n1,5;a\n', 'Its first row: height [ft];note'],
    ['with a column twice', 'height [ft],height [m]\n1,2\n', 'two columns are height'],
    ['of bytes', '\u0000\u0001\u0002', 'lacks columns'],
  ])('%s is refused', (_name, csv, text) => {
    expectRefused(table(csv), text);
  });

  it('with a quote where none can stand is refused with its line', () => {
    const { error, status } = table('height [ft],note\n1,a"b\n');
    expect(error).toMatch(/quote.*line 2/i);
    expect(error).not.toMatch(/^\s+at /m);
    expect(status).toBe(2);
  });

  it('keeps outputs under their heads where cells are missing, and names a row that has too many', () => {
    const { out, status } = table('tag,height [ft],note\na,100\nb,100,x,y\n');
    const rows = out.trimEnd().split('\n');
    expect(rows[1]).toMatch(/^a,100,,43\.\d+,$/);
    expect(rows[2]).toMatch(/^b,100,x,,4 cells under 3 columns/);
    expect(status).toBe(0);
  });

  it('reads decimal commas, marks and units in cells under a head with a unit', () => {
    const { out } = table('\ufeffheight [ft]\r\n"100,0"\r\n"1.000,0"\r\n1200 in\r\n0x64\r\n');
    const rows = out.trimEnd().split('\n');
    expect(rows[1]).toMatch(/^"100,0",43\.\d+,$/);
    expect(rows[2]).toMatch(/^"1.000,0",433\.\d+,$/);
    expect(rows[3]).toMatch(/^1200 in,43\.\d+,$/);
    expect(rows[4]).toMatch(/^0x64,,.*x64/);
  });
});
