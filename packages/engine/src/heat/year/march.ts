/**
 * The march through a year: one pass over flat arrays, nothing allocated, nothing checked.
 *
 *     T' = T + Δt·(Q − L(T))/C        Q = what reaches the set point by the end of the step, 0 to the heater's output
 *
 * The losses L are those at the start of the step, so that every flow booked is the flow that moved the temperature
 * and the books close to round-off. The step is short against the water's time constant (see `model`): the error is
 * half a step's lag of the losses behind the temperature, which a rise and its fall cancel.
 *
 * Two basins that trade water are solved together, the exchange X·(T1' − T2') taken at the end of the step, which holds
 * however fast they mix. The first basin has the heater before the second; heat given to one and carried to the
 * other by the water is counted where it is given.
 *
 * Water that would fall below 0 °C freezes instead: the heat it lacks is kept as ice and melts before it warms.
 *
 * Source: first law; the pair in `pair`.
 */
import { HOUR, ZERO_CELSIUS } from '../../quantity/index.ts';
import { type SurfaceLosses, surfaceLosses } from '../surface/index.ts';
import { FLOW_COUNT, type Ledger } from './ledger.ts';
import { type BasinModel, loadHour, type YearModel } from './model.ts';
import { Pair, solvePair } from './pair.ts';

/** Marches every basin of the model through its year, from where it stands now, and books it. */
export function marchYear(model: YearModel, ledgers: readonly Ledger[]): void {
  const [first, second] = model.basins;
  const [one, two] = ledgers;
  if (first === undefined || one === undefined) return;
  if (second === undefined || two === undefined) marchOne(model, first, one);
  else marchTwo(model, { first, second, one, two });
}

function marchOne(model: YearModel, basin: BasinModel, ledger: Ledger): void {
  const { hours, monthOfHour, output, steps, tolerance } = model;
  const { setting, state, losses, now, setPoint } = basin;
  const step = HOUR / steps;
  const perStep = basin.capacity / step;
  for (let hour = 0; hour < hours; hour++) {
    loadHour(basin, hour);
    const wanted = setPoint[hour] as number;
    const month = monthOfHour[hour] as number;
    for (let s = 0; s < steps; s++) {
      const T = now[0] as number;
      state.waterTemperature = T;
      const lost = surfaceLosses(setting, state, losses);
      const need = perStep * (wanted - T) + lost;
      const heat = need > 0 ? Math.min(need, output) : 0;
      now[0] = T + (heat - lost) / perStep;
      freezeOrMelt(basin);
      book(ledger, month, losses, step);
      bookPair(ledger, month, heat * step, 0);
    }
    close(ledger, month, (now[0] as number) - wanted + tolerance);
    ledger.waterTemperature[hour] = now[0] as number;
  }
}

/** Books an hour that ended `above` its lowest allowed temperature; the set point 0 K is always met. */
function close(ledger: Ledger, month: number, above: number): void {
  if (above < 0) ledger.short[month] = (ledger.short[month] as number) + 1;
}

function book(ledger: Ledger, month: number, losses: SurfaceLosses, step: number): void {
  const { flows, evaporated } = ledger;
  const at = month * FLOW_COUNT;
  flows[at + 1] = (flows[at + 1] as number) + losses.evaporation * step;
  flows[at + 2] = (flows[at + 2] as number) + losses.convection * step;
  flows[at + 3] = (flows[at + 3] as number) + losses.longWave * step;
  flows[at + 4] = (flows[at + 4] as number) + losses.sun * step;
  flows[at + 5] = (flows[at + 5] as number) + losses.ground * step;
  flows[at + 6] = (flows[at + 6] as number) + losses.makeUp * step;
  flows[at + 7] = (flows[at + 7] as number) + losses.spillway * step;
  flows[at + 8] = (flows[at + 8] as number) + losses.airJets * step;
  evaporated[month] = (evaporated[month] as number) + losses.evaporated * step;
}

/** Keeps the water at 0 °C while there is ice, and makes or melts ice by what is short or over. */
function freezeOrMelt({ now, capacity }: BasinModel): void {
  const over = ((now[0] as number) - ZERO_CELSIUS) * capacity;
  const ice = now[1] as number;
  if (over >= 0 && ice === 0) return;
  const left = ice - over;
  now[1] = Math.max(0, left);
  now[0] = left > 0 ? ZERO_CELSIUS : ZERO_CELSIUS - left / capacity;
}

interface TwoBasins {
  readonly first: BasinModel;
  readonly second: BasinModel;
  readonly one: Ledger;
  readonly two: Ledger;
}

function marchTwo(model: YearModel, { first, second, one, two }: TwoBasins): void {
  const { hours, monthOfHour, steps, tolerance, exchange } = model;
  const step = HOUR / steps;
  const pair = new Pair();
  pair.c1 = first.capacity / step;
  pair.c2 = second.capacity / step;
  pair.limit = model.output;
  for (let hour = 0; hour < hours; hour++) {
    loadHour(first, hour);
    loadHour(second, hour);
    const month = monthOfHour[hour] as number;
    pair.x = exchange[hour] as number;
    pair.s1 = first.setPoint[hour] as number;
    pair.s2 = second.setPoint[hour] as number;
    for (let s = 0; s < steps; s++) {
      pair.r1 = standing(first, pair.c1);
      pair.r2 = standing(second, pair.c2);
      solvePair(pair);
      const across = pair.x * (pair.t1 - pair.t2) * step;
      settleBasin(first, pair.t1);
      settleBasin(second, pair.t2);
      book(one, month, first.losses, step);
      book(two, month, second.losses, step);
      bookPair(one, month, pair.q1 * step, across);
      bookPair(two, month, pair.q2 * step, -across);
    }
    close(one, month, (first.now[0] as number) - pair.s1 + tolerance);
    close(two, month, (second.now[0] as number) - pair.s2 + tolerance);
    one.waterTemperature[hour] = first.now[0] as number;
    two.waterTemperature[hour] = second.now[0] as number;
  }
}

/** c·T − L of a basin as it stands: what the step starts from, W. */
function standing({ setting, state, losses, now }: BasinModel, perStep: number): number {
  const T = now[0] as number;
  state.waterTemperature = T;
  return perStep * T - surfaceLosses(setting, state, losses);
}

function settleBasin(basin: BasinModel, T: number): void {
  basin.now[0] = T;
  freezeOrMelt(basin);
}

function bookPair({ flows }: Ledger, month: number, heat: number, across: number): void {
  const at = month * FLOW_COUNT;
  flows[at] = (flows[at] as number) + heat;
  flows[at + FLOW_COUNT - 1] = (flows[at + FLOW_COUNT - 1] as number) + across;
}
