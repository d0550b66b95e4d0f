/**
 * A line of the pad: pipe runs and devices one after another, from one named point of the water's way to the next.
 */
import type { LinkLaw } from '../../numerics/index.ts';
import { type Issue, rangeIssues } from '../../trace/index.ts';
import { fittingLoss } from '../fitting/minor-loss.ts';
import { type LossLaw, lossAt, lossLawIssues, lossLink } from '../loss/loss-law.ts';
import { darcyLoss } from '../pipe/darcy-weisbach.ts';
import { HAZEN_WILLIAMS_FORMS, hazenWilliamsLoss } from '../pipe/hazen-williams.ts';
import type { Wall } from '../pipe/pipe-loss.ts';

/** Straight pipe of one bore with the fittings on it. */
export interface PipeRun {
  readonly type: 'pipe';
  /** m. */
  readonly insideDiameter: number;
  /** m. */
  readonly length: number;
  readonly wall: Wall;
  /** ΣK of its fittings, entrance and exit, on the velocity in this bore. */
  readonly k: number;
}

/** Chlorinator, check valve, flow meter: anything with a loss of its own. */
export interface Device {
  readonly type: 'device';
  readonly loss: LossLaw;
  /** A check valve: lets water pass forward only. */
  readonly oneWay?: boolean;
}

export type LineItem = PipeRun | Device;
export type Line = readonly LineItem[];

/** The law of an item as the network takes it; `factor` multiplies its loss (1 as drawn). */
export function itemLaw(item: LineItem, viscosity: number, factor: number): LinkLaw {
  if (item.type === 'device') return lossLink(item.loss, factor);
  const { insideDiameter, length, wall, k } = item;
  if (wall.method === 'darcy') {
    const { roughness } = wall;
    return {
      type: 'darcy',
      length: length * factor,
      diameter: insideDiameter,
      roughness,
      viscosity,
      k: k * factor,
    };
  }
  const form = HAZEN_WILLIAMS_FORMS.epanet;
  const pipe = { insideDiameter, length: length * factor, cFactor: wall.cFactor };
  const m = factor * fittingLoss.kernel({ k, insideDiameter, flow: 1 });
  return { type: 'power', r: hazenWilliamsLoss.kernel({ ...pipe, flow: 1 }), n: form.flowExponent, m };
}

/** Head lost along a line at a flow, m; no range check. */
export function lineLoss(line: Line, flow: number, viscosity: number): number {
  return line.reduce((sum, item) => sum + itemLoss(item, flow, viscosity), 0);
}

function itemLoss(item: LineItem, flow: number, viscosity: number): number {
  if (item.type === 'device') return lossAt(item.loss, flow);
  const { insideDiameter, length, wall, k } = item;
  const run = { insideDiameter, length, flow };
  const fittings = fittingLoss.kernel({ k, insideDiameter, flow });
  if (wall.method === 'darcy')
    return fittings + darcyLoss.kernel({ ...run, roughness: wall.roughness, viscosity });
  return fittings + hazenWilliamsLoss.kernel({ ...run, cFactor: wall.cFactor });
}

/** What is wrong with a line; empty when nothing is. */
export function lineIssues(where: string, line: Line): Issue[] {
  const issues: Issue[] = [];
  for (let i = 0; i < line.length; i += 1) issues.push(...itemIssues(`${where}.${i}`, line[i] as LineItem));
  return issues;
}

function itemIssues(where: string, item: LineItem): Issue[] {
  if (item.type === 'device') return lossLawIssues(where, item.loss);
  const { insideDiameter, length, wall, k } = item;
  const run = { insideDiameter, length, flow: 0 };
  const issues =
    wall.method === 'darcy'
      ? rangeIssues(darcyLoss, { ...run, roughness: wall.roughness, viscosity: 1e-6 })
      : rangeIssues(hazenWilliamsLoss, { ...run, cFactor: wall.cFactor });
  const fittings = rangeIssues(fittingLoss, { k, insideDiameter, flow: 0 }).filter(
    (one) => one.where === 'k',
  );
  if (issues.length + fittings.length === 0) return issues;
  return [...issues, ...fittings].map((one) => ({ ...one, where: `${where}.${one.where}` }));
}
