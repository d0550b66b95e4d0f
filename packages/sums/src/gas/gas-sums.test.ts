import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import type { AnySum } from '../sum.ts';
import { derate } from './derate.ts';
import { gasCapacity } from './gas-capacity.ts';
import { gasClock } from './gas-clock.ts';
import { gasDrop } from './gas-drop.ts';
import { tankVaporisation } from './tank-vaporisation.ts';

const { si } = quantity;

/** SI value of an example's text, or the text itself where it is a choice. */
function read(sum: AnySum, name: string, text: string): number | string {
  const input = sum.inputs[name];
  if (input?.type === 'choice') return text;
  const kind = input?.kind ?? sum.outputs[name]?.kind ?? 'ratio';
  const [value, ...unit] = text.split(' ');
  return si(Number(value), unit.join(' ') || '1', kind);
}

function given(sum: AnySum): Record<string, number | string> {
  return Object.fromEntries(
    Object.entries(sum.example.given).map(([name, text]) => [name, read(sum, name, text)]),
  );
}

describe.each([derate, gasCapacity, gasClock, gasDrop, tankVaporisation])('$name', (sum) => {
  it('gives its published example', () => {
    const answer = sum.run(given(sum));
    expect(answer.ok ? [] : answer.issues).toEqual([]);
    for (const [name, text] of Object.entries(sum.example.gives)) {
      const published = read(sum, name, text) as number;
      const found = answer.ok ? (answer.value[name] ?? Number.NaN) : Number.NaN;
      expect(Math.abs(found / published - 1)).toBeLessThan(sum.example.within);
    }
  });

  it('refuses what is not a number', () => {
    const bad = Object.entries(given(sum)).map(([name, value]) => [
      name,
      typeof value === 'number' ? Number.NaN : value,
    ]);
    expect(sum.run(Object.fromEntries(bad)).ok).toBe(false);
  });
});

describe('gas-capacity and gas-drop', () => {
  const high = {
    gas: 'propane',
    equation: 'high',
    'inside-diameter': 0.0158,
    length: 20,
    'inlet-pressure': 68_947,
  };

  it('are each other’s inverse at high pressure too', () => {
    const capacity = gasCapacity.run({ ...high, 'pressure-drop': 6894 });
    const flow = capacity.ok ? (capacity.value['capacity'] ?? 0) : 0;
    const drop = gasDrop.run({ ...high, flow });
    expect(drop.ok ? drop.value['pressure-drop'] : 0).toBeCloseTo(6894, 4);
  });

  it('ask for the inlet, and for an outlet above the atmosphere', () => {
    const none = gasCapacity.run({ ...high, 'inlet-pressure': undefined, 'pressure-drop': 6894 });
    expect(none.ok ? '' : none.issues[0]?.reason).toBe('needed-by-equation');
    const below = gasCapacity.run({ ...high, 'pressure-drop': 70_000 });
    expect(below.ok ? '' : below.issues[0]?.reason).toBe('outlet-below-atmosphere');
    const starved = gasDrop.run({ ...high, equation: 'low', 'inlet-pressure': 1740, flow: 0.1 });
    expect(starved.ok ? '' : starved.issues[0]?.reason).toBe('outlet-below-atmosphere');
  });
});
