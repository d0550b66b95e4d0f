/** Options of a command, by Node's own parser; a wrong one is a problem that names the right ones. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { type Dictionary, fill } from '@firstfire/words';
import { Problem, problem } from './problem.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

export function optionsOf<const O extends Options>(args: readonly string[], options: O) {
  const parsed = parsedBy(args, options);
  const once = new Set<string>();
  for (const token of parsed.tokens) {
    if (token.kind !== 'option' || options[token.name]?.multiple) continue;
    // Which of two was meant is not for a program to guess.
    if (once.has(token.name)) throw problem('cli.option.twice', { option: `--${token.name}` });
    once.add(token.name);
  }
  return parsed;
}

function parsedBy<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true, tokens: true });
  } catch (error) {
    throw new Problem((words) => wrongOption(error, options, words));
  }
}

/** Node says what is wrong in English only; its code, and the option in its text, tell it in any language. */
function wrongOption(error: unknown, options: Options, words: Dictionary): string {
  const { code = '', message } = error as NodeJS.ErrnoException;
  const option = /'(?:-\w, )?(-[^' ]*)/.exec(message)?.[1] ?? '';
  return optionText(wrongOptionPhrase(code, message), { option, options: Object.keys(options) }, words);
}

/** What is wrong with an option, and the options that there are. */
export function optionText(
  phrase: string,
  { option, options }: { readonly option: string; readonly options: readonly string[] },
  { phrases }: Dictionary,
): string {
  const list = [...options, 'lang'].map((name) => `--${name}`).join(', ');
  return fill(phrases[phrase] ?? '', { option, known: fill(phrases['cli.option.known'] ?? '', { list }) });
}

function wrongOptionPhrase(code: string, message: string): string {
  if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') return 'cli.option.unknown';
  return message.includes('does not take') ? 'cli.option.no-value' : 'cli.option.value-missing';
}

/** One of a few words, or a problem that lists them. */
export function oneOf<const C extends readonly string[]>(name: string, value: string, choices: C): C[number] {
  if (choices.includes(value)) return value as C[number];
  throw problem('cli.option.one-of', { option: `--${name}`, value, list: choices.join(', ') });
}

/** The one name that a command takes, or a problem that tells its use. */
export function onlyName(positionals: readonly string[], usage: Problem): string {
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0) throw usage;
  return name;
}

export const SYSTEMS = ['us', 'si', 'mixed'] as const;
