/** Puts real output into the README, between its marks. */
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));
export const README = join(ROOT, 'README.md');

interface Sample {
  readonly mark: string;
  readonly args: readonly string[];
  /** Lines shown; the rest is marked as left out. */
  readonly lines: number;
}

const SAMPLES: readonly Sample[] = [
  { mark: 'check', args: ['check', 'examples/house-pool.job.json'], lines: 34 },
  {
    mark: 'working',
    args: ['check', 'examples/house-pool.job.json', '--working', 'gas.section-capacity@s1'],
    lines: 40,
  },
  {
    mark: 'sum',
    args: [
      'sum',
      'gas-capacity',
      'gas=natural',
      'equation=low',
      'inside-diameter=0.824 in',
      'length=60 ft',
      'pressure-drop=0.5 in w.c.',
    ],
    lines: 10,
  },
];

/** The README with its samples made anew. */
export function readmeWithSamples(text: string): string {
  return SAMPLES.reduce((page, sample) => {
    const begin = `<!-- begin ${sample.mark} -->`;
    const end = `<!-- end ${sample.mark} -->`;
    const before = page.slice(0, page.indexOf(begin) + begin.length);
    return `${before}\n\n\`\`\`console\n${sampleText(sample)}\n\`\`\`\n\n${page.slice(page.indexOf(end))}`;
  }, text);
}

function sampleText({ args, lines }: Sample): string {
  const done = spawnSync(process.execPath, ['apps/cli/src/main.ts', ...args], {
    cwd: ROOT,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C' },
  });
  const all = done.stdout.trimEnd().split('\n');
  const shown = all.length > lines ? [...all.slice(0, lines), '  …'] : all;
  return [`$ npm run -s firstfire -- ${args.map(quoted).join(' ')}`, ...shown].join('\n');
}

function quoted(word: string): string {
  return /^[\w./=@:-]+$/.test(word) ? word : `'${word}'`;
}
