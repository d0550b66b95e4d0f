/** The command line: the same studies and sums as everywhere, from a shell. */
import { check } from './commands/check.ts';
import { editions } from './commands/editions.ts';
import { help } from './commands/help.ts';
import { create } from './commands/new.ts';
import { recheck } from './commands/recheck.ts';
import { schema } from './commands/schema.ts';
import { sum } from './commands/sum.ts';
import { year } from './commands/year.ts';
import { Problem, STATUS } from './problem.ts';
import { realWorld, type World } from './world.ts';

type Command = (args: readonly string[], world: World) => number | Promise<number>;

const COMMANDS: Readonly<Record<string, Command>> = {
  check,
  editions,
  help,
  new: create,
  recheck,
  schema,
  sum,
  year,
};

/** Runs one command; the exit status. */
async function main(argv: readonly string[], world: World): Promise<number> {
  const [name = 'help', ...args] = argv;
  const asked = wantsHelp(argv) ? 'help' : name;
  const command = Object.hasOwn(COMMANDS, asked) ? COMMANDS[asked] : undefined;
  try {
    if (command === undefined) {
      throw new Problem(`“${name}” is not a command. Commands: ${Object.keys(COMMANDS).sort().join(', ')}.`);
    }
    return await command(args, world);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    world.error(`firstfire: ${error.message}`);
    return error.status;
  }
}

/** `--help` stands for the one page of help wherever it is typed; behind a bare `--` it is a name like any other. */
function wantsHelp(argv: readonly string[]): boolean {
  const end = argv.indexOf('--');
  return argv.slice(0, end < 0 ? undefined : end).some((one) => one === '--help' || one === '-h');
}

// A reader that stops early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(STATUS.good);
  process.stderr.write(`firstfire: the output cannot be written (${error.code}).\n`);
  process.exit(STATUS.badUse);
});
process.exitCode = await main(process.argv.slice(2), realWorld());
