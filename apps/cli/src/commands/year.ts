import { heat } from '@firstfire/engine';
import { jobViewOf, yearOfJob } from '@firstfire/job';
import { issueSentence, wordsOf } from '@firstfire/words';
import { loadJob, textOf } from '../job-file.ts';
import { oneOf, optionsOf } from '../options.ts';
import { visible } from '../print/visible.ts';
import { filledText, weatherPlace } from '../print/weather-file.ts';
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
  const file = values.epw === undefined ? undefined : weatherFile(values.epw, world);
  const found = yearOfJob(view, file ? { weather: { hours: file.year.weather, name: file.name } } : {});
  const filled = file ? filledText(file.year.filled) : '';
  world.out(values.json ? yearAsJson(found) : visible(printYear(found, { view, system, filled }), false));
  return found.state === 'known' ? STATUS.good : STATUS.unknown;
}

/** The hourly weather of an EPW file, or a problem with its lines and columns. */
function weatherFile(path: string, world: World): { readonly year: heat.EpwYear; readonly name: string } {
  const read = heat.readEpw(textOf(path, world));
  if (read.ok) return { year: read.value, name: `${read.value.city} (${path})` };
  const words = wordsOf('en');
  const sentences = read.issues.map((issue) =>
    issueSentence(issue, { words, show: String, name: weatherPlace }),
  );
  throw new Problem(sentences.map((sentence) => `${path}: ${sentence}`).join('\n           '));
}
