/** The yard map: every spot of the house example's yard at 10 cm, four turns each, beside the same spots asked one by one. */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { place } from '@firstfire/engine';
import { jobViewOf, readJobFile, yardQuestionOf } from '@firstfire/job';
import { profileOf } from '@firstfire/reference';
import { type BenchRow, microseconds, time } from './measure.ts';

const FILE = join(dirname(dirname(fileURLToPath(import.meta.url))), 'examples', 'house-pool.job.json');
const GOAL = 50_000;
const STEP = 0.1;

export function yardMapBench(): readonly BenchRow[] {
  const read = readJobFile(readFileSync(FILE, 'utf8'));
  if (!read.ok) throw new Error('the example cannot be read');
  const profile = profileOf({ country: 'US', region: 'CO' }, '2026-10-01');
  const question = yardQuestionOf(jobViewOf(read.value.document), 'h1', profile);
  if (!question.ok) throw new Error(JSON.stringify(question.issues));
  const asked = { ...question.value, step: STEP };
  const map = place.yardMap(asked);
  if (!map.ok) throw new Error(JSON.stringify(map.issues));
  const mapped = time(() => place.yardMap(asked), 3000);
  const single = time(() => oneByOne(asked, map.value), 3000);
  const spots = map.value.columns * map.value.rows;
  return [
    {
      name: `yard map of the house example, ${spots.toLocaleString('en')} spots, ${asked.turns.length} turns each`,
      ours: microseconds(mapped.median),
      against: `${microseconds(single.median)}, the same spots asked one by one`,
      ratio: (single.median / mapped.median).toFixed(0),
      goal: '50 ms median',
      met: mapped.median <= GOAL,
    },
  ];
}

/** The clearances of a heater at each spot, without blocks or order. */
function oneByOne(asked: place.YardQuestion, { x, y, columns, rows, step }: place.YardMap): number {
  const solids = asked.things.filter((one) => one.solid);
  let best = Number.NEGATIVE_INFINITY;
  for (let spot = 0; spot < columns * rows; spot += 1) {
    const at = { x: x + (spot % columns) * step, y: y + Math.floor(spot / columns) * step };
    if (!place.contains(asked.yard, at)) continue;
    for (const turn of asked.turns) {
      const heater = { ...asked.heater, at, turn };
      const found = place.clearances(heater, solids);
      let margin = Number.POSITIVE_INFINITY;
      for (const face of place.FACES) margin = Math.min(margin, found[face] / asked.faces[face] - 1);
      for (const one of asked.things)
        if (one.least > 0) margin = Math.min(margin, place.thingDistance(heater, one) / one.least - 1);
      if (margin > best) best = margin;
    }
  }
  return best;
}

if (import.meta.main) console.table(yardMapBench());
