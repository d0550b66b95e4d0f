/** The command line: the same studies and sums as everywhere, from a shell. */
import { fill } from '@firstfire/words';
import { askedLanguage, speechNamed, speechOfEnvironment } from './language.ts';
import { Problem, problem, STATUS } from './problem.ts';
import { environmentLocale, realWorld, type World } from './world.ts';

type Command = (args: readonly string[], world: World) => number | Promise<number>;

/** Each brings its own part of the project along: a sum need not wait for the code of a study to be read. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  check: async () => (await import('./commands/check.ts')).check,
  editions: async () => (await import('./commands/editions.ts')).editions,
  help: async () => (await import('./commands/help.ts')).help,
  new: async () => (await import('./commands/new.ts')).create,
  place: async () => (await import('./commands/place.ts')).place,
  recheck: async () => (await import('./commands/recheck.ts')).recheck,
  schema: async () => (await import('./commands/schema.ts')).schema,
  sum: async () => (await import('./commands/sum.ts')).sum,
  year: async () => (await import('./commands/year.ts')).year,
};

/** Runs one command in the language asked for; the exit status. */
async function main(argv: readonly string[], world: World): Promise<number> {
  let speech = world.speech;
  try {
    const { args, lang } = askedLanguage(argv);
    if (lang !== undefined) speech = await speechNamed(lang);
    return await runCommand(args, { ...world, speech });
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    world.error(`firstfire: ${error.said(speech.words)}`);
    return error.status;
  }
}

async function runCommand(argv: readonly string[], world: World): Promise<number> {
  const [name = 'help', ...args] = argv;
  const asked = wantsHelp(argv) ? 'help' : name;
  const load = Object.hasOwn(COMMANDS, asked) ? COMMANDS[asked] : undefined;
  if (load === undefined) {
    throw problem('cli.no-command', { name, list: Object.keys(COMMANDS).sort().join(', ') });
  }
  const command = await load();
  return command(args, world);
}

/** `--help` stands for the one page of help wherever it is typed; behind a bare `--` it is a name like any other. */
function wantsHelp(argv: readonly string[]): boolean {
  const end = argv.indexOf('--');
  return argv.slice(0, end < 0 ? undefined : end).some((one) => one === '--help' || one === '-h');
}

const world = realWorld(await speechOfEnvironment(environmentLocale()));

// A reader that stops early (`| head`) is no fault.
process.stdout.on('error', ({ code = '' }: NodeJS.ErrnoException) => {
  if (code === 'EPIPE') process.exit(STATUS.good);
  const said = world.speech.words.phrases['cli.output-unwritable'] ?? '';
  world.error(`firstfire: ${fill(said, { code })}`);
  process.exit(STATUS.badUse);
});
process.exitCode = await main(process.argv.slice(2), world);
