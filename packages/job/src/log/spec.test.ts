/** Every rule of the specifications is held by a test whose title begins with its id, and no test by a rule that is not there. */
import { describe, expect, it } from 'vitest';
import format from '../file/FORMAT.md?raw';
import spec from './SPEC.md?raw';

const sources: Record<string, string> = import.meta.glob('../{log,file}/**/*.test.ts', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const rules = [...`${spec}${format}`.matchAll(/^- \*\*([LF]\d+)\*\* /gm)].map((match) => match[1]!);
const tested = new Set(
  Object.values(sources).flatMap((source) =>
    [...source.matchAll(/it\(\s*['"`]\[([LF]\d+)\] /g)].map((match) => match[1]!),
  ),
);

describe('the specification', () => {
  it('has each rule once', () => {
    expect(rules.length).toBeGreaterThan(40);
    expect(new Set(rules).size).toBe(rules.length);
  });

  it('has a test for every rule', () => {
    expect(rules.filter((rule) => !tested.has(rule))).toEqual([]);
  });

  it('has a rule for every test', () => {
    expect([...tested].filter((rule) => !rules.includes(rule))).toEqual([]);
  });
});
