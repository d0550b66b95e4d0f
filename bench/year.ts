/**
 * A pool year by the hour beside a bare loop over flat arrays that evaluates only the same formulas.
 *
 * The bare loop is what a person would write for this one pool: the equations spelled out on one line each, no cover
 * plan, no kinds of heat by month, no season, no second basin. Both march the same year of the same weather, and end
 * at the same temperature, or the comparison would be worth nothing.
 *
 * Run by itself: `node --expose-gc bench/year.ts`.
 */
import { expectOk, heat, properties } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';

export interface YearRow {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly goal?: string;
}

const AREA = 50;
const VOLUME = 75;
const OUTPUT = 60_000;
const SET = 300.15;

function question(): heat.YearInput {
  const place = catalog.climate.PLACES.find((one) => one.id === 'atlanta');
  if (!place) throw new Error('no climate to march through');
  const weather = expectOk(heat.hourlyWeather(catalog.climate.normalsOf(place)));
  const basin: heat.YearBasin = {
    setting: { ...heat.PLAIN_SURFACE, area: AREA, groundConductance: 40 },
    volume: VOLUME,
    exposure: { windFactor: 0.2, wallDepth: 1.5 },
    setPoint: new Float64Array(weather.hours).fill(SET),
    covered: new Float64Array(weather.hours),
  };
  return { weather, basins: [basin], output: OUTPUT, start: [SET] };
}

/** The same year without anything but its formulas; gives the last temperature. */
function bareYear(basin: heat.BasinModel, start: number): number {
  const {
    airTemperature,
    vapourPressure,
    airSpeed,
    skyTemperature,
    sun,
    groundTemperature,
    mainsTemperature,
  } = basin;
  const perStep = basin.capacity / 3600;
  const { still, perSpeed } = heat.WIND_FORMS.smith;
  let T = start;
  for (let h = 0; h < airTemperature.length; h++) {
    const Ta = airTemperature[h] as number;
    const v = airSpeed[h] as number;
    const sky = skyTemperature[h] as number;
    const wet = properties.saturationPressureAt(T) - (vapourPressure[h] as number);
    const evaporation = AREA * (still + perSpeed * v) * wet;
    const convection = AREA * (3.1 + 4.1 * v) * (T - Ta);
    const longWave = AREA * 0.95 * heat.STEFAN_BOLTZMANN * (T * T * T * T - sky * sky * sky * sky);
    const gain = AREA * 0.85 * (sun[h] as number);
    const ground = 40 * (T - (groundTemperature[h] as number));
    const evaporated = Math.max(0, evaporation / properties.latentHeatOfWater(T));
    const mains = properties.enthalpyOfWater(mainsTemperature[h] as number);
    const makeUp = evaporated * (properties.enthalpyOfWater(T) - mains);
    const lost = evaporation + convection + longWave - gain + ground + makeUp;
    const need = perStep * (SET - T) + lost;
    T += ((need > 0 ? Math.min(need, OUTPUT) : 0) - lost) / perStep;
  }
  return T;
}

/** Median time of a run, ms, after a warm-up. */
function median(run: () => void, times: number): number {
  for (let i = 0; i < times / 2; i++) run();
  const spans = Array.from({ length: times }, () => {
    const from = performance.now();
    run();
    return performance.now() - from;
  });
  return spans.sort((a, b) => a - b)[Math.floor(times / 2)] ?? Number.NaN;
}

/** Growth of the heap over a hundred years marched, bytes; NaN without --expose-gc. */
function heapGrowth(model: heat.YearModel, ledgers: readonly heat.Ledger[]): number {
  const collect = (globalThis as { gc?: () => void }).gc;
  if (!collect) return Number.NaN;
  collect();
  const before = process.memoryUsage().heapUsed;
  for (let i = 0; i < 100; i++) heat.marchYear(model, ledgers);
  collect();
  return process.memoryUsage().heapUsed - before;
}

/**
 * Bytes that come and go while one year is marched. The march makes no object, array or closure; what is left are the
 * floating-point results of calls that the runtime does not inline.
 */
function allocatedInYear(model: heat.YearModel, ledgers: readonly heat.Ledger[]): number {
  (globalThis as { gc?: () => void }).gc?.();
  const before = process.memoryUsage().heapUsed;
  heat.marchYear(model, ledgers);
  return process.memoryUsage().heapUsed - before;
}

export function yearBench(): YearRow[] {
  const asked = question();
  const model = expectOk(heat.yearModel(asked));
  const [basin] = model.basins;
  if (!basin) throw new Error('no basin to march');
  const ledgers = [heat.emptyLedger(model.hours)];
  const restart = (): void => {
    basin.now[0] = SET;
    basin.now[1] = 0;
  };
  restart();
  heat.marchYear(model, ledgers);
  const apart = Math.abs((basin.now[0] ?? 0) - bareYear(basin, SET));
  if (!(apart < 1e-6)) throw new Error(`the two loops do not march the same year: ${apart} K apart`);
  const ours = median(() => heat.marchYear(model, ledgers), 60);
  const bare = median(() => bareYear(basin, SET), 60);
  const whole = median(() => {
    heat.poolYear({ ...asked, heater: { output: OUTPUT, efficiency: 0.82 } });
  }, 20);
  return [
    { name: 'year by the hour, marched and booked', value: ours, unit: 'ms' },
    { name: 'bare loop, same formulas', value: bare, unit: 'ms' },
    { name: 'ratio to the bare loop', value: ours / bare, unit: '×', goal: 'at most 2' },
    { name: 'whole question, weather to answer', value: whole, unit: 'ms' },
    {
      name: 'short-lived numbers boxed at calls, a year',
      value: allocatedInYear(model, ledgers),
      unit: 'bytes',
    },
    { name: 'heap growth over 100 years', value: heapGrowth(model, ledgers), unit: 'bytes', goal: 'none' },
  ];
}

if (import.meta.main)
  for (const row of yearBench()) console.log(row.name, row.value.toPrecision(4), row.unit, row.goal ?? '');
