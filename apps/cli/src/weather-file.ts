import { heat, quantity } from '@firstfire/engine';
import { fill, issueSentence } from '@firstfire/words';
import { textOf } from './job-file.ts';
import { weatherPlace } from './print/weather-file.ts';
import { Problem, underEachOther } from './problem.ts';
import type { World } from './world.ts';

export interface WeatherFile {
  readonly year: heat.EpwYear;
  readonly name: string;
}

/** The hourly weather of an EPW file, or a problem with its lines and columns. */
export function weatherFile(path: string, world: World): WeatherFile {
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
