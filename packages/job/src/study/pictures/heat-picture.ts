/**
 * What the picture of the heat line shows: how each basin warms up, where its heat goes on the design day, and what
 * heaters of other sizes would do. All from the models its findings stand on; nothing is computed twice.
 */
import { heat, quantity } from '@firstfire/engine';
import { recordFacts } from '../facts/record-facts.ts';
import { SurveyReader } from '../facts/survey-reader.ts';
import { type JobView, readingPath } from '../facts/view.ts';
import {
  type BasinHeat,
  holdBalance,
  sunLeftOut,
  takeBasinHeat,
  takeWarmUp,
} from '../plant/heat/basin-heat.ts';
import { MEASURES, measureBasin, takeShape } from '../plant/heat/basin-shape.ts';
import { DESIGN_TEMPERATURE, weatherOf } from '../plant/heat/design-day.ts';
import { ownValuesOf, type Values } from '../plant/model.ts';
import { coverWindow } from '../year/basin.ts';
import { nameOf } from './gas-paint.ts';
import { KeptBasins } from './heat-kept.ts';
import type {
  BasinShapeShown,
  CoverShown,
  DesignDayShown,
  HeatBasinShown,
  HeatLossShown,
  HeatPicture,
  LossKind,
  WarmPoint,
  WarmUpShown,
} from './heat-shown.ts';
import { heaterSizes, type SizeMade, timeTo, withInput } from './heat-sizes.ts';

type BasinMade = Omit<HeatBasinShown, 'wanted' | 'sizes'> & { readonly sizes: readonly SizeMade[] };

/** Pictures of a job's heat line, one after another while it is edited. */
export class HeatPictures {
  readonly #kept = new KeptBasins<BasinMade>();

