import { heat, quantity } from '@firstfire/engine';
import { jobViewOf, yearOfJob } from '@firstfire/job';
import { fill, issueSentence } from '@firstfire/words';
import { loadJob, textOf } from '../job-file.ts';
import { oneOf, onlyName, optionsOf, SYSTEMS } from '../options.ts';
import { visible } from '../print/visible.ts';
import { filledText, weatherPlace } from '../print/weather-file.ts';
import { printYear, yearAsJson } from '../print/year.ts';
import { Problem, problem, STATUS, underEachOther } from '../problem.ts';
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

/** The hourly weather of an EPW file, or a problem with its lines and columns. */
function weatherFile(path: string, world: World): { readonly year: heat.EpwYear; readonly name: string } {
  const read = heat.readEpw(textOf(path, world));
  if (read.ok) return { year: read.value, name: `${read.value.city} (${path})` };
  const { words, figures } = world.speech;
  const show = (value: number): string => quantity.formatNumber(value, figures);
  const texts = read.issues.map((issue) =>
    issueSentence(issue, { words, show, name: (where) => weatherPlace(where, words) }),
  );
  const said = words.phrases['cli.file-said'] ?? '';
  throw new Problem(() => underEachOther(texts.map((text) => fill(said, { file: path, text }))));
}
