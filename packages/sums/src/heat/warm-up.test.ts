import { heat, quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { warmUp } from './warm-up.ts';

const GIVEN = {
  volume: 75,
  area: 50,
  start: 288.15,
  target: 301.15,
  output: 100_000,
  'air-temperature': 291.15,
  'relative-humidity': 0.5,
  'air-speed': 1,
};

const run = (change: Record<string, number | string> = {}): Readonly<Record<string, number>> => {
  const answer = warmUp.run({ ...GIVEN, ...change });
  return answer.ok ? answer.value : {};
};

describe('warm-up', () => {
  // Pool operator arithmetic of the example, 13.33 h, by water of 8.33 lb a gallon.
  it('gives its example', () => {
    const given = Object.entries(warmUp.example.given).map(([name, text]) => {
      const input = warmUp.inputs[name];
      if (input?.type !== 'number') return [name, text];
      const [value, unit] = text.split(' ');
      return [name, quantity.si(Number(value), unit ?? '1', input.kind)];
    });
    const answer = warmUp.run(Object.fromEntries(given));
    const naive = answer.ok ? (answer.value['naive-hours'] ?? 0) / 3600 : 0;
    expect(Math.abs(naive / 13.33 - 1)).toBeLessThan(warmUp.example.within);
    expect(answer.ok && (answer.value['hours'] ?? 0) / 3600).toBeGreaterThan(naive);
  });

  it('is quicker under a cover and has a higher plateau', () => {
    const [bare, covered] = [run(), run({ cover: 'foam' })];
    expect(covered['hours']).toBeLessThan(bare['hours'] ?? 0);
    expect(covered['plateau']).toBeGreaterThan(bare['plateau'] ?? 999);
    expect(covered['naive-hours']).toBe(bare['naive-hours']);
  });

  it('names the plateau where the target lies beyond it', () => {
    const answer = warmUp.run({ ...GIVEN, output: 15_000 });
    expect(answer).toMatchObject({
      ok: false,
      issues: [{ code: 'no-solution', where: 'target', reason: 'plateau' }],
    });
    if (!answer.ok) expect(answer.issues[0]?.max).toBeLessThan(GIVEN.target);
  });

  it('is refused by the name a person typed', () => {
    const where = (change: Record<string, number>): string | undefined => {
      const answer = warmUp.run({ ...GIVEN, ...change });
      return answer.ok ? undefined : answer.issues[0]?.where;
    };
    expect(where({ 'air-speed': 40 })).toBe('air-speed');
    expect(where({ volume: -2 })).toBe('volume');
    expect(where({ start: 100 })).toBe('start');
    expect(where({ 'relative-humidity': 0 })).toBe('relative-humidity');
  });

  it('knows every cover the engine knows', () => {
    const { cover } = warmUp.inputs;
    expect(cover?.type === 'choice' && [...cover.choices].sort()).toEqual(Object.keys(heat.COVERS).sort());
  });
});
