/**
 * The plant of a job: its models, one for each part that can be known by itself, so that what is missing in one
 * leaves the others standing.
 */

import type { JobView } from '../facts/view.ts';
import { airModels } from './air/models.ts';
import { codeModels } from './codes/models.ts';
import { combustionModels } from './combustion/models.ts';
import { gasModels } from './gas/models.ts';
import { handlingModels } from './handling/models.ts';
import { heatModels } from './heat/models.ts';
import type { KeptModels, Models } from './kept-models.ts';
import type { Model } from './model.ts';
import { drawnFirst, placeModels } from './place/models.ts';
import { powerModels } from './power/models.ts';
import { waterModels } from './water/models.ts';

const LINES: readonly Models[] = [
  heatModels,
  gasModels,
  airModels,
  combustionModels,
  waterModels,
  powerModels,
  placeModels,
  handlingModels,
  codeModels,
];

/** With `kept`, models whose readings have not changed are those of the last time. */
export function plantModels(view: JobView, kept?: KeptModels): readonly Model[] {
  return drawnFirst(LINES.flatMap((make) => kept?.models(make, view) ?? make(view)));
}
