/** Options of a command, by Node's own parser; a wrong one is a problem that names the right ones. */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { Problem } from './problem.ts';

type Options = NonNullable<ParseArgsConfig['options']>;

export function optionsOf<const O extends Options>(args: readonly string[], options: O) {
  const parsed = parsedBy(args, options);
  const once = new Set<string>();
  for (const token of parsed.tokens) {
    if (token.kind !== 'option' || options[token.name]?.multiple) continue;
    // Which of two was meant is not for a program to guess.
    if (once.has(token.name)) throw new Problem(`--${token.name} stands twice; once is enough.`);
    once.add(token.name);
  }
  return parsed;
}

function parsedBy<const O extends Options>(args: readonly string[], options: O) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true, tokens: true });
  } catch (error) {
    const known = Object.keys(options).map((name) => `--${name}`);
    const here = known.length === 0 ? 'There are no options here' : `Options here: ${known.join(', ')}`;
    const what = error instanceof Error ? error.message.split('. ')[0] : String(error);
    throw new Problem(`${what}. ${here}.`);
  }
}

/** One of a few words, or a problem that lists them. */
export function oneOf<const C extends readonly string[]>(name: string, value: string, choices: C): C[number] {
  if (choices.includes(value)) return value as C[number];
  throw new Problem(`--${name} “${value}”: one of ${choices.join(', ')} is expected.`);
}
