import { jobFileSchema } from '@firstfire/job';
import { optionsOf } from '../options.ts';
import { problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `schema`: JSON Schema of a job file. */
export async function schema(args: readonly string[], world: World): Promise<number> {
  const { positionals } = optionsOf(args, {});
  if (positionals.length > 0) throw problem('cli.usage.schema');
  world.out(JSON.stringify(await jobFileSchema(), undefined, 2));
  return STATUS.good;
}
