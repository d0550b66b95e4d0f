import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectOk } from '../../../trace/index.ts';
import { monthLengths } from '../calendar.ts';
import { readEpw } from './index.ts';
import { LONGEST_TEXT } from './lines.ts';

const HEADER = [
  'LOCATION,Somewhere,-,USA,invented,999999,40.00,-105.00,-7.0,1600.0',
  'DESIGN CONDITIONS,0',
  'TYPICAL/EXTREME PERIODS,0',
  'GROUND TEMPERATURES,1,.5,,,,1.0,2.0,3.0,4.0,5.0,6.0,7.0,8.0,9.0,10.0,11.0,12.0',
  'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
  'COMMENTS 1,invented',
  'COMMENTS 2,invented',
  'DATA PERIODS,1,1,Data,Tuesday, 1/ 1,12/31',
];

/** Columns from 6 on: dry bulb, dew point, humidity, pressure, three of sun, infrared, global, rest. */
function hourLine(month: number, day: number, hour: number): string {
  const sun = hour > 6 && hour < 19 ? 400 : 0;
  const values = [10 + hour / 10, 2.5, 60, 84_000, sun, 1415, 260, sun, 0, sun, 0, 0, 0, 0, 180, 3.5, 6, 4];
  return [
    1999,
    month,
    day,
    hour,
    60,
    '?9?9?9',
    ...values,
    20,
    77_777,
    9,
    999_999_999,
    0,
    0.05,
    0,
    88,
    0,
    0,
    0,
  ].join();
}

function year(leap: boolean): string[] {
  const rows = monthLengths(leap).flatMap((length, m) =>
    Array.from({ length: length * 24 }, (_, i) => hourLine(m + 1, Math.floor(i / 24) + 1, (i % 24) + 1)),
  );
  return [...HEADER, ...rows];
}

/** The year with one field of one line (from 1) replaced. */
function withField(line: number, field: number, value: string): string {
  const lines = year(false);
  const fields = (lines[line - 1] ?? '').split(',');
  fields[field] = value;
  lines[line - 1] = fields.join(',');
  return lines.join('\n');
}

