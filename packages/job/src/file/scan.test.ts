import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Places } from './issue.ts';
import { scanJson } from './scan.ts';

function scanned(text: string, maxDepth = 40): string {
  const scan = scanJson(text, maxDepth, 'log');
  if (scan.ok) return 'ok';
  const { code, offset, path } = scan.problem;
  return `${code} ${offset}${path ? ` ${path}` : ''}`;
}

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** Valid JSON with some characters changed, dropped or put in. */
const nearlyJson = fc
  .tuple(
    fc.json(),
    fc.array(fc.tuple(fc.nat(200), fc.nat(1), fc.constantFrom(...'{}[]",:0-1.eE+tfn\\u \n\t\u0001é')), {
      maxLength: 3,
    }),
  )
  .map(([text, changes]) =>
    changes.reduce((changed, [at, drop, put]) => {
      const i = at % (changed.length + 1);
      return changed.slice(0, i) + put + changed.slice(i + drop);
    }, text),
  );

describe('the scan of a text', () => {
  // The platform's own parser says what is JSON. The scan is stricter only where it says so.
  it("[F3] agrees with the platform's own parser on what is JSON", () => {
    fc.assert(
      fc.property(fc.oneof(nearlyJson, fc.json(), fc.string()), (text) => {
        const scan = scanJson(text, 1000, 'log');
        const stricter = !scan.ok && ['forbidden-key', 'repeated-key'].includes(scan.problem.code);
        if (!stricter) expect(scan.ok).toBe(parses(text));
      }),
      { numRuns: 2000 },
    );
  });

  it('[F3] names the first character that is wrong', () => {
    const wrong: [string, string][] = [
      ['hello', 'not-json 0'],
      ['{"a" 1}', 'not-json 5 a'],
      ['{"a":1,}', 'not-json 7 a'],
      ["{'a':1}", 'not-json 1'],
      ['[1,2,]', 'not-json 5 [2]'],
      ['[1 2]', 'not-json 3 [0]'],
      ['[01]', 'not-json 2 [0]'],
      ['[1.]', 'not-json 3 [0]'],
      ['[-]', 'not-json 2 [0]'],
      ['[1e+]', 'not-json 4 [0]'],
      ['[+1]', 'not-json 1 [0]'],
      ['["a\nb"]', 'not-json 3 [0]'],
      ['["\\x"]', 'not-json 3 [0]'],
      ['["\\u00g0"]', 'not-json 6 [0]'],
      ['[nul]', 'not-json 4 [0]'],
      ['[NaN]', 'not-json 1 [0]'],
      ['{"a":[{"b":undefined}]}', 'not-json 11 a[0].b'],
      ['[1}', 'not-json 2 [0]'],
      ['{"a":1]', 'not-json 6 a'],
      ['{} {}', 'not-json 3'],
      ['[]]', 'not-json 2'],
      ['{1:2}', 'not-json 1'],
      ['// note\n{}', 'not-json 0'],
    ];
    for (const [text, expected] of wrong) {
      expect(parses(text)).toBe(false);
      expect(scanned(text)).toBe(expected);
    }
  });

  it('[F3] tells every text cut short from one that is wrong', () => {
    const whole = '{"a":[1,-2.5e+3,"x\\u00e9\\n",true,false,null,{}],"b":{"c":[]}}';
    expect(scanned(whole)).toBe('ok');
    for (let end = 0; end < whole.length; end++) {
      expect(scanned(whole.slice(0, end)), whole.slice(0, end)).toMatch(/^truncated /);
    }
  });

  it('[F6] stops at the depth allowed, and bears a million brackets', () => {
    expect(scanned('[[[]]]', 3)).toBe('ok');
    expect(scanned('[[[[]]]]', 3)).toBe('too-deep 3 [0][0][0]');
    expect(scanned('['.repeat(1_000_000))).toMatch(/^too-deep 40 /);
    expect(scanned('{"a":'.repeat(1_000_000))).toMatch(/^too-deep 200 /);
  });

  it('[F7] sees the names that reach into objects, however they are written', () => {
    expect(scanned('{"a":{"__proto__":1}}')).toBe('forbidden-key 6 a.__proto__');
    expect(scanned('{"\\u005f_proto__":1}')).toBe('forbidden-key 1 __proto__');
    expect(scanned('[{"constructor":1}]')).toBe('forbidden-key 2 [0].constructor');
    expect(scanned('{"prototype":1}')).toBe('forbidden-key 1 prototype');
    expect(scanned('{"a":"__proto__"}')).toBe('ok');
    expect(scanned('{"a":1,"b":2,"\\u0061":3}')).toBe('repeated-key 13 a');
  });

  it('[F8] knows where each entry of the log begins', () => {
    const text = '{"log":[{"a":1}, 2,[3],\n"x"],"other":[{}],"deep":{"log":[1,2]}}';
    const scan = scanJson(text, 40, 'log');
    expect(scan.ok && scan.offsets.log.map((offset) => text[offset])).toEqual(['{', '2', '[', '"']);
    expect(scan.ok && [...scan.offsets.members]).toEqual([
      ['log', text.indexOf('[{"a"')],
      ['other', text.indexOf('[{}]')],
      ['deep', text.indexOf('{"log":[1')],
    ]);
  });
});

describe('a place', () => {
  it('[F2] is told by line and column, from 1', () => {
    const places = new Places('ab\n\ncde');
    const at = (offset: number) => {
      const { line, column } = places.at(offset, '');
      return [line, column];
    };
    expect([0, 2, 3, 4, 6, 7].map(at)).toEqual([
      [1, 1],
      [1, 3],
      [2, 1],
      [3, 1],
      [3, 3],
      [3, 4],
    ]);
  });
});
