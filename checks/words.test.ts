/** Everything the tool can speak of has words, and no words are left over. */
import * as engine from '@firstfire/engine';
import {
  FILE_FINDING_CODES,
  FILE_ISSUE_CODES,
  LOG_FINDING_CODES,
  RECORD_SPECS,
  SURVEY_ISSUE_CODES,
  WRITE_ISSUE_CODES,
} from '@firstfire/job';
import { RULES, SUBJECTS } from '@firstfire/reference';
import { SUMS } from '@firstfire/sums';
import { slotsOf, ENGLISH as words } from '@firstfire/words';
import { describe, expect, it } from 'vitest';
import { formulasIn } from './formulas.ts';
import {
  codesOfType,
  composedIds,
  familyPrefixes,
  hiddenIds,
  reasons,
  slotsGiven,
  stepIds,
} from './spoken.ts';
import { sourcesIn, textOf } from './tree.ts';

interface Holding {
  readonly missing: readonly string[];
  readonly leftOver: readonly string[];
}

const NOTHING: Holding = { missing: [], leftOver: [] };

function held(spoken: readonly string[], wanted: readonly string[]): Holding {
  return {
    missing: [...new Set(wanted)].filter((key) => !spoken.includes(key)).sort(),
    leftOver: spoken.filter((key) => !wanted.includes(key)).sort(),
  };
}

function keysOf(part: Readonly<Record<string, string>>, prefix = ''): string[] {
  return Object.keys(part).filter((key) => key.startsWith(prefix));
}

describe('words', () => {
  it('name every record and field of a job', () => {
    const wanted = RECORD_SPECS.flatMap(({ collection, fields }) => [
      collection,
      ...Object.keys(fields).map((field) => `${collection}.${field}`),
    ]);
    expect(held(keysOf(words.readings), wanted)).toEqual(NOTHING);
  });

  it('title every step of a working', () => {
    const wanted = [...stepIds(), ...formulasIn(engine).map((formula) => formula.id)];
    expect(wanted.length).toBeGreaterThan(100);
    expect(held(keysOf(words.formulas), wanted)).toEqual(NOTHING);
  });

  it('of a step can be told from its source', () => {
    expect(hiddenIds()).toEqual([]);
    expect(composedIds()).toEqual(familyPrefixes());
  });

  it('of a step leave no slot empty', () => {
    const given = slotsGiven();
    const empty = keysOf(words.formulas).flatMap((id) =>
      slotsOf(words.formulas[id] ?? '')
        .filter((slot) => !given(id).includes(slot))
        .map((slot) => `${id}: {${slot}}`),
    );
    expect(empty).toEqual([]);
  });

  it('explain every sum, its inputs and its outputs', () => {
    const wanted = SUMS.flatMap(({ name, inputs, outputs }) => [
      name,
      ...Object.keys({ ...inputs, ...outputs }).map((one) => `input.${one}`),
    ]);
    expect(held(keysOf(words.sums), wanted)).toEqual(NOTHING);
  });

  it('name every fact that a rule asks for', () => {
    const wanted = RULES.flatMap(({ numbers, words: asked }) =>
      [...Object.values(numbers), ...Object.values(asked)].map((fact) => `fact.${fact}`),
    );
    expect(held(keysOf(words.phrases, 'fact.'), wanted)).toEqual(NOTHING);
  });

  it('name every subject of a code', () => {
    const wanted = SUBJECTS.map((subject) => `code.${subject}`);
    expect(held(keysOf(words.phrases, 'code.'), wanted)).toEqual(NOTHING);
  });

  it('name every word that can be chosen or counted for a reading', () => {
    const choices = RECORD_SPECS.flatMap(({ fields }) => Object.values(fields)).flatMap((field) =>
      field.type === 'choice' ? field.choices : field.type === 'counts' ? field.of : [],
    );
    // Sizes, countries and letters are the same everywhere.
    const wanted = choices.filter((choice) => /[a-z]{2}/.test(choice));
    expect(held(keysOf(words.choices), wanted)).toEqual(NOTHING);
  });

  it('say where each reading is found', () => {
    // What stands in for another field is never asked for.
    const fields = RECORD_SPECS.flatMap(({ collection, fields }) =>
      Object.entries(fields).flatMap(([field, { type }]) =>
        type === 'substitute' ? [] : [`${collection}.${field}`],
      ),
    );
    expect(held(keysOf(words.help), fields)).toEqual(NOTHING);
  });

  it('say every issue, with or without its range and reason', () => {
    const wanted = [
      ...engine.ISSUE_CODES,
      'out-of-range.open',
      'contradiction.bare',
      'ill-formed.bare',
      'because',
      'expected',
      'limit',
    ];
    const spoken = keysOf(words.issues).filter((key) => !/^(reason|survey|write)\./.test(key));
    expect(held(spoken, wanted)).toEqual(NOTHING);
  });

  it('say every reason', () => {
    const wanted = [...reasons(), ...codesOfType('packages/job/src/log', 'OperationProblemCode')];
    expect(
      held(
        keysOf(words.issues, 'reason.'),
        wanted.map((one) => `reason.${one}`),
      ),
    ).toEqual(NOTHING);
  });

  it.each([
    ['survey', words.issues, SURVEY_ISSUE_CODES],
    ['write', words.issues, WRITE_ISSUE_CODES],
    ['log', words.phrases, LOG_FINDING_CODES],
    ['file', words.phrases, [...FILE_ISSUE_CODES, ...FILE_FINDING_CODES]],
  ])('say what may be wrong with a %s', (prefix, part, codes) => {
    expect(
      held(
        keysOf(part, `${prefix}.`),
        codes.map((code) => `${prefix}.${code}`),
      ),
    ).toEqual(NOTHING);
  });

  it('of every other phrase are asked for somewhere', () => {
    // Of words, what puts sentences together; the dictionaries beside it hold every key and ask for none.
    const sentences = sourcesIn('packages/words/src').filter((path) =>
      /^packages\/words\/src\/[^/]+$/.test(path),
    );
    const readers = [...['apps', 'packages/reference', 'packages/job'].flatMap(sourcesIn), ...sentences]
      .map(textOf)
      .join('\n');
    const others = keysOf(words.phrases).filter((key) => !/^(fact|log|file|code)[.-]/.test(key));
    // What a subject is called by its phrase: `subject.` stands before the name that the sources hold.
    const asked = (key: string): boolean =>
      readers.includes(`'${key.replace(/^(app|subject)\.|-with-valves$/g, '')}'`) || askedOfFamily(key);
    // One of a family that is asked for by a name put together: `stage.${name}`.
    const askedOfFamily = (key: string): boolean =>
      /^app\.[^.]+\../.test(key) && readers.includes(`\`${key.split('.')[1]}.\${`);
    expect(others.filter((key) => !asked(key))).toEqual([]);
  });

  it('are there', () => {
    const empty = [words.readings, words.formulas, words.issues, words.sums, words.phrases].flatMap((part) =>
      keysOf(part).filter((key) => part[key]?.trim() === ''),
    );
    expect(empty).toEqual([]);
  });
});
