/** What rules of the codes ask of the readings taken together: the gas piping as one system, and when a heater was made. */
import { gas, type Issue, quantity, Recorder } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { recordFacts } from '../../facts/record-facts.ts';
import { type JobView, type ReadingPath, readingPath } from '../../facts/view.ts';
import type { Model, Output } from '../model.ts';

export function codeModels(view: JobView): readonly Model[] {
  return [pipingModel(view), ...plannedHeaters(view).map((heater) => madeModel(view, heater))];
}

/** One section as the codes count it; NaN or empty where it was not read. */
interface Section {
  readonly path: (field: string) => ReadingPath;
  readonly material: string;
  /** m, as the trade calls it: of corrugated tubing what it counts as. */
  readonly nominal: number;
  readonly length: number;
  readonly laid: boolean;
}

/** Length of a run over which Canada's code asks for more of a test: 60 m, 200 ft. */
const LONG_RUN = 60;

/** NPS 4, with what rounding may take from it. */
const NPS_4 = 4 * quantity.INCH - 1e-6;

const FACTS: readonly FactKey[] = [
  'job/-/csst',
  'job/-/test-run',
  'job/-/pipe-of-nps-4',
  'job/-/purge-large',
];

function pipingModel(view: JobView): Model {
  const sections = view.all('gasSegments').map((record) => sectionOf(view, record.id));
  const pressure = recordFacts('gasSupply', view.record('gasSupply', '-')).at('lockUpPressure');
  const working = pressure.fact.state === 'number' ? pressure.fact.value : Number.NaN;
  return {
    id: 'codes.piping',
    provides: FACTS,
    parameters: [],
    missing: sections.length === 0 ? ['gasSegments/-/material'] : [],
    wrong: [],
    run: () => ({
      ok: true,
      outputs: [
        csst(sections),
        testRun(sections),
        nps4(sections),
        largePurge(sections, working, pressure.path),
      ],
    }),
    explain: (fact) => explained(view, fact),
  };
}

/** The readings that decide, as they stand. */
function explained(view: JobView, fact: FactKey): Recorder['steps'] {
  const recorder = new Recorder();
  const fields =
    fact === 'job/-/csst' ? ['material'] : fact === 'job/-/test-run' ? ['length'] : ['size', 'length'];
  for (const { id } of view.all('gasSegments')) {
    const facts = recordFacts('gasSegments', view.record('gasSegments', id));
    for (const field of fields) {
      const { fact: read, path: reading } = facts.at(field);
      if (read.state === 'word') recorder.given({ id: 'reading', value: read.value, reading });
      if (read.state === 'number')
        recorder.given({ id: 'reading', value: read.value, kind: read.kind, reading });
    }
  }
  return recorder.steps;
}

function sectionOf(view: JobView, id: string): Section {
  const facts = recordFacts('gasSegments', view.record('gasSegments', id));
  const word = (field: string): string => {
    const { fact } = facts.at(field);
    return fact.state === 'word' ? fact.value : '';
  };
  const length = facts.at('length').fact;
  return {
    path: (field) => readingPath('gasSegments', id, field),
    material: word('material'),
    nominal: nominalOf(word('material'), word('size').trim()),
    length: length.state === 'number' ? length.value : Number.NaN,
    laid: word('planned') !== 'no',
  };
}

/** Size by name: `3/4`, `2-1/2`, `EHD 37`. No corrugated tubing counts for more than 2 in. */
function nominalOf(material: string, size: string): number {
  if (material === 'csst') return catalog.gas.EHD_62_NOMINAL;
  if (/^\d+$/.test(size)) return Number(size) * quantity.INCH;
  const [, whole = '0', over, under] = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(size) ?? [];
  return (Number(whole) + Number(over) / Number(under)) * quantity.INCH;
}

function csst(sections: readonly Section[]): Output {
  const fact = 'job/-/csst';
  if (sections.some(({ material }) => material === 'csst')) return { fact, word: 'yes' };
  const unread = sections.filter(({ material }) => material === '').map(({ path }) => path('material'));
  return unread.length > 0 ? { fact, unknown: unread } : { fact, word: 'no' };
}

/** Over what is to be laid, or over everything where nothing is. */
function testRun(sections: readonly Section[]): Output {
  const fact = 'job/-/test-run';
  const laid = sections.filter((one) => one.laid);
  const tested = laid.length > 0 ? laid : sections;
  const known = tested.filter(({ length }) => !Number.isNaN(length));
  if (known.reduce((sum, { length }) => sum + length, 0) > LONG_RUN) return { fact, word: 'long' };
  const unread = tested.filter(({ length }) => Number.isNaN(length)).map(({ path }) => path('length'));
  return unread.length > 0 ? { fact, unknown: unread } : { fact, word: 'short' };
}

function nps4(sections: readonly Section[]): Output {
  const fact = 'job/-/pipe-of-nps-4';
  if (sections.some(({ nominal }) => nominal >= NPS_4)) return { fact, word: 'yes' };
  const unread = sections.filter(({ nominal }) => Number.isNaN(nominal)).map(({ path }) => path('size'));
  return unread.length > 0 ? { fact, unknown: unread } : { fact, word: 'no' };
}

function largePurge(sections: readonly Section[], working: number, pressure: ReadingPath): Output {
  const fact = 'job/-/purge-large';
  const pipes = sections.filter(({ nominal, length }) => !Number.isNaN(nominal + length));
  const asked = gas.outdoorPurge(catalog.gas.OUTDOOR_PURGE, {
    workingPressure: Number.isNaN(working) ? 0 : working,
    pipes,
  });
  if (asked.outdoors) return { fact, word: 'yes' };
  const unread = [
    ...(Number.isNaN(working) ? [pressure] : []),
    ...sections.flatMap(({ nominal, length, path }) => [
      ...(Number.isNaN(nominal) ? [path('size')] : []),
      ...(Number.isNaN(length) ? [path('length')] : []),
    ]),
  ];
  return unread.length > 0 ? { fact, unknown: unread } : { fact, word: 'no' };
}

/** A month, or a day of it. */
const MADE = /^\d{4}-(0[1-9]|1[0-2])(-(0[1-9]|[12]\d|3[01]))?$/;

/** A month stands for its first day, so that the older limit holds in the month of a change. */
function madeModel(view: JobView, heater: string): Model {
  const fact: FactKey = `heater/${heater}/made`;
  const { fact: read, path } = recordFacts('heaters', view.record('heaters', heater)).at('made');
  const word = read.state === 'word' ? read.value : '';
  const wrong: readonly Issue[] =
    word === '' || MADE.test(word)
      ? []
      : [{ code: 'not-understood', where: path, found: word, reason: 'month-expected' }];
  return {
    id: `codes.made.${heater}`,
    provides: [fact],
    parameters: [],
    missing: word === '' ? [path] : [],
    wrong,
    run: () => ({ ok: true, outputs: [{ fact, word: word.length === 7 ? `${word}-01` : word }] }),
    explain: () => {
      const recorder = new Recorder();
      recorder.given({ id: 'reading', value: word, reading: path });
      return recorder.steps;
    },
  };
}
