import { describe, expect, it } from 'vitest';
import { firstfire } from './run.ts';

describe('sum', () => {
  it('lists all, describes one, works one case', () => {
    expect(firstfire(['sum']).out).toContain('gas-capacity');
    expect(firstfire(['sum', 'gas-capacity']).out).toContain('inside-diameter');
    // 100 ft of water is 43.3 psi: EPANET 2 users manual, PSIperFT 0.4333.
    const { out, status } = firstfire(['sum', 'static-head', 'height=100 ft', '--out', 'pressure [psi]']);
    expect(out).toMatch(/43\.[23]/);
    expect(status).toBe(0);
  });

  it.each([
    [['sum', 'gas-magic'], 'there is no sum'],
    [['sum', 'static-head', 'height=12'], 'height'],
    [['sum', 'static-head', 'height=12 parsec'], 'parsec'],
    [['sum', 'static-head', 'depth=12 ft'], 'height'],
    [['sum', 'static-head', 'height'], 'name=value'],
    [['sum', 'static-head', 'height=1 ft', '--out', 'force'], 'no output'],
    [['sum', 'static-head', 'height=1 ft', '--out', 'pressure [gpm]'], 'no unit'],
    [['sum', 'static-head', '--csv', 'no-such.csv'], 'no such file'],
  ])('answers %j with what would be right', (args, text) => {
    const { error, status } = firstfire(args);
    expect(error).toContain(text);
    expect(status).toBe(2);
  });

  it('works a table row by row, keeps its columns, and says in `issue` what a row lacks', () => {
    const csv = 'tag,height [ft],note\na,100,x\nb,,y\nc,tall,z\nd,12 m,"p,q"\n';
    const { out, status } = firstfire(['sum', 'static-head', '--csv', '-', '--out', 'pressure [psi]'], csv);
    const rows = out.trimEnd().split('\n');
    expect(rows).toHaveLength(5);
    expect(rows[0]).toBe('tag,height [ft],note,pressure [psi],issue');
    expect(rows[1]).toMatch(/^a,100,x,43\.\d+,$/);
    expect(rows[2]).toMatch(/^b,,y,,.*height/);
    expect(rows[3]).toMatch(/^c,tall,z,,.*tall/);
    expect(rows[4]).toMatch(/^d,12 m,"p,q",17\.\d+,$/);
    expect(status).toBe(0);
  });

  it('refuses a table without a column the sum needs', () => {
    const { error, status } = firstfire(['sum', 'static-head', '--csv', '-'], 'a,b\n1,2\n');
    expect(error).toContain('height');
    expect(status).toBe(2);
  });
});
