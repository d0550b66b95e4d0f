/** Every rule, in every edition, just under, at and just over its limit; and that a rule made wrong is noticed. */
import { describe, expect, it } from 'vitest';
import { RULES } from './index.ts';
import { PROOFS } from './limits.table.ts';
import { type Asked, faultsOf, isOther, mutantsOf, type Proof } from './proof/index.ts';

const ENTRIES: readonly Asked[] = RULES.flatMap((rule) =>
  rule.editions.map((edition) => ({ rule, edition })),
);
const nameOf = ({ rule, edition }: Asked): string => `${rule.id} in ${edition.edition}`;
const nameOfProof = ({ rule, edition }: Proof): string => `${rule} in ${edition}`;

function proofOf(asked: Asked): Proof | undefined {
  return PROOFS.find((one) => nameOfProof(one) === nameOf(asked));
}

const PROVED = ENTRIES.flatMap((asked) => {
  const proof = proofOf(asked);
  return proof === undefined ? [] : [{ name: nameOf(asked), asked, proof }];
});

describe('a rule in an edition', () => {
  it('has a proof, one alone, and no proof is of none', () => {
    const wanted = ENTRIES.map(nameOf).sort();
    const proved = PROOFS.map(nameOfProof).sort();
    expect(proved).toEqual(wanted);
  });

  it.each(PROVED)('$name', ({ asked, proof }) => {
    expect(faultsOf(asked, proof)).toEqual([]);
  });
});

/** One word of two, of which any other than the first is taken for the second. */
const SAME = new Set(['gas.purge-where B149.1-20 .by', 'gas.purge-inert B149.1-20 .by']);

describe('a rule made wrong', () => {
  it.each(PROVED)('$name is found out', ({ asked, proof }) => {
    const unseen = mutantsOf(asked)
      .filter((mutant) => faultsOf(mutant, proof).length === 0 && isOther(mutant))
      .map(({ what }) => what)
      .filter((what) => !SAME.has(what));
    // A rule that never gives a figure has no guard.
    const figures = proof.cases.some((one) => one.sense !== 'answer');
    expect(unseen.filter((what) => figures || !what.endsWith(' guard'))).toEqual([]);
  });
});
