/** A vent that several heaters share: the connector of each, and the common part for all of them. */
import { air, evaluate, ok, Recorder, type Result } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { FactKey } from '../../facts/book.ts';
import { plannedHeaters } from '../../facts/heaters.ts';
import { SurveyReader } from '../../facts/survey-reader.ts';
import { type JobView, readingPath } from '../../facts/view.ts';
import type { Model, Run, Values } from '../model.ts';
import { atHeater, atSpot, type HeaterSpot, heaterSpot } from './spot.ts';

/** Name of the vent it shares; undefined for a vent of its own. */
export function commonVentOf(view: JobView, spot: string): string | undefined {
  const name = view.record('spots', spot).reading('commonVent')?.value;
  return typeof name === 'string' && name !== '' ? name : undefined;
}

interface CommonPlan {
  readonly heaters: readonly string[];
  readonly burner: air.VentedBurner;
  readonly mix: catalog.air.FanMix;
  /** Share of the common capacity that its elbows and a manifold leave. */
  readonly share: (recorder?: Recorder) => number;
  readonly of: (values: Values, field: string) => number;
}

export function commonVentModel(view: JobView, at: HeaterSpot): Model {
  const reader = new SurveyReader(view);
  const plan = takeCommon(reader, at);
  const key = (name: string): FactKey => `heater/${at.heater}/${name}`;
  const [most, least, reach] = [key('vent-most'), key('vent-least'), key('vent-reach')];
  const [commonMost, commonInput] = [key('common-most'), key('common-input')];
  return {
    id: `air.common-vent.${at.heater}`,
    provides: [most, least, reach, commonMost, commonInput],
    parameters: reader.parameters,
    missing: reader.missing,
    wrong: reader.wrong,
    run: (values): Run => {
      const connector = connectorMost(plan, values);
      const common = commonCapacity(plan, values);
      const smallest = connectorLeast(plan, values);
      if (!connector.ok) return connector;
      if (!smallest.ok) return smallest;
      if (!common.ok) return common;
      return {
        ok: true,
        outputs: [
          { fact: most, value: connector.value, kind: 'heat-rate' },
          smallest.value === undefined
            ? { fact: least, notApplicable: true }
            : { fact: least, value: smallest.value, kind: 'heat-rate' },
          { fact: reach, word: 'table' },
          { fact: commonMost, value: common.value, kind: 'heat-rate' },
          { fact: commonInput, value: inputOf(plan, values), kind: 'heat-rate' },
        ],
      };
    },
    explain: (fact, values) => {
      const recorder = new Recorder();
      if (fact === least) connectorLeast(plan, values, recorder);
      else if (fact === commonMost || fact === commonInput) commonCapacity(plan, values, recorder);
      else connectorMost(plan, values, recorder);
      return recorder.steps;
    },
  };
}

function takeCommon(reader: SurveyReader, { heater, spot }: HeaterSpot): CommonPlan {
  const at = atSpot(spot);
  for (const field of ['ventDiameter', 'ventHeight', 'ventLateral', 'connectorRise', 'commonDiameter'])
    reader.number(at(field));
  const heaters = sharers(reader.view, spot);
  const burners = heaters.map((id) => {
    reader.number(atHeater(id, 'input'));
    return reader.word(atHeater(id, 'venting')) === 'atmospheric' ? 'natural' : 'fan';
  });
  const { 'elbow-90': sharp = 0, 'elbow-45': slight = 0 } = reader.counts(at('commonFittings'));
  const manifold = reader.wordOr(at('commonManifold'), 'no') === 'yes';
  const fans = burners.filter((burner) => burner === 'fan').length;
  return {
    heaters,
    burner: burners[heaters.indexOf(heater)] ?? 'natural',
    mix: fans === burners.length ? 'all' : fans === 0 ? 'none' : 'some',
    of: (values, field) => values(readingPath('spots', spot, field)),
    share: (recorder) => {
      if (manifold) recorder?.given({ id: 'air.manifold-share', value: air.MANIFOLD_SHARE, kind: 'ratio' });
      const elbows = evaluate(air.elbowShare, { sharp, slight, included: 0 }, recorder);
      return (elbows.ok ? elbows.value : 0) * (manifold ? air.MANIFOLD_SHARE : 1);
    },
  };
}

function sharers(view: JobView, spot: string): readonly string[] {
  const name = commonVentOf(view, spot);
  return plannedHeaters(view).filter((id) => commonVentOf(view, heaterSpot(view, id).spot) === name);
}

function inputOf({ heaters }: CommonPlan, values: Values): number {
  return heaters.reduce((sum, id) => sum + values(readingPath('heaters', id, 'input')), 0);
}

/** The tables end at a rise of 3 ft; more carries more, and is not counted. */
const MOST_RISE = 0.9144;

function connectorAt({ of }: CommonPlan, values: Values): air.VentPoint {
  const offset = Math.min(of(values, 'connectorRise'), MOST_RISE);
  return { diameter: of(values, 'ventDiameter'), height: of(values, 'ventHeight'), offset };
}

function connectorMost(plan: CommonPlan, values: Values, recorder?: Recorder): Result<number> {
  const point = connectorAt(plan, values);
  const capacity = air.ventTableCapacity(catalog.air.connectorTables(plan.burner).most, point, recorder);
  if (!capacity.ok) return air.notAllowed(capacity) ? ok(0) : capacity;
  const length = plan.of(values, 'ventLateral');
  const share = evaluate(air.connectorShare, { length, diameter: point.diameter }, recorder);
  return share.ok ? ok(capacity.value * share.value) : share;
}

function connectorLeast(plan: CommonPlan, values: Values, recorder?: Recorder): Result<number | undefined> {
  const table = catalog.air.connectorTables(plan.burner).least;
  return table === undefined
    ? ok(undefined)
    : air.ventTableCapacity(table, connectorAt(plan, values), recorder);
}

function commonCapacity({ mix, of, share }: CommonPlan, values: Values, recorder?: Recorder): Result<number> {
  const diameter = of(values, 'commonDiameter');
  const table = catalog.air.commonVentTable(mix, diameter);
  const point = { diameter, height: of(values, 'ventHeight'), offset: 0 };
  const found = air.ventTableCapacity(table, point, recorder);
  if (!found.ok) return air.notAllowed(found) ? ok(0) : found;
  return ok(found.value * share(recorder));
}
