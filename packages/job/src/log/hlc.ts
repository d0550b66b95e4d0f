/**
 * Hybrid logical clock: wall time that never runs backwards and counts on when it stands still.
 *
 * Written as 15 digits of milliseconds since 1970, a dash and 5 digits of count, so that comparing two clocks is
 * comparing two strings. It orders concurrent operations and nothing else: which edit overwrote which is said by
 * `replaces`.
 *
 * Source of the idea: Kulkarni et al., "Logical Physical Clocks and Consistent Snapshots in Globally Distributed
 * Databases" (2014), from memory. The limit on foreign clocks is this project's rule.
 */
export const HLC_WIDTH = 21;
/** A foreign clock further ahead than this never advances ours, ms. */
export const MAX_CLOCK_LEAD = 5 * 60_000;
/** Before any operation. */
export const HLC_ZERO = '000000000000000-00000';

const MAX_MS = 999_999_999_999_999;
const MAX_COUNT = 99_999;
const HLC = /^[0-9]{15}-[0-9]{5}$/;

export function isHlc(text: string): boolean {
  return HLC.test(text);
}

export function formatHlc(ms: number, count: number): string {
  return `${String(ms).padStart(15, '0')}-${String(count).padStart(5, '0')}`;
}

/** Milliseconds since 1970 of a clock string. */
export function hlcMillis(hlc: string): number {
  return Number(hlc.slice(0, 15));
}

function hlcCount(hlc: string): number {
  return Number(hlc.slice(16));
}

/** The next clock after `last` at wall time `now` (ms): strictly greater than `last`, whatever `now` says. */
export function tickHlc(last: string, now: number): string {
  const wall = Number.isFinite(now) ? Math.min(Math.max(Math.floor(now), 0), MAX_MS) : 0;
  const ms = hlcMillis(last);
  if (wall > ms) return formatHlc(wall, 0);
  const count = hlcCount(last) + 1;
  return count <= MAX_COUNT ? formatHlc(ms, count) : formatHlc(ms + 1, 0);
}

/** True when a clock runs so far ahead of wall time `now` (ms) that it must not advance ours. */
export function isTooFarAhead(foreign: string, now: number): boolean {
  return !(hlcMillis(foreign) <= now + MAX_CLOCK_LEAD);
}

/** Our clock after seeing a foreign one. */
export function receiveHlc(own: string, foreign: string, now: number): string {
  return isTooFarAhead(foreign, now) || foreign <= own ? own : foreign;
}
