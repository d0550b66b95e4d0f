import { jobViewOf, yearOfJob } from '@firstfire/job';
import { loadJob } from '../job-file.ts';
import { oneOf, optionsOf } from '../options.ts';
import { printYear, yearAsJson } from '../print/year.ts';
import { Problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `year JOB`: what each basin takes in a typical year, with its cover and without. */
export function year(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, { units: { type: 'string' }, json: { type: 'boolean' } });
  const [name, ...more] = positionals;
  if (name === undefined || more.length > 0)
    throw new Problem('year takes one job file: firstfire year JOB.');
  const system = oneOf('units', values.units ?? 'us', ['us', 'si', 'mixed']);
  const view = jobViewOf(loadJob(name, world).document);
  const found = yearOfJob(view);
  world.out(values.json ? yearAsJson(found) : printYear(found, view, system));
  return found.state === 'known' ? STATUS.good : STATUS.unknown;
}
