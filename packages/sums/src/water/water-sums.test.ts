import { quantity } from '@firstfire/engine';
import { describe, expect, it } from 'vitest';
import type { AnySum } from '../sum.ts';
import { fittingLoss } from './fitting-loss.ts';
import { pipeLoss } from './pipe-loss.ts';
import { staticHead } from './static-head.ts';
import { temperatureRise } from './temperature-rise.ts';
import { turnover } from './turnover.ts';

const { si } = quantity;

/** SI value of an example's text, or the text itself where it is a choice. */
function read(sum: AnySum, name: string, text: string): number | string {
  const input = sum.inputs[name];
  if (input?.type === 'choice') return text;
  const kind = input?.kind ?? sum.outputs[name]?.kind ?? 'ratio';
  const [value, ...unit] = text.split(' ');
  return si(Number(value), unit.join(' ') || '1', kind);
}

describe.each([fittingLoss, pipeLoss, staticHead, temperatureRise, turnover])('$name', (sum) => {
  it('gives its published example', () => {
    const given = Object.entries(sum.example.given).map(([name, text]) => [name, read(sum, name, text)]);
    const answer = sum.run(Object.fromEntries(given));
    expect(answer.ok).toBe(true);
    for (const [name, text] of Object.entries(sum.example.gives)) {
      const published = read(sum, name, text) as number;
      const found = answer.ok ? (answer.value[name] ?? Number.NaN) : Number.NaN;
      expect(Math.abs(found / published - 1)).toBeLessThan(sum.example.within);
    }
  });

  it('refuses what is not a number', () => {
    const bad = Object.keys(sum.inputs).map((name) => [name, name === 'method' ? 'darcy' : Number.NaN]);
    expect(sum.run(Object.fromEntries(bad)).ok).toBe(false);
  });
});

describe('pipe-loss', () => {
  const run = { temperature: 290, 'inside-diameter': 0.05, length: 30, flow: 0.004 };

  it('asks for the figure its method needs and takes no other in its place', () => {
    const darcy = pipeLoss.run({ ...run, method: 'darcy', 'c-factor': 150 });
    expect(darcy.ok ? '' : darcy.issues[0]?.where).toBe('roughness');
    const hazen = pipeLoss.run({ ...run, method: 'hazen-williams', roughness: 1e-6 });
    expect(hazen.ok ? '' : hazen.issues[0]?.where).toBe('c-factor');
  });

  it('loses less in warm water by the physical law, the same by Hazen–Williams', () => {
    const loss = (x: Record<string, number | string>) => {
      const answer = pipeLoss.run({ ...run, roughness: 1.5e-6, 'c-factor': 150, ...x });
      return answer.ok ? (answer.value['head-loss'] ?? Number.NaN) : Number.NaN;
    };
    expect(loss({ method: 'darcy', temperature: 311 })).toBeLessThan(0.95 * loss({ method: 'darcy' }));
    const hazen = { method: 'hazen-williams' };
    expect(loss({ ...hazen, temperature: 311 })).toBe(loss(hazen));
  });
});
