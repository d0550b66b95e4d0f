/** The world around a command: the only file of the command line that reads the process. */
import { isAbsolute, resolve } from 'node:path';
import type { Speech } from '@firstfire/words';
import { visible } from './print/visible.ts';

export interface World {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** Colour only on a terminal, and never against NO_COLOR. */
  readonly colour: boolean;
  readonly today: string;
  /** The reader's language and how numbers are written there. */
  readonly speech: Speech;
  /** A path as the person meant it, from where the command was typed. */
  readonly path: (name: string) => string;
}

/** The locale that the environment names for messages, in the order of POSIX. */
export function environmentLocale(): string | undefined {
  const { env } = process;
  return env['LC_ALL'] || env['LC_MESSAGES'] || env['LANG'];
}

export function realWorld(speech: Speech): World {
  // npm runs scripts from the root of the repository and keeps the folder in which it was called.
  const from =
    process.env['npm_lifecycle_event'] === 'firstfire'
      ? (process.env['INIT_CWD'] ?? process.cwd())
      : process.cwd();
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    error: (text) => process.stderr.write(`${visible(text, false)}\n`),
    colour: process.stdout.isTTY === true && !process.env['NO_COLOR'],
    speech,
    today: new Date().toISOString().slice(0, 10),
    path: (name) => (isAbsolute(name) ? name : resolve(from, name)),
  };
}
