/** A year of use for a terminal: totals with and without the cover, then the months. */
import { type heat, quantity } from '@firstfire/engine';
import type { BasinName, BasinYearStudy, JobView, YearNote, YearOfUse, YearStudy } from '@firstfire/job';
import { figureText, fill, issueSentence, type Reader } from '@firstfire/words';
import { readingName, siteText } from './job-text.ts';
import { columns, wrap } from './table.ts';

const MONTHS = 12;
/** kg/m3. */
const WATER_DENSITY = 1000;

export interface YearPage {
  readonly view: JobView;
  readonly reader: Reader;
  /** What was missing in the weather file. */
  readonly filled: string;
}

export function printYear(study: YearStudy, { view, reader, filled }: YearPage): string {
  const { words } = reader.speech;
  const name = (path: string): string => readingName(path, words);
  const head = siteText(view, reader);
  if (study.state === 'unknown') {
    const missing = fill(words.phrases['missing'] ?? '', {
      readings: study.missing.map(name).join(', '),
    });
    return [head, wrap(`${words.verdicts.unknown}: ${missing}`, 100, '')].join('\n');
  }
  if (study.state === 'impossible') {
    const showIn = (value: number, kind: quantity.Kind | undefined): string =>
      figureText(value, kind, { ...reader, medium: 'water' });
    return [head, ...study.issues.map((issue) => issueSentence(issue, { words, show: showIn, name }))].join(
      '\n',
    );
  }
  const weather = fill(words.phrases['year.weather'] ?? '', { place: study.place });
  const above = filled === '' ? [head, weather] : [head, weather, filled];
  return [...above, ...study.basins.map((basin) => basinText(basin, reader))].join('\n\n');
}

function basinText(study: BasinYearStudy, reader: Reader): string {
  const { words, locale } = reader.speech;
  const { names, covered, bare } = study;
  const without = rows(bare, names, reader);
  const totals = [
    ['', words.phrases['year.with-cover'] ?? '', words.phrases['year.without-cover'] ?? ''],
    ...rows(covered, names, reader).map(([name, value], i) => [name, value, without[i]?.[1] ?? '']),
  ];
  const months = Array.from({ length: MONTHS }, (_, m) => [
    String(m + 1),
    energy(covered.answer.fuel[m] ?? 0, reader),
    energy(bare.answer.fuel[m] ?? 0, reader),
  ]);
  const fuel = words.phrases['year.fuel'] ?? '';
  const head = [words.phrases['year.month'] ?? '', fuel, fuel];
  const title = names.map(({ label }) => label.toLocaleUpperCase(locale)).join(' + ');
  const above = [title, ...study.notes.map((note) => noteText(note, names, reader))];
  return [...above, columns(totals, '  '), '', columns([head, ...months], '  ')].join('\n');
}

const NOTES: Readonly<Record<YearNote, string>> = {
  'shares-heaters': 'year.shares-heaters',
  'trades-water': 'year.trades-water',
  'spillway-not-counted': 'year.spillway-not-counted',
};

function noteText(note: YearNote, names: readonly BasinName[], { speech }: Reader): string {
  const text = fill(speech.words.phrases[NOTES[note]] ?? '', { first: names[0]?.label ?? '' });
  return wrap(`  ${text}`, 100, '  ');
}

type Row = readonly [name: string, value: string];

function rows(use: YearOfUse, names: readonly BasinName[], reader: Reader): readonly Row[] {
  const { words } = reader.speech;
  const { basins } = use.answer;
  /** A row for each basin; named after it where there are two. */
  const each = (what: string, text: (basin: heat.BasinYear) => string): Row[] =>
    basins.map((basin, i) => [
      basins.length === 1
        ? what
        : fill(words.phrases['year.of'] ?? '', { what, basin: names[i]?.label ?? '' }),
      text(basin),
    ]);
  return [
    ...each(words.phrases['year.heat'] ?? '', ({ flows }) => energy(sum(flows.heater), reader)),
    ...plantRows(use, reader),
    ...each(words.phrases['year.evaporated'] ?? '', ({ evaporated }) =>
      figureText(sum(evaporated) / WATER_DENSITY, 'volume', { ...reader, medium: 'water' }),
    ),
    ...each(
      words.phrases['year.short'] ?? '',
      ({ shortHours, wantedHours }) => `${sum(shortHours)} / ${wantedHours}`,
    ),
  ];
}

/** Fuel, electricity, money and carbon. */
function plantRows({ answer, cost }: YearOfUse, reader: Reader): readonly Row[] {
  const { words, figures } = reader.speech;
  const electricity = sum(answer.electricity);
  const firing: Row = [words.phrases['year.electricity'] ?? '', inUnit(electricity, 'kWh', reader)];
  return [
    [words.phrases['year.fuel'] ?? '', energy(sum(answer.fuel), reader)],
    ...(electricity > 0 ? [firing] : []),
    [
      words.phrases['year.cost'] ?? '',
      cost === undefined ? '–' : quantity.formatNumber(cost.total, { ...figures, decimals: 0 }),
    ],
    [
      words.phrases['year.carbon'] ?? '',
      cost === undefined ? '–' : figureText(cost.carbonDioxide, 'mass', { ...reader, medium: 'water' }),
    ],
  ];
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

function energy(joules: number, reader: Reader): string {
  return inUnit(joules, quantity.preferredUnit('energy', reader.system), reader);
}

function inUnit(joules: number, unit: string, { speech }: Reader): string {
  return quantity.formatQuantity(joules, unit, {
    kind: 'energy',
    digits: 3,
    style: 'trade',
    ...speech.figures,
  });
}

export function yearAsJson(study: YearStudy): string {
  const plain = (_key: string, value: unknown): unknown =>
    value instanceof Float64Array ? undefined : value;
  return JSON.stringify({ format: 'firstfire-year', version: 1, ...study }, plain, 2);
}
