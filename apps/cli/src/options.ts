/** Options of a command, by Node's own parser; a wrong one is a problem that names the right ones. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { Problem } from './problem.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

export function optionsOf<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    const known = Object.keys(options).map((name) => `--${name}`);
    const what = error instanceof Error ? error.message.split('. ')[0] : String(error);
    throw new Problem(`${what}. Options here: ${known.join(', ')}.`);
  }
}

/** One of a few words, or a problem that lists them. */
export function oneOf<const C extends readonly string[]>(name: string, value: string, choices: C): C[number] {
  if (choices.includes(value)) return value as C[number];
  throw new Problem(`--${name} “${value}”: one of ${choices.join(', ')} is expected.`);
}
