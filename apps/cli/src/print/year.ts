/** A year of use for a terminal: totals with and without the cover, then the months. */
import { quantity } from '@firstfire/engine';
import type { BasinYearStudy, JobView, YearOfUse, YearStudy } from '@firstfire/job';
import { fill, issueSentence, wordsOf } from '@firstfire/words';
import { type System, show } from './finding-text.ts';
import { readingName, siteText } from './job-text.ts';
import { columns, wrap } from './table.ts';

const words = wordsOf('en');
const MONTHS = 12;

export function printYear(study: YearStudy, view: JobView, system: System): string {
  const head = siteText(view, system);
  if (study.state === 'unknown') {
    const missing = fill(words.phrases['missing'] ?? '', {
      readings: study.missing.map(readingName).join(', '),
    });
    return [head, wrap(`${words.verdicts.unknown}: ${missing}`, 100, '')].join('\n');
  }
  if (study.state === 'impossible') {
    const showIn = (value: number, kind: quantity.Kind | undefined): string =>
      show(value, kind, { system, medium: 'water' });
    return [
      head,
      ...study.issues.map((issue) => issueSentence(issue, { words, show: showIn, name: readingName })),
    ].join('\n');
  }
  const weather = fill(words.phrases['year.weather'] ?? '', { place: study.place });
  return [head, weather, ...study.basins.map((basin) => basinText(basin, system))].join('\n\n');
}

function basinText({ label, covered, bare }: BasinYearStudy, system: System): string {
  const totals = [
    ['', words.phrases['year.with-cover'] ?? '', words.phrases['year.without-cover'] ?? ''],
    ...rows(covered, system).map(([name, value], index) => [
      name,
      value,
      rows(bare, system)[index]?.[1] ?? '',
    ]),
  ];
  const months = Array.from({ length: MONTHS }, (_, m) => [
    String(m + 1),
    energy(covered.answer.fuel[m] ?? 0, system),
    energy(bare.answer.fuel[m] ?? 0, system),
  ]);
  const head = [
    words.phrases['year.month'] ?? '',
    words.phrases['year.fuel'] ?? '',
    words.phrases['year.fuel'] ?? '',
  ];
  return [label.toUpperCase(), columns(totals, '  '), '', columns([head, ...months], '  ')].join('\n');
}

function rows({ answer, cost }: YearOfUse, system: System): [string, string][] {
  const [basin] = answer.basins;
  const sum = (values: readonly number[] | undefined): number => (values ?? []).reduce((a, b) => a + b, 0);
  const short = sum(basin?.shortHours);
  return [
    [words.phrases['year.heat'] ?? '', energy(sum(basin?.flows.heater), system)],
    [words.phrases['year.fuel'] ?? '', energy(sum(answer.fuel), system)],
    [words.phrases['year.cost'] ?? '', cost === undefined ? '–' : cost.total.toFixed(0)],
    [
      words.phrases['year.carbon'] ?? '',
      cost === undefined ? '–' : show(cost.carbonDioxide, 'mass', { system, medium: 'water' }),
    ],
    [
      words.phrases['year.evaporated'] ?? '',
      show(sum(basin?.evaporated) / 1000, 'volume', { system, medium: 'water' }),
    ],
    [words.phrases['year.short'] ?? '', `${short} / ${basin?.wantedHours ?? 0}`],
  ];
}

function energy(joules: number, system: System): string {
  return quantity.formatQuantity(joules, quantity.preferredUnit('energy', system), {
    kind: 'energy',
    digits: 3,
    style: 'trade',
  });
}

export function yearAsJson(study: YearStudy): string {
  const plain = (_key: string, value: unknown): unknown =>
    value instanceof Float64Array ? undefined : value;
  return JSON.stringify({ format: 'firstfire-year', version: 1, ...study }, plain, 2);
}
