import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ENGLISH, LANGUAGES, partsOf, speechOf, wordsOf } from '@firstfire/words';
import { describe, expect, it } from 'vitest';
import { type Answer, example, firstfire, temporaryFolder } from './run.ts';

const WORDS = new Map(await Promise.all(LANGUAGES.map(async (one) => [one, await wordsOf(one)] as const)));
const OTHERS = LANGUAGES.filter((language) => language !== 'en');
const EXAMPLES = ['house-pool', 'public-pool', 'swap', 'unfinished', 'winter-propane'];
const LINES = ['heat', 'gas', 'air', 'water', 'power', 'place'];

interface Printed {
  readonly verdict: string;
  readonly margin: string;
  readonly id: string;
}

/** Findings as they stand on the page: verdict by its code, margin, name. */
function findingsOf(out: string, language: (typeof LANGUAGES)[number]): Printed[] {
  const { verdicts } = WORDS.get(language) ?? ENGLISH;
  const heads = [...out.matchAll(/^ {2}(\S.{7})(.{7}) {2}\S/gm)];
  return heads.map((head, at) => {
    const block = out.slice(head.index, heads[at + 1]?.index);
    const word = (head[1] ?? '').trim();
    return {
      verdict: Object.entries(verdicts).find(([, text]) => text === word)?.[0] ?? word,
      margin: (head[2] ?? '').replace(/\s/g, ''),
      id: /^ {19}([a-z]+\.[a-z-]+@\S+)$/m.exec(block)?.[1] ?? '',
    };
  });
}

/** Figures of a page, whatever marks they are written with: a comma parts thousands or begins the decimals. */
async function figuresOf(out: string, language: string): Promise<readonly string[]> {
  const comma = (await speechOf(language))?.figures.marks?.decimal === ',';
  const thousands = comma ? /(\d)[\u00a0\u202f](?=\d{3}(?!\d))/g : /(\d)[,\u00a0\u202f](?=\d{3}(?!\d))/g;
  const plain = out.replace(thousands, '$1').replace(/(\d),(?=\d)/g, '$1.');
  return [...plain.matchAll(/\d+(?:\.\d+)*/g)].map(([figure]) => figure).sort();
}

const answers = new Map<string, Answer>();

/** Each command is run once, however many tests look at what it says. */
function said(...args: readonly string[]): Answer {
  const key = args.join('\0');
  const answer = answers.get(key) ?? firstfire(args);
  answers.set(key, answer);
  return answer;
}

