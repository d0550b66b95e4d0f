import { describe, expect, it } from 'vitest';
import { expectOk } from '../../trace/index.ts';
import { coveredHours, setPoints } from './schedule.ts';

const WARM = 301.15;
const COOL = 295.15;
/** 1 January is a Wednesday. */
const calendar = { hours: 8760, firstWeekday: 3 };
const count = (values: Float64Array, wanted: number): number =>
  values.reduce((n, value) => n + (value === wanted ? 1 : 0), 0);

describe('set points', () => {
  it('hold all year, or in a season with both its days, also across the new year', () => {
    expect(count(expectOk(setPoints({ temperature: WARM }, calendar)), WARM)).toBe(8760);
    const summer = { from: { month: 4, day: 1 }, to: { month: 10, day: 31 } };
    expect(count(expectOk(setPoints({ temperature: WARM, season: summer }, calendar)), WARM)).toBe(214 * 24);
    const winter = { from: { month: 12, day: 1 }, to: { month: 2, day: 28 } };
    const hours = expectOk(setPoints({ temperature: WARM, season: winter }, calendar));
    expect(count(hours, WARM)).toBe(90 * 24);
    expect(hours[0]).toBe(WARM);
    expect(hours[4000]).toBe(0);
  });

  it('fall back at night', () => {
    const plan = { temperature: WARM, setBack: { from: 22, to: 6, temperature: COOL } };
    const hours = expectOk(setPoints(plan, calendar));
    expect(count(hours, COOL)).toBe(365 * 8);
    expect([hours[21], hours[22], hours[29], hours[30]]).toEqual([WARM, COOL, COOL, WARM]);
  });

  it('heat weekends only', () => {
    const week = { from: { weekday: 5, hour: 12 }, to: { weekday: 0, hour: 20 } };
    const hours = expectOk(setPoints({ temperature: WARM, week }, calendar));
    // Wednesday 1 January: Friday noon is hour 60, Sunday 20 h is hour 116.
    expect([hours[59], hours[60], hours[115], hours[116]]).toEqual([0, WARM, WARM, 0]);
    expect(count(hours, WARM)).toBe(52 * 56);
  });

  it('refuse days, hours and temperatures that are none', () => {
    const season = { from: { month: 2, day: 30 }, to: { month: 13, day: 1 } };
    expect(setPoints({ temperature: WARM, season }, calendar)).toMatchObject({
      ok: false,
      issues: [{ where: 'season.from' }, { where: 'season.to' }],
    });
    const setBack = { from: 25, to: 6, temperature: 400 };
    const answer = setPoints({ temperature: 28, setBack }, calendar);
    expect(answer.ok ? [] : answer.issues.map((issue) => issue.where)).toEqual([
      'temperature',
      'setBack.temperature',
      'setBack.from',
    ]);
  });
});

describe('a cover', () => {
  const night = Array.from({ length: 24 }, (_, hour) => (hour < 6 || hour >= 20 ? 1 : 0));

  it('is on by the day, and as said outside the season', () => {
    const season = { from: { month: 5, day: 1 }, to: { month: 9, day: 30 } };
    const hours = expectOk(coveredHours({ day: night, season, outOfSeason: 1 }, calendar));
    expect(count(hours, 1)).toBe(153 * 10 + 212 * 24);
    expect(count(expectOk(coveredHours({ day: night }, calendar)), 1)).toBe(365 * 10);
  });

  it('is refused with shares that are none', () => {
    expect(coveredHours({ day: [1, 2] }, calendar).ok).toBe(false);
    expect(coveredHours({ day: night.map(() => 1.5) }, calendar).ok).toBe(false);
  });
});
