/** Every rule is cited, spoken for, and told apart from every other. */
import { CODE_EDITIONS, RULES } from '@firstfire/reference';
import { ENGLISH } from '@firstfire/words';
import { describe, expect, it } from 'vitest';

const WITHOUT_SECTION = new Set(['physics', 'common practice, no source']);

describe('rules', () => {
  it('have ids of their own', () => {
    const ids = RULES.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(RULES.filter((rule) => !rule.id.startsWith(`${rule.line}.`)).map((rule) => rule.id)).toEqual([]);
  });

  it('cite document and section, or say that there is none', () => {
    const bare = RULES.flatMap((rule) =>
      rule.editions
        .filter(
          ({ edition, source }) => edition !== 'any' && !source.at && !WITHOUT_SECTION.has(source.known),
        )
        .map(() => rule.id),
    );
    expect(bare).toEqual([]);
  });

  it('belong to editions that can be asked about', () => {
    const known = new Set(['any', ...CODE_EDITIONS.map((one) => one.id)]);
    const strange = RULES.flatMap((rule) => rule.editions.map((entry) => entry.edition)).filter(
      (id) => !known.has(id),
    );
    expect(strange).toEqual([]);
  });

  it('date their editions', () => {
    const undated = RULES.flatMap((rule) =>
      rule.editions.filter((entry) => !/^\d{4}-\d{2}-\d{2}$/.test(entry.from)),
    );
    expect(undated).toEqual([]);
  });

  it('have words, and no words are left over', () => {
    const spoken = Object.keys(ENGLISH.rules).sort();
    expect(spoken).toEqual(RULES.map((rule) => rule.id).sort());
  });
});