describe.each(OTHERS)('in %s', (language) => {
  const { lines, phrases, verdicts, issues, sources } = WORDS.get(language) ?? ENGLISH;

  it.each(EXAMPLES)('check %s has the verdicts, margins and names of English', (name) => {
    const answer = said('check', example(name), '--lang', language);
    const before = said('check', example(name));
    expect(answer.status).toBe(before.status);
    const found = findingsOf(answer.out, language);
    expect(found.length).toBeGreaterThan(5);
    expect(found).toEqual(findingsOf(before.out, 'en'));
  });

  it.each(EXAMPLES)('check %s has the figures of English', async (name) => {
    const figures = await figuresOf(said('check', example(name), '--lang', language).out, language);
    expect(figures).toEqual(await figuresOf(said('check', example(name)).out, 'en'));
  });

  it('check answers all six lines, with citation and margin', () => {
    const { out } = said('check', example('house-pool'), '--lang', language);
    for (const line of LINES) {
      const row = out.split('\n').find((one) => one.startsWith(`${lines[line]} `));
      expect(row, line).toMatch(/[+−]\d+\s?%/);
      expect(out).toContain(`\n${(lines[line] ?? '').toUpperCase()}\n`);
    }
    expect(out).toContain('International Fuel Gas Code 2018');
    expect(out).toContain(`[${phrases['check-the-book']?.split(' ')[0]}`);
    expect(out).not.toContain(verdicts['not built']);
  });

  it('a citation of ordinary words is in the language', () => {
    const { out } = said('check', example('house-pool'), '--lang', language);
    expect(out.replace(/\s+/g, ' ')).toContain(sources['Heat balance of the water']);
    expect(out).not.toContain('Heat balance');
  });

  it('a working is opened in the language', () => {
    const args = ['check', example('house-pool'), '--working', 'gas.section-capacity@s1', '--lang', language];
    const { out, status } = firstfire(args);
    expect(out).toContain('19.17');
    expect(out).toContain(sources['from memory']);
    expect(out).not.toContain('from memory');
    expect(status).toBe(0);
  });

  it('year, sum, new and help speak it', () => {
    expect(firstfire(['year', example('house-pool'), '--lang', language]).out).toContain(
      phrases['year.fuel'],
    );
    expect(firstfire(['sum', 'static-head', '--lang', language]).out).toContain(
      `${phrases['cli.sum.inputs']}\n`,
    );
    expect(firstfire(['--lang', language, 'help']).out).toContain(phrases['cli.help.title']);
    const file = join(temporaryFolder(), 'job.json');
    const made = firstfire(['new', file, `--lang=${language}`]);
    expect(made.out).toContain((phrases['cli.new-written'] ?? '').split('{count}')[1]?.split('{')[0]);
    expect(made.status).toBe(0);
  });

  it('a wrong reading gives its sentence, and a broken file its place', () => {
    const survey = join(temporaryFolder(), 'survey.json');
    writeFileSync(survey, JSON.stringify({ site: { altitude: 'measured high' } }));
    const wrong = firstfire(['new', `${survey}.job`, '--from', survey, '--lang', language]);
    expect(wrong.error).toContain('site.altitude');
    expect(wrong.error).toContain((issues['not-understood'] ?? '').split('{found}')[1]?.split('{')[0]);
    expect(wrong.status).toBe(2);
    const broken = join(temporaryFolder(), 'broken.job.json');
    writeFileSync(broken, '{"log": {[');
    const { error } = firstfire(['check', broken, '--lang', language]);
    expect(error).toMatch(/:\d+:\d+/);
    expect(error).toContain(phrases['file.not-json']);
  });

  it('a sum reads and writes numbers as they are written there', async () => {
    const decimal = (await speechOf(language))?.figures.marks?.decimal ?? '.';
    const { out } = firstfire(['sum', 'static-head', `height=12${decimal}5 ft`, '--lang', language]);
    expect(out).toMatch(new RegExp(`pressure +5\\${decimal}414 psi`));
  });

  it('is taken from the environment, the option winning', () => {
    const title = phrases['cli.help.title'] ?? '';
    expect(firstfire(['help'], '', `${language}_US.UTF-8`).out).toContain(title);
    expect(firstfire(['help', '--lang', 'en'], '', `${language}_US.UTF-8`).out).not.toContain(title);
  });

  it('JSON and tables are the same as in English', () => {
    const json = ['check', example('house-pool'), '--json'];
    expect(said(...json, '--lang', language).out).toBe(said(...json).out);
    const table = 'height [ft]\n12.5\nhigh\n1,2,3\n';
    const csv = ['sum', 'static-head', '--csv', '-'];
    expect(firstfire([...csv, '--lang', language], table).out).toBe(firstfire(csv, table).out);
  });
});

describe('--lang', () => {
  it.each([
    [['check', example('house-pool'), '--lang', 'tlh'], LANGUAGES.join(', ')],
    [['--lang', 'tlh'], LANGUAGES.join(', ')],
    [['check', '--lang'], 'needs a value'],
    [['help', '--lang', 'en', '--lang=es'], '--lang stands twice'],
  ])('%j is a problem that says what would be right', (args, text) => {
    const { error, out, status } = firstfire(args);
    expect(error).toContain(text);
    expect(out).toBe('');
    expect(status).toBe(2);
  });

  it('speaks English where the environment has a language without words', () => {
    const { phrases } = ENGLISH;
    for (const locale of ['C', 'POSIX', 'de_DE.UTF-8', ''])
      expect(firstfire(['help'], '', locale).out).toContain(phrases['cli.help.title']);
  });

  it('takes the decimal sign of a country', () => {
    const page = (lang: string): string =>
      said('check', example('house-pool'), '--lang', lang).out.replace(/\s+/g, ' ');
    expect(page('es-ES')).toMatch(/hay \d+,\d+ pulg c\.a\./);
    expect(page('es-MX')).toMatch(/hay \d+\.\d+ pulg c\.a\./);
  });

  it('leaves a law that somebody entered for the job as it was typed', () => {
    const typed = 'Weld County code, after the book of the county';
    for (const language of OTHERS) {
      expect(
        partsOf(typed, (WORDS.get(language) ?? ENGLISH).sources).some((part) => part.as === undefined),
      ).toBe(true);
    }
  });
});
