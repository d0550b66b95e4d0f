import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, type Json, jsonProblem, sameJson } from './json.ts';

describe('canonical JSON', () => {
  // RFC 8785, section 3.2.2: the example object and its canonical text.
  it('[L9] writes numbers, strings and literals as the standard does', () => {
    const source =
      '{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
      '"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
    const expected =
      '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
      '"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}';
    expect(canonicalJson(JSON.parse(source) as Json)).toBe(expected);
  });

  // RFC 8785, section 3.2.3: member names in the order of their UTF-16 code units.
  it('[L9] sorts members as the standard does', () => {
    const names = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
    const text = canonicalJson(Object.fromEntries(names.map((name) => [name, 0])));
    const sorted = Object.keys(JSON.parse(text) as object).map((name) => text.indexOf(JSON.stringify(name)));
    expect(sorted.every((at) => at > 0)).toBe(true);
    const expected = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
    expect(text).toBe(`{${expected.map((name) => `${JSON.stringify(name)}:0`).join(',')}}`);
  });

  it('[L9] is read back as the same value by any parser, whatever the order of members', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value as Json);
        const back = JSON.parse(text) as Json;
        expect(canonicalJson(back)).toBe(text);
        expect(sameJson(back, value as Json)).toBe(true);
      }),
    );
    expect(sameJson({ a: 1, b: 2 }, { b: 2, a: 1 })).toBe(true);
    expect(sameJson([1, 2], [2, 1])).toBe(false);
  });
});

describe('a value of a log', () => {
  it('[L9] is JSON, finite and not too deep', () => {
    let deep: Json = 1;
    for (let i = 0; i < 33; i++) deep = [deep];
    const cyclic: Record<string, unknown> = {};
    cyclic['self'] = cyclic;
    const wrong: [unknown, string, string][] = [
      [undefined, 'not-json', ''],
      [{ a: [1, undefined] }, 'not-json', '.a[1]'],
      [{ when: new Date(0) }, 'not-json', '.when'],
      [[Number.POSITIVE_INFINITY], 'not-finite', '[0]'],
      [Number.NaN, 'not-finite', ''],
      [{ a: 1n }, 'not-json', '.a'],
      [JSON.parse('{"a":{"__proto__":1}}'), 'forbidden-key', '.a.__proto__'],
      [{ constructor: 1 }, 'forbidden-key', '.constructor'],
    ];
    for (const [value, code, path] of wrong) expect(jsonProblem(value)).toEqual({ code, path });
    expect(jsonProblem(deep)?.code).toBe('too-deep');
    expect(jsonProblem(cyclic)?.code).toBe('too-deep');
    expect(jsonProblem({ curve: [{ flow: 1, head: null }], text: 'é', on: false })).toBeUndefined();
  });
});
