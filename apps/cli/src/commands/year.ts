import { heat } from '@firstfire/engine';
import { jobViewOf, type YearOptions, yearOfJob } from '@firstfire/job';
import { issueSentence, wordsOf } from '@firstfire/words';
import { loadJob, textOf } from '../job-file.ts';
import { oneOf, optionsOf } from '../options.ts';
import { printYear, yearAsJson } from '../print/year.ts';
import { Problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `year JOB`: what each basin takes in a typical year, with its cover and without. */
export function year(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    units: { type: 'string' },
    json: { type: 'boolean' },
    epw: { type: 'string' },
  });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0)
    throw new Problem('year takes one job file: firstfire year JOB.');
  const system = oneOf('units', values.units ?? 'us', ['us', 'si', 'mixed']);
  const view = jobViewOf(loadJob(name, world).document);
  const found = yearOfJob(view, values.epw === undefined ? {} : weatherOf(values.epw, world));
  world.out(values.json ? yearAsJson(found) : printYear(found, view, system));
  return found.state === 'known' ? STATUS.good : STATUS.unknown;
}

/** The hourly weather of an EPW file, or a problem with its line and column. */
function weatherOf(name: string, world: World): YearOptions {
  const read = heat.readEpw(textOf(name, world));
  if (read.ok) return { weather: { hours: read.value.weather, name: `${read.value.city} (${name})` } };
  const words = wordsOf('en');
  const sentences = read.issues.map((issue) =>
    issueSentence(issue, { words, show: (value) => String(value) }),
  );
  throw new Problem(sentences.map((sentence) => `${name}: ${sentence}`).join('\n           '));
}
