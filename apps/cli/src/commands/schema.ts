import { jobFileSchema } from '@firstfire/job';
import { optionsOf } from '../options.ts';
import { STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `schema`: JSON Schema of a job file. */
export function schema(args: readonly string[], world: World): number {
  optionsOf(args, {});
  world.out(JSON.stringify(jobFileSchema(), undefined, 2));
  return STATUS.good;
}