describe('a weather file', () => {
  it('becomes flat arrays in the engine’s units', () => {
    const { weather, ground, filled, city } = expectOk(readEpw(year(false).join('\n')));
    expect(city).toBe('Somewhere');
    expect(weather.hours).toBe(8760);
    expect(weather.firstWeekday).toBe(2);
    expect(weather.place.latitude).toBeCloseTo(0.6981, 4);
    expect(weather.place.timeZone).toBe(-7 * 3600);
    expect(weather.airTemperature[0]).toBeCloseTo(283.25, 9);
    expect(weather.dewPoint[8759]).toBeCloseTo(275.65, 9);
    expect(weather.relativeHumidity[5]).toBeCloseTo(0.6, 12);
    expect(weather.pressure[5]).toBe(84_000);
    expect(weather.skyRadiation[5]).toBe(260);
    expect(weather.globalRadiation.slice(0, 8).at(-1)).toBe(400);
    expect(weather.windSpeed[5]).toBe(3.5);
    expect(weather.cloud[5]).toBeCloseTo(0.4, 12);
    expect(ground).toMatchObject([{ depth: 0.5 }]);
    expect(ground[0]?.months[11]).toBeCloseTo(285.15, 9);
    expect(filled).toEqual({});
  });

  it('may be a leap year, may end its lines as Windows does, may begin with a byte-order mark', () => {
    expect(expectOk(readEpw(`\ufeff${year(true).join('\r\n')}\r\n`)).weather.hours).toBe(8784);
  });

  it('has its missing codes and blanks filled, and says how many', () => {
    const lines = year(false);
    for (let i = 0; i < 3; i++) {
      const fields = (lines[1000 + i] ?? '').split(',');
      [fields[6], fields[8], fields[12], fields[13], fields[21], fields[9], fields[23]] = [
        '99.9',
        '999.',
        '9999.',
        '9999',
        '',
        '999999',
        '99',
      ];
      lines[1000 + i] = fields.join(',');
    }
    const { weather, filled } = expectOk(readEpw(lines.join('\n')));
    expect(filled).toEqual({
      airTemperature: 3,
      windSpeed: 3,
      globalRadiation: 3,
      pressure: 3,
      relativeHumidity: 3,
    });
    expect(weather.skyRadiation[993]).toBeNaN();
    expect(weather.cloud[993]).toBeCloseTo(0.6, 12);
    expect(weather.airTemperature.every(Number.isFinite)).toBe(true);
    expect(weather.globalRadiation[993]).toBe(weather.globalRadiation[993 - 24]);
  });

  it('takes the dew point from the humidity where there is none', () => {
    const { weather } = expectOk(readEpw(withField(9, 7, '99.9')));
    // 10.1 °C at 60 %: dew point 2.6 °C (any psychrometric chart).
    expect((weather.dewPoint[0] ?? 0) - 273.15).toBeCloseTo(2.6, 0);
  });

  it('is refused where a gap is too long, with its first line', () => {
    const lines = year(false).map((line, i) => {
      if (i < 500 || i >= 600) return line;
      const fields = line.split(',');
      fields[21] = '999';
      return fields.join(',');
    });
    expect(readEpw(lines.join('\n'))).toMatchObject({
      ok: false,
      issues: [{ code: 'ill-formed', where: 'line.501.windSpeed', reason: 'gap-too-long' }],
    });
  });

  const faults: [string, () => string, object][] = [
    ['nothing at all', () => '', { where: 'line.1', reason: 'file-ends' }],
    ['a header alone', () => HEADER.join('\n'), { reason: 'not-a-year', found: 0 }],
    [
      'half a year',
      () => year(false).slice(0, 5000).join('\n'),
      { where: 'line.5000', reason: 'not-a-year' },
    ],
    ['a year and an hour', () => [...year(false), hourLine(1, 1, 1)].join('\n'), { where: 'line.8769' }],
    [
      'a word for a number',
      () => withField(20, 6, 'warm'),
      { code: 'not-understood', where: 'line.20.airTemperature' },
    ],
    ['a hexadecimal number', () => withField(20, 6, '0x10'), { code: 'not-understood' }],
    [
      'an impossible wind',
      () => withField(20, 21, '140'),
      { code: 'out-of-range', where: 'line.20.windSpeed', max: 40 },
    ],
    ['hours out of order', () => withField(20, 3, '3'), { where: 'line.20', reason: 'out-of-sequence' }],
    ['a latitude of 95°', () => withField(1, 6, '95'), { where: 'line.1.place.latitude' }],
    ['four records an hour', () => withField(8, 2, '4'), { where: 'line.8.records-per-hour' }],
    ['an endless line', () => [...HEADER, 'x'.repeat(30_000)].join('\n'), { reason: 'line-too-long' }],
    ['an endless text', () => 'x'.repeat(LONGEST_TEXT + 1), { reason: 'too-long' }],
    ['polluting names', () => withField(20, 6, '__proto__'), { code: 'not-understood' }],
  ];
  it.each(faults)('refuses %s, saying where', (_, text, issue) => {
    const answer = readEpw(text());
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.issues[0]).toMatchObject(issue);
  });

  it('stops listing after twenty issues', () => {
    const answer = readEpw([...HEADER, ...Array.from({ length: 8760 }, () => 'a,b,c')].join('\n'));
    expect(answer.ok).toBe(false);
    if (!answer.ok) expect(answer.issues.length).toBeLessThanOrEqual(30);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 400 }), fc.integer({ min: 0, max: 7 }), (junk, at) => {
        const lines = [...HEADER];
        lines[at] = junk;
        expect(readEpw([...lines, junk, hourLine(1, 1, 1)].join('\n')).ok).toBe(false);
        expect(readEpw(junk).ok).toBe(false);
      }),
    );
  });
});
