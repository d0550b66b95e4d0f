import { STANDARD_GRAVITY } from '../../quantity/index.ts';
import { pumpHead } from '../pump/curve.ts';
import { propertiesAt } from '../water-at.ts';
import { openingOf, type Pad } from './pad.ts';
import { pointPressure } from './point-pressure.ts';
import { stationHead } from './solution.ts';
import type { PadState } from './spec.ts';

/** Part of the shut-off pressure to which the gauge is met. */
const FINE = 1e-7;
const TRIES = 10;

export interface GaugeAsked {
  readonly state: PadState;
  /** Gauge pressure before the filter, Pa. */
  readonly pressure: number;
  /** The loadings allowed. */
  readonly least: number;
  readonly most: number;
  /** The pad solved with a clean filter, at this speed or another one: spares a solve. */
  readonly clean?: CleanPad;
}

export interface CleanPad {
  /** Speed over that of the pump's curve. */
  readonly speed: number;
  /** Gauge pressures before and after the filter, Pa. */
  readonly filterInletPressure: number;
  readonly filterOutletPressure: number;
}

/**
 * Loading at which the gauge before the filter shows a pressure, by a few secants; undefined where they do not find
 * it, and a slower search has to decide.
 *
 *     1/(p,shut − p)  is straight in the loading, where the heads of pump and pipe go with the square of the flow
 *
 * p,shut is what the gauge shows with the filter blocked. Where heads are not quite squares the line bends a little,
 * and three or four solves are enough instead of a dozen.
 *
 * Source: the pad's solution. Range: a pad that draws from one basin; loadings between the bounds given.
 * Errors: none; undefined is no answer.
 *
 * Worked example: clean 20 psi, shut 40 psi, filter a quarter of all losses: 1/(40 − p) grows by a quarter of 1/20
 * with each unit of loading, so that 5 stands for 30 psi.
 */
export function gaugeLoading(pad: Pad, asked: GaugeAsked): number | undefined {
  const heads = shutHeads(pad, asked.state);
  if (heads === undefined || asked.pressure >= heads.pressure) return undefined;
  const shut = heads.pressure;
  const wanted = 1 / (shut - asked.pressure);
  let before = asked.clean
    ? cleanPoint(pad, asked, { ...heads, clean: asked.clean })
    : pointAt(pad, asked, { loading: 1, heads });
  if (before === undefined) return undefined;
  let loading = inside(asked, 1, 1 + (wanted / before.steep - 1) / before.share);
  for (let i = 0; i < TRIES; i++) {
    if (Number.isNaN(loading)) return undefined;
    const now = pointAt(pad, asked, { loading, heads });
    if (now === undefined) return undefined;
    if (Math.abs(now.pressure - asked.pressure) <= FINE * Math.abs(shut)) return loading;
    const next = loading + ((wanted - now.steep) * (loading - before.loading)) / (now.steep - before.steep);
    before = now;
    loading = inside(asked, now.loading, next);
  }
  return undefined;
}

/** A guess inside the bounds; one that overshoots goes most of the way to its bound, by a factor. */
function inside({ least, most }: GaugeAsked, from: number, guess: number): number {
  if (guess < least) return from * (least / from) ** 0.9;
  return guess > most ? from * (most / from) ** 0.9 : guess;
}

interface Point {
  readonly loading: number;
  /** Gauge, Pa. */
  readonly pressure: number;
  /** 1/(shut − pressure). */
  readonly steep: number;
  /** Of the filter in all that the pump's shut-off head goes into. */
  readonly share: number;
}

function pointAt(
  pad: Pad,
  { state }: GaugeAsked,
  { loading, heads }: { readonly loading: number; readonly heads: ShutHeads },
): Point | undefined {
  if (!pad.solve({ ...state, loading }).ok) return undefined;
  const before = stationHead(pad, 'filter-inlet');
  const lost = before - stationHead(pad, 'filter-outlet');
  return pointOf(heads, { loading, pressure: gaugeAt(pad, state, before), lost });
}

/** The clean filter's point, carried over from its own speed: heads go with the square of the speed. */
function cleanPoint(
  { spec }: Pad,
  { state }: GaugeAsked,
  { clean, ...heads }: ShutHeads & { readonly clean: CleanPad },
): Point | undefined {
  const { filterInletPressure: before, filterOutletPressure: after, speed } = clean;
  const { density } = propertiesAt(state.temperature ?? spec.temperature);
  const weight = density * STANDARD_GRAVITY;
  const atLevel = weight * (heads.level - spec.filter.elevation);
  const slower = (state.speed / speed) ** 2;
  return pointOf(heads, {
    loading: 1,
    pressure: atLevel + slower * (before - atLevel),
    lost: (slower * (before - after)) / weight,
  });
}

interface Seen {
  readonly loading: number;
  readonly pressure: number;
  /** Head lost in the filter, m. */
  readonly lost: number;
}

function pointOf(
  { pressure: shut, shutOff }: ShutHeads,
  { loading, pressure, lost }: Seen,
): Point | undefined {
  const steep = 1 / (shut - pressure);
  const share = lost / (loading * shutOff);
  return shut > pressure && share > 0 && Number.isFinite(share)
    ? { loading, pressure, steep, share }
    : undefined;
}

interface ShutHeads {
  /** Of the basin that is drawn from, m. */
  readonly level: number;
  /** Of the pump, m. */
  readonly shutOff: number;
  /** What the gauge shows with the filter blocked, Pa. */
  readonly pressure: number;
}

/** With the filter blocked; undefined where water runs from one basin to another meanwhile. */
function shutHeads(pad: Pad, state: PadState): ShutHeads | undefined {
  const { suctions, basins, pump } = pad.spec;
  const open = suctions.filter((one) => openingOf(suctions, one.basin, state.from) > 0);
  const level = basins.find((basin) => basin.id === open[0]?.basin)?.level;
  if (open.length !== 1 || level === undefined) return undefined;
  const shutOff = pumpHead(pump.curve, 0) * state.speed ** 2 * (state.wear?.pump ?? 1);
  return { level, shutOff, pressure: gaugeAt(pad, state, level + shutOff) };
}

/** Gauge pressure before the filter at a head, Pa. */
function gaugeAt({ spec }: Pad, state: PadState, head: number): number {
  const { density } = propertiesAt(state.temperature ?? spec.temperature);
  return pointPressure.kernel({ head, elevation: spec.filter.elevation, velocity: 0, density });
}