  of(view: JobView): HeatPicture {
    return { basins: view.all('basins').map(({ id }) => this.#basin(view, id)) };
  }

  #basin(view: JobView, id: string): HeatBasinShown {
    const made = this.#kept.of(view, id, (unhurried) => basinMade(unhurried, id));
    const wanted = numberOf(view, { collection: 'basins', id, field: 'warmUpTime' });
    return {
      ...made,
      wanted,
      sizes: made.sizes.map((size) => ({ ...size, inTime: isInTime(size, wanted) })),
    };
  }
}

/** The picture of a job's heat line. */
export function heatPictureOf(view: JobView): HeatPicture {
  return new HeatPictures().of(view);
}

function isInTime({ time }: SizeMade, wanted: number | undefined): boolean | undefined {
  return wanted === undefined ? undefined : time !== undefined && time <= wanted;
}

/** How a basin would warm up with another input (W) on the nameplate of each of its heaters. */
export function heatSizeTried(
  view: JobView,
  { id, heaters }: Pick<HeatBasinShown, 'id' | 'heaters'>,
  input: number,
): WarmUpShown | undefined {
  return warmingShown(withInput(view, heaters, input), id).warmUp;
}

type Loss = Pick<
  HeatBasinShown,
  'day' | 'losses' | 'hold' | 'holdPlusMinus' | 'missingForLoss' | 'issues' | 'sunLeftOut'
>;
type Warming = Pick<HeatBasinShown, 'heaters' | 'output' | 'warmUp' | 'missing' | 'issues'>;

function basinMade(view: JobView, id: string): BasinMade {
  const loss = lossShown(view, id);
  const warming = warmingShown(view, id);
  const [first] = warming.heaters;
  const input =
    first === undefined ? undefined : numberOf(view, { collection: 'heaters', id: first, field: 'input' });
  return {
    id,
    name: nameOf(view, 'basins', id, ''),
    shape: shapeShown(view, id),
    cover: coverShown(view, id),
    ...sizeOf(view, id),
    target: numberOf(view, { collection: 'basins', id, field: 'setTemperature' }),
    ...loss,
    ...warming,
    input,
    sizes: heaterSizes(view, { basin: id, heaters: warming.heaters, input }),
    issues: warming.issues.length > 0 ? warming.issues : loss.issues,
  };
}

const WAYS: readonly LossKind[] = [
  'evaporation',
  'convection',
  'longWave',
  'makeUp',
  'ground',
  'sun',
  'spillway',
  'airJets',
];
/** Of a basin that has none there is nothing to say. */
const ONLY_WHERE_THERE: ReadonlySet<LossKind> = new Set(['spillway', 'airJets']);

function lossShown(view: JobView, id: string): Loss {
  const reader = new SurveyReader(view);
  const basin = takeBasinHeat(reader, id);
  const values = ownValuesOf(reader.parameters);
  const nothing = {
    losses: [],
    hold: undefined,
    holdPlusMinus: undefined,
    sunLeftOut: undefined,
    missingForLoss: reader.missing,
  };
  const unready = reader.missing.length > 0 || reader.wrong.length > 0;
  if (unready) return { ...nothing, day: undefined, issues: reader.wrong };
  const balance = holdBalance(basin, values);
  if (!balance.ok) return { ...nothing, day: undefined, issues: balance.issues };
  return {
    day: dayShown(basin, values),
    losses: WAYS.map((kind): HeatLossShown => ({ kind, heat: balance.value[kind] })).filter(
      ({ kind, heat: flow }) => flow !== 0 || !ONLY_WHERE_THERE.has(kind),
    ),
    sunLeftOut: sunLeftOut(basin, values),
    hold: balance.value.total,
    holdPlusMinus: balance.value.evaporationUncertainty,
    missingForLoss: [],
    issues: [],
  };
}

function dayShown({ shape, day }: BasinHeat, values: Values): DesignDayShown | undefined {
  const measured = measureBasin(shape, values);
  if (!measured.ok) return undefined;
  const weather = weatherOf(day, measured.value, values);
  const { place = '', month = 0, source = 'bundled', airTemperature: air } = day.climate ?? {};
  return {
    indoors: day.indoors,
    source,
    place,
    month,
    decided:
      air === readingPath(DESIGN_TEMPERATURE.collection, DESIGN_TEMPERATURE.id, DESIGN_TEMPERATURE.field),
    airTemperature: weather.airTemperature,
    airSpeed: weather.airSpeed,
    skyTemperature: weather.skyTemperature,
    groundTemperature: weather.groundTemperature,
    mainsTemperature: weather.mainsTemperature,
    covered: weather.covered,
  };
}

function warmingShown(view: JobView, id: string): Warming {
  const reader = new SurveyReader(view);
  const { burners, question } = takeWarmUp(reader, id);
  const heaters = burners.map((burner) => burner.id);
  const { missing, wrong } = reader;
  const nothing = { heaters, output: undefined, warmUp: undefined, missing, issues: wrong };
  if (missing.length > 0 || wrong.length > 0) return nothing;
  const asked = question(ownValuesOf(reader.parameters));
  if (!asked.ok) return { ...nothing, issues: asked.issues };
  const top = heat.plateau(asked.value);
  const { output } = asked.value;
  if (!top.ok) return { ...nothing, output, issues: top.issues };
  return { ...nothing, output, warmUp: warmUpShown(asked.value, top.value) };
}

const POINTS = 48;
/** The curve goes on past the target by this share of the way, and stops this short of the plateau. */
const BEYOND = 0.3;
const SHORT_OF_PLATEAU = 0.01;
/** Losses are known up to here, K. */
const WARMEST = 323.15;

function warmUpShown(question: heat.WarmUpQuestion, plateau: number): WarmUpShown {
  const { start, target } = question;
  const end = Math.min(
    plateau - SHORT_OF_PLATEAU * Math.abs(plateau - start),
    Math.max(target, Math.min(target + BEYOND * (target - start), WARMEST)),
  );
  const points: WarmPoint[] = [];
  if (end > start && heat.questionIssues(question).length === 0)
    for (let i = 0; i <= POINTS; i++) {
      const to = start + ((end - start) * i) / POINTS;
      points.push([heat.warmUpTime({ ...question, target: to }), to]);
    }
  return { start, target, plateau, time: timeTo(question, plateau), points };
}

function shapeShown(view: JobView, id: string): BasinShapeShown {
  const facts = recordFacts('basins', view.record('basins', id));
  const shape = facts.at('shape').fact;
  const corners = facts.at('corners').fact;
  const word = shape.state === 'word' ? shape.value : '';
  const fields = [...(MEASURES[word] ?? []), 'depthShallow', 'depthDeep'];
  const known = fields.flatMap((field): [string, number][] => {
    const value = numberOf(view, { collection: 'basins', id, field });
    return value === undefined ? [] : [[field, value]];
  });
  return {
    shape: word,
    fields,
    measures: Object.fromEntries(known),
    corners: corners.state === 'curve' ? corners.value : [],
  };
}

function coverShown(view: JobView, id: string): CoverShown {
  const { fact } = recordFacts('basins', view.record('basins', id)).at('cover');
  const hours = numberOf(view, { collection: 'basins', id, field: 'coverHours' });
  const kind = fact.state === 'word' ? fact.value : '';
  return { kind, hours, ...coverWindow((hours ?? 0) / quantity.HOUR) };
}

function sizeOf(view: JobView, id: string): Pick<HeatBasinShown, 'area' | 'volume'> {
  const reader = new SurveyReader(view);
  const shape = takeShape(reader, id);
  if (reader.missing.length > 0 || reader.wrong.length > 0) return { area: undefined, volume: undefined };
  const measured = measureBasin(shape, ownValuesOf(reader.parameters));
  if (!measured.ok) return { area: undefined, volume: undefined };
  return { area: measured.value.area, volume: measured.value.volume };
}

interface At {
  readonly collection: string;
  readonly id: string;
  readonly field: string;
}

function numberOf(view: JobView, { collection, id, field }: At): number | undefined {
  const { fact } = recordFacts(collection, view.record(collection, id)).at(field);
  return fact.state === 'number' ? fact.value : undefined;
}
