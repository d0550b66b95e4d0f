/**
 * What the picture of the gas line shows: the piping from supply to every appliance with the pressure at each junction
 * in its three states, what each section carries and loses and how it stands by the code, and which section on the way
 * to the heater costs most. All from the physical model and the findings of the study; nothing is computed twice.
 */
import type { Finding } from '@firstfire/reference';
import { plannedHeaters } from '../facts/heaters.ts';
import type { JobView } from '../facts/view.ts';
import { heaterSeen, hungOf, linkShown, nameOf, nodeShown } from './gas-paint.ts';
import type { GasPicture } from './gas-shown.ts';
import { byState, eachState, solveState, surveyed } from './gas-states.ts';
import { drawnTree, type GasTreeDrawn } from './gas-tree.ts';

export interface GasLook {
  /** Findings of the gas line, by the study that stands on the screen. */
  readonly findings: readonly Finding[];
  /** Id of the heater looked at; the first planned one when left out. */
  readonly heater?: string | undefined;
}

/** The picture of a job's gas line; a job without piping has a supply and nothing on it. */
export function gasPictureOf(view: JobView, { findings, heater }: GasLook): GasPicture {
  const read = surveyed(view);
  const planned = plannedHeaters(view);
  const chosen = heater !== undefined && planned.includes(heater) ? heater : planned[0];
  const tree = drawnTree(read.plan, chosen);
  const solved = eachState((state) => solveState(read, tree, { state, heater: chosen }));
  const paint = { view, read, solved, findings };
  const root = nodeShown(tree.root, paint);
  return {
    drawn: tree.root.branches.length > 0 || tree.root.loads.length > 0,
    fuel: read.plan.fuelName,
    metered: read.metered,
    outlet: byState(solved, (one) => one.outlet),
    root,
    heater: chosen === undefined ? undefined : heaterSeen(chosen, root, paint),
    heaters: planned.map((id) => ({ id, name: nameOf(view, 'heaters', id) })),
    states: eachState((state) => ({ missing: solved[state].missing, issues: solved[state].issues })),
    loose: looseParts(tree, paint),
    closing: tree.closing.map((planned) => linkShown({ type: 'section', planned }, false, paint)),
  };
}

function looseParts({ loose }: GasTreeDrawn, paint: Parameters<typeof linkShown>[2]): GasPicture['loose'] {
  return {
    links: [
      ...loose.segments.map((planned) => linkShown({ type: 'section', planned }, false, paint)),
      ...loose.regulators.map((planned) => linkShown({ type: 'regulator', planned }, false, paint)),
    ],
    hung: loose.loads.map((load) => hungOf(load, paint)),
  };
}
