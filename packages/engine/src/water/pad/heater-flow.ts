/**
 * Flow through each heater against its band, state by state: at each pump speed, clean and dirty.
 *
 * Source: the pad's solution. Errors: a state that cannot be solved is an issue.
 *
 * Worked example: a band of 30 to 100 gpm and 27 gpm at low speed → `below`.
 */
import { fail, ok, type Result } from '../../trace/index.ts';
import type { Pad } from './pad.ts';
import type { FlowBand, PadState } from './spec.ts';

export type Standing = 'below' | 'within' | 'above';

export interface HeaterFlowRow {
  /** Place in the states given. */
  readonly state: number;
  readonly heater: string;
  /** m3/s. */
  readonly flow: number;
  readonly band: FlowBand;
  readonly standing: Standing;
}

/** Where a flow stands in a band; its ends belong to it. */
export function standingOf(flow: number, band: FlowBand): Standing {
  if (flow < band.least) return 'below';
  return flow > band.most ? 'above' : 'within';
}

/** One row for every heater in every state. */
export function heaterFlows(pad: Pad, states: readonly PadState[]): Result<readonly HeaterFlowRow[]> {
  const rows: HeaterFlowRow[] = [];
  for (const [state, one] of states.entries()) {
    const report = pad.solve(one);
    if (!report.ok) return fail(...report.issues);
    for (const [i, { id, band }] of (pad.spec.bank?.heaters ?? []).entries()) {
      const flow = pad.heaterFlow(i);
      rows.push({ state, heater: id, flow, band, standing: standingOf(flow, band) });
    }
  }
  return ok(rows);
}
