/**
 * Head lost in a pump that stands: its impeller is a resistance, not a valve.
 *
 * Water that stands higher on one side runs through a stopped pump: a raised spa drains back into the pool where no
 * check valve holds it. The loss is taken as the pump's own shutoff head at half its end flow, which is the order of
 * what locked impellers are found to lose; it decides how fast the water runs, not whether it does.
 *
 * Source: common practice, no source. Range: a curve without issues. Errors: none.
 *
 * Worked example: shutoff 24 m, half of end flow 4 L/s → 1.5 m at 1 L/s.
 */
import type { LossLaw } from '../loss/loss-law.ts';
import type { PumpCurve } from './curve.ts';

/** Loss law of the standing pump, the same both ways. */
export function stoppedPumpLoss(curve: PumpCurve): LossLaw {
  if (curve.shape === 'power') {
    const flow = (curve.a / curve.b) ** (1 / curve.c) / 2;
    return { type: 'point', flow, loss: curve.a, exponent: 2 };
  }
  const flow = (curve.flows.at(-1) as number) / 2;
  return { type: 'point', flow, loss: curve.heads[0] as number, exponent: 2 };
}
