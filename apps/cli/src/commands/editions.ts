import { changesBetween, jobViewOf, study } from '@firstfire/job';
import { CODE_EDITIONS } from '@firstfire/reference';
import { loadJob } from '../job-file.ts';
import { oneOf, onlyName, optionsOf, SYSTEMS } from '../options.ts';
import { printChanges } from '../print/changes.ts';
import { visible } from '../print/visible.ts';
import { problem, STATUS } from '../problem.ts';
import type { World } from '../world.ts';

/** `editions JOB --from X --to Y`: what would change for this job under another edition of a code. */
export function editions(args: readonly string[], world: World): number {
  const { values, positionals } = optionsOf(args, {
    from: { type: 'string' },
    to: { type: 'string' },
    units: { type: 'string' },
  });
  const name = onlyName(positionals, problem('cli.usage.editions', { list: knownEditions().join(', ') }));
  const reader = { system: oneOf('units', values.units ?? 'us', SYSTEMS), speech: world.speech };
  const view = jobViewOf(loadJob(name, world).document);
  const at = (edition: string) => study(view, { today: world.today, edition });
  const [from, to] = [editionNamed('from', values.from), editionNamed('to', values.to)];
  const changes = changesBetween(at(from), at(to));
  world.out(visible(printChanges(changes, { from, to, reader }), false));
  return STATUS.good;
}

export function knownEditions(): readonly string[] {
  return CODE_EDITIONS.map((one) => one.id);
}

/** An edition that is carried, or a problem that lists those that are. */
export function editionNamed(option: string, id: string | undefined): string {
  if (id !== undefined && knownEditions().includes(id)) return id;
  const slots = { option: `--${option}`, list: knownEditions().join(', ') };
  throw id === undefined
    ? problem('cli.edition-missing', slots)
    : problem('cli.edition-unknown', { ...slots, id });
}
