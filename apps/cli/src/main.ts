/** The command line: the same studies and sums as everywhere, from a shell. */
import { Problem, STATUS } from './problem.ts';
import { realWorld, type World } from './world.ts';

type Command = (args: readonly string[], world: World) => number | Promise<number>;

/** Each brings its own part of the project along: a sum need not wait for the code of a study to be read. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  check: async () => (await import('./commands/check.ts')).check,
  editions: async () => (await import('./commands/editions.ts')).editions,
  help: async () => (await import('./commands/help.ts')).help,
  new: async () => (await import('./commands/new.ts')).create,
  recheck: async () => (await import('./commands/recheck.ts')).recheck,
  schema: async () => (await import('./commands/schema.ts')).schema,
  sum: async () => (await import('./commands/sum.ts')).sum,
  year: async () => (await import('./commands/year.ts')).year,
};

/** Runs one command; the exit status. */
async function main(argv: readonly string[], world: World): Promise<number> {
  const [name = 'help', ...args] = argv;
  const asked = wantsHelp(argv) ? 'help' : name;
  const load = Object.hasOwn(COMMANDS, asked) ? COMMANDS[asked] : undefined;
  try {
    if (load === undefined) {
      throw new Problem(`“${name}” is not a command. Commands: ${Object.keys(COMMANDS).sort().join(', ')}.`);
    }
    const command = await load();
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
