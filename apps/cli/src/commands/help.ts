import { fill, LANGUAGES } from '@firstfire/words';
import { wrap } from '../print/table.ts';
import { STATUS } from '../problem.ts';
import type { World } from '../world.ts';

interface Use {
  readonly typed: readonly string[];
  /** Key of what it does. */
  readonly does: string;
  readonly such?: string;
}

const USES: readonly Use[] = [
  {
    typed: [
      'check JOB [--line LINE] [--units us|si|mixed] [--json] [--working FINDING]',
      '      [--variant NAME] [--epw FILE]',
    ],
    does: 'cli.help.check',
  },
  { typed: ['year JOB [--epw FILE] [--units us|si|mixed] [--json]'], does: 'cli.help.year' },
  {
    typed: ['place JOB [--step 10cm] [--heater ID] [--units us|si|mixed] [--json]', '      [--svg FILE]'],
    does: 'cli.help.place',
  },
  { typed: ['editions JOB --from EDITION --to EDITION'], does: 'cli.help.editions' },
  { typed: ['recheck DIR [--edition EDITION]'], does: 'cli.help.recheck' },
  { typed: ['sum'], does: 'cli.help.sum-list' },
  { typed: ['sum NAME'], does: 'cli.help.sum-one' },
  {
    typed: ['sum NAME name=value ...'],
    does: 'cli.help.sum-case',
    such: "firstfire sum static-head 'height=12 ft'",
  },
  { typed: ['sum NAME --csv FILE|-'], does: 'cli.help.sum-table', such: "--out 'capacity [ft3/h]'" },
  { typed: ['new FILE [--from SURVEY] [--name NAME]'], does: 'cli.help.new' },
  { typed: ['schema'], does: 'cli.help.schema' },
  { typed: ['... --lang LANG'], does: 'cli.help.lang' },
];

export function help(_args: readonly string[], { speech, out }: World): number {
  const { phrases } = speech.words;
  const list = LANGUAGES.join(', ');
  const uses = USES.map(({ typed, does, such }) => {
    const text = fill(phrases[does] ?? '', { list });
    return [
      ...typed.map((part, index) => `  ${index === 0 ? 'firstfire ' : ''}${part}`),
      `      ${[text, such].filter(Boolean).join('  ')}`,
    ].join('\n');
  });
  const parts = ['cli.help.title', 'cli.help.status', 'safety'].map((key) =>
    wrap(phrases[key] ?? '', 100, ''),
  );
  const [title = '', ...rest] = parts;
  out([title, uses.join('\n'), ...rest].join('\n\n'));
  return STATUS.good;
}
