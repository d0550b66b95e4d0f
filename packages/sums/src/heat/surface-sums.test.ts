import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import { atmosphere } from '../properties/atmosphere.ts';
import { waterProperties } from '../properties/water-properties.ts';
import type { AnySum } from '../sum.ts';
import { evaporation } from './evaporation.ts';
import { poolLoss } from './pool-loss.ts';

/** SI value of an example's text, or the text itself where it is a choice. */
function read(sum: AnySum, name: string, text: string): number | string {
  const input = sum.inputs[name];
  if (input?.type === 'choice') return text;
  const kind = input?.kind ?? sum.outputs[name]?.kind ?? 'ratio';
  const [value, ...unit] = text.split(' ');
  return quantity.si(Number(value), unit.join(' ') || '1', kind);
}

describe.each([atmosphere, evaporation, poolLoss, waterProperties])('$name', (sum) => {
  it('gives its example', () => {
    const given = Object.entries(sum.example.given).map(([name, text]) => [name, read(sum, name, text)]);
    const answer = sum.run(Object.fromEntries(given));
    expect(answer.ok ? [] : answer.issues).toEqual([]);
    for (const [name, text] of Object.entries(sum.example.gives)) {
      const published = read(sum, name, text) as number;
      const found = answer.ok ? (answer.value[name] ?? Number.NaN) : Number.NaN;
      expect(Math.abs(found / published - 1)).toBeLessThan(sum.example.within);
    }
  });

  it('refuses what is not a number', () => {
    const bad = Object.entries(sum.inputs).map(([name, input]) => [
      name,
      input.type === 'choice' ? input.choices[0] : Number.NaN,
    ]);
    expect(sum.run(Object.fromEntries(bad)).ok).toBe(false);
  });
});

const GIVEN = {
  'water-temperature': 300.15,
  'air-temperature': 295.15,
  'relative-humidity': 0.5,
  'air-speed': 1,
};

const firstIssue = (sum: AnySum, given: Record<string, number | string>) => {
  const answer = sum.run(given);
  return answer.ok ? undefined : answer.issues[0];
};

describe('a water surface', () => {
  it('asks for the air speed its method needs, and refuses one its method does not know', () => {
    const { 'air-speed': _, ...still } = GIVEN;
    expect(firstIssue(evaporation, { ...still, method: 'smith' })).toMatchObject({ where: 'air-speed' });
    expect(firstIssue(evaporation, { ...still, method: 'shah' })).toBeUndefined();
    expect(firstIssue(evaporation, { ...GIVEN, method: 'ashrae' })).toMatchObject({
      where: 'air-speed',
      max: 0.1525,
    });
  });

  it('names its inputs as they are typed', () => {
    const hot = { ...GIVEN, method: 'smith', 'water-temperature': 400 };
    expect(firstIssue(evaporation, hot)).toMatchObject({ where: 'water-temperature' });
  });

  it('wants either the sky or the cloud', () => {
    const pool = { ...GIVEN, method: 'smith', area: 50 };
    const expected = ['sky-temperature', 'cloud'];
    expect(firstIssue(poolLoss, pool)).toMatchObject({ where: 'sky-temperature', expected });
    expect(firstIssue(poolLoss, { ...pool, cloud: 0.5, 'sky-temperature': 280 })).toMatchObject({
      where: 'cloud',
    });
    const radiation = (cloud: number) => {
      const answer = poolLoss.run({ ...pool, cloud });
      return answer.ok ? (answer.value['radiation'] ?? Number.NaN) : Number.NaN;
    };
    expect(radiation(1)).toBeLessThan(radiation(0));
  });

  it('evaporates the more the more it is used', () => {
    const flux = (method: string, activity: number) => {
      const { 'air-speed': _, ...still } = GIVEN;
      const answer = evaporation.run({ ...still, 'air-speed': 0.1, method, activity });
      return answer.ok ? (answer.value['mass-flux'] ?? Number.NaN) : Number.NaN;
    };
    for (const method of ['smith', 'ashrae', 'carrier', 'shah']) {
      expect(flux(method, 1) / flux(method, 0.5)).toBeCloseTo(2, 9);
    }
  });
});
