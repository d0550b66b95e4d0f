import { jobViewOf, yearOfJob } from '@firstfire/job';
import { loadJob } from '../job-file.ts';
import { oneOf, onlyName, optionsOf, SYSTEMS } from '../options.ts';
import { visible } from '../print/visible.ts';
import { filledText } from '../print/weather-file.ts';
import { printYear, yearAsJson } from '../print/year.ts';
import { problem, STATUS } from '../problem.ts';
import { weatherFile } from '../weather-file.ts';
import type { World } from '../world.ts';

/** `year JOB`: what each basin takes in a typical year, with its cover and without. */
export function year(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    units: { type: 'string' },
    json: { type: 'boolean' },
    epw: { type: 'string' },
  });
  const name = onlyName(positionals, problem('cli.usage.year'));
  const reader = { system: oneOf('units', values.units ?? 'us', SYSTEMS), speech: world.speech };
  const view = jobViewOf(loadJob(name, world).document);
  const file = values.epw === undefined ? undefined : weatherFile(values.epw, world);
  const found = yearOfJob(view, file ? { weather: { hours: file.year.weather, name: file.name } } : {});
  const filled = file ? filledText(file.year.filled, world.speech.words) : '';
  world.out(values.json ? yearAsJson(found) : visible(printYear(found, { view, reader, filled }), false));
  return found.state === 'known' ? STATUS.good : STATUS.unknown;
}
