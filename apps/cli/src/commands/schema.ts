import { jobFileSchema } from '@firstfire/job';
import { optionsOf } from '../options.ts';
import { Problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `schema`: JSON Schema of a job file. */
export function schema(args: readonly string[], world: World): number {
  const { positionals } = optionsOf(args, {});
  if (positionals.length > 0) throw new Problem('schema takes nothing: firstfire schema.');
  world.out(JSON.stringify(jobFileSchema(), undefined, 2));
  return STATUS.good;
}
