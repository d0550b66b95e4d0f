/** The models of the water line. */
import { SurveyReader } from '../../facts/survey-reader.ts';
import type { JobView } from '../../facts/view.ts';
import type { Model } from '../model.ts';
import { BYPASS_FACTS, bypassPart } from './bypass-part.ts';
import { chemistryModels } from './chemistry-models.ts';
import { filterLoadingPart } from './filter-loading-part.ts';
import { flowParts } from './flow-part.ts';
import { foundFlowModel, isStoodFor } from './found-flow.ts';
import { filterFlowPart, headerPart, velocityPart } from './greatest-part.ts';
import { bandModel, shutOffModel } from './heater-models.ts';
import { mixedInletPart, plainInletModel } from './inlet-part.ts';
import { wordOf } from './loop-states.ts';
import { notApplicableModel, unknownModel } from './no-run.ts';
import { type Base, type Part, partModels } from './part.ts';
import { noStateReading } from './readings.ts';
import { reliefModels } from './relief-models.ts';
import { risePart } from './rise-part.ts';
import { withoutState } from './subjects.ts';
import { suctionPart } from './suction-part.ts';
import { switchFacts, switchPart } from './switch-part.ts';
import { turnoverPart } from './turnover-part.ts';
import { WaterLoop } from './water-loop.ts';
import { type WaterPlan, waterPlan } from './water-plan.ts';

export function waterModels(view: JobView): readonly Model[] {
  const reader = new SurveyReader(view);
  const plan = waterPlan(reader);
  const base = { reader, loop: new WaterLoop(plan, reader.parameters) };
  const heaters = plan.heaters.map((id) => heaterKind(view, id));
  const parts = partsOf(view, plan, heaters);
  return [
    ...loopModels(base, parts, foundFlowModel(view, plan)),
    ...plainModels(view, plan, heaters),
    ...unstated(view, base, plan),
    ...reliefModels(view),
    ...chemistryModels(view),
  ];
}

/** Of the loop where it is known, else of the flow found in it where that stands for it. */
function loopModels(base: Base, parts: readonly Part[], found: Model | undefined): readonly Model[] {
  if (found === undefined) return partModels(base, parts);
  const isLacking = base.reader.missing.length + base.reader.wrong.length > 0;
  const left = parts.filter((one) => !isStoodFor(one, isLacking, found));
  return [...partModels(base, left), ...(left.length < parts.length ? [found] : [])];
}

interface HeaterKind {
  readonly id: string;
  readonly flowSwitch: boolean;
  /** Its plate tells how much water it sends round inside. */
  readonly mixes: boolean;
}

function heaterKind(view: JobView, id: string): HeaterKind {
  const flowSwitch = wordOf(view, { collection: 'heaters', id, field: 'switchKind' }) === 'flow';
  const mixes = view.record('heaters', id).reading('innerBypass') !== undefined;
  return { id, flowSwitch, mixes };
}

function partsOf(view: JobView, plan: WaterPlan, heaters: readonly HeaterKind[]): readonly Part[] {
  const basins = view.all('basins').filter(({ id }) => isOnLoop(view, id));
  return [
    ...flowParts(view, plan),
    velocityPart(view, plan),
    headerPart(view, plan),
    filterFlowPart(view, plan),
    filterLoadingPart(view, plan),
    suctionPart(view, plan),
    ...heaters.map(({ id }) => risePart(view, plan, id)),
    ...heaters.filter((one) => !one.flowSwitch).map(({ id }) => switchPart(view, plan, id)),
    ...heaters.filter((one) => one.mixes).map(({ id }) => mixedInletPart(view, plan, id)),
    ...basins.map(({ id }) => turnoverPart(view, plan, id)),
    ...(hasNoBypass(view, plan) ? [] : [bypassPart(view, plan)]),
  ];
}

/** What needs no flow, and what does not apply. */
function plainModels(view: JobView, plan: WaterPlan, heaters: readonly HeaterKind[]): readonly Model[] {
  const { states } = plan;
  const elsewhere = view.all('basins').filter(({ id }) => !isOnLoop(view, id));
  const subjects = (heater: string): readonly string[] => {
    const own = states.heaters.filter((state) => state.heater === heater).map(({ id }) => id);
    return own.length > 0 ? own : [heater];
  };
  return [
    ...heaters.map(({ id }) => bandModel(view, id, subjects(id))),
    ...heaters.map(({ id }) => shutOffModel(view, id, states)),
    ...heaters.filter((one) => !one.mixes).map(({ id }) => plainInletModel(new SurveyReader(view), id)),
    ...heaters.filter((one) => one.flowSwitch).map(({ id }) => notApplicableModel(switchFacts(id))),
    ...elsewhere.map(({ id }) => notApplicableModel([`basin/${id}/turnover-time`])),
    ...(hasNoBypass(view, plan) ? [notApplicableModel(BYPASS_FACTS)] : []),
  ];
}

/** The flow of a heater of which nobody has said yet in which state it runs. */
function unstated(view: JobView, { reader }: Base, { states }: WaterPlan): readonly Model[] {
  return withoutState(view, states).map((id) =>
    unknownModel([`water-state/${id}/heater-flow`], [noStateReading(view), ...reader.missing]),
  );
}

/** A basin with a circulation of its own is another loop, which this job does not survey. */
function isOnLoop(view: JobView, id: string): boolean {
  return wordOf(view, { collection: 'basins', id, field: 'onLoop' }) !== 'no';
}

function hasNoBypass(view: JobView, { heaters }: Pick<WaterPlan, 'heaters'>): boolean {
  return (
    heaters.length === 0 || wordOf(view, { collection: 'waterLoop', id: '-', field: 'bypass' }) === 'none'
  );
}
