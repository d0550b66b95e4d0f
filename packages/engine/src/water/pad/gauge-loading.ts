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
  const shut = shutPressure(pad, asked.state);
  if (shut === undefined || asked.pressure >= shut) return undefined;
  const wanted = 1 / (shut - asked.pressure);
  let before = pointAt(pad, asked, { loading: 1, shut });
  if (before === undefined) return undefined;
  let loading = inside(asked, 1, 1 + (wanted / before.steep - 1) / before.share);
  for (let i = 0; i < TRIES; i++) {
    if (Number.isNaN(loading)) return undefined;
    const now = pointAt(pad, asked, { loading, shut });
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
  { loading, shut }: { readonly loading: number; readonly shut: number },
): Point | undefined {
  if (!pad.solve({ ...state, loading }).ok) return undefined;
  const before = stationHead(pad, 'filter-inlet');
  const lost = before - stationHead(pad, 'filter-outlet');
  const pressure = gaugeAt(pad, state, before);
  const steep = 1 / (shut - pressure);
  const share = lost / (loading * shutOffHead(pad, state));
  return shut > pressure && share > 0 && Number.isFinite(share)
    ? { loading, pressure, steep, share }
    : undefined;
}

/** What the gauge shows with the filter blocked; undefined where water runs from one basin to another meanwhile. */
function shutPressure(pad: Pad, state: PadState): number | undefined {
  const { suctions, basins } = pad.spec;
  const open = suctions.filter((one) => openingOf(suctions, one.basin, state.from) > 0);
  const level = basins.find((basin) => basin.id === open[0]?.basin)?.level;
  if (open.length !== 1 || level === undefined) return undefined;
  return gaugeAt(pad, state, level + shutOffHead(pad, state));
}

function shutOffHead({ spec }: Pad, state: PadState): number {
  return pumpHead(spec.pump.curve, 0) * state.speed ** 2 * (state.wear?.pump ?? 1);
}

/** Gauge pressure before the filter at a head, Pa. */
function gaugeAt({ spec }: Pad, state: PadState, head: number): number {
  const { density } = propertiesAt(state.temperature ?? spec.temperature);
  return pointPressure.kernel({ head, elevation: spec.filter.elevation, velocity: 0, density });
}
