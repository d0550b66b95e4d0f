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
  const asked = name === '--help' || name === '-h' ? 'help' : name;
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

// A reader that stops early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(STATUS.good);
  throw error;
});
process.exitCode = await main(process.argv.slice(2), realWorld());
