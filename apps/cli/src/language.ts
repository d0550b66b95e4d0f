/** The reader's language: `--lang`, wherever it stands, before what the environment says. */
import { LANGUAGES, type Speech, speechOf } from '@firstfire/words';
import { optionText } from './options.ts';
import { Problem, problem } from './problem.ts';

const OPTION = '--lang';

export interface Asked {
  /** What is left for the command. */
  readonly args: readonly string[];
  readonly lang: string | undefined;
}

/** Takes `--lang es` or `--lang=es` out; behind a bare `--` it is a name like any other. */
export function askedLanguage(argv: readonly string[]): Asked {
  const args: string[] = [];
  const found: (string | undefined)[] = [];
  const end = argv.indexOf('--') < 0 ? argv.length : argv.indexOf('--');
  for (let at = 0; at < end; at++) {
    const arg = argv[at] ?? '';
    if (arg === OPTION) found.push(++at < end ? argv[at] : undefined);
    else if (arg.startsWith(`${OPTION}=`)) found.push(arg.slice(OPTION.length + 1));
    else args.push(arg);
  }
  if (found.length > 1) throw problem('cli.option.twice', { option: OPTION });
  const [lang] = found;
  if (found.length === 1 && lang === undefined)
    throw new Problem((words) =>
      optionText('cli.option.value-missing', { option: OPTION, options: [] }, words),
    );
  return { args: [...args, ...argv.slice(end)], lang };
}

/** The speech that was asked for; a wrong name is answered with the languages there are. */
export async function speechNamed(lang: string): Promise<Speech> {
  const speech = await speechOf(lang);
  if (speech === undefined) throw problem('cli.option.lang', { value: lang, list: LANGUAGES.join(', ') });
  return speech;
}

/** What the environment asks for, where there are words for it; English else. */
export async function speechOfEnvironment(locale: string | undefined): Promise<Speech> {
  return (await speechOf(locale ?? '')) ?? speechNamed('en');
}
