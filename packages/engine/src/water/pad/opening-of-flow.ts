import { openingFor } from '../valve/characteristic.ts';
import { valveCoefficient } from './layout.ts';
import { lineLoss } from './line.ts';
import type { Pad } from './pad.ts';
import { stationHead } from './solution.ts';
import type { Bypass } from './spec.ts';

/**
 * Opening of a bypass valve that passes a flow (m3/s) between the heads the pad now has before and after its heaters.
 *
 * Source: the valve's curve and the losses of its line. Range: a pad as last solved, with that flow through the
 * bypass; 1 where the valve cannot pass so much. Errors: none.
 *
 * Worked example: no flow → 0, shut.
 */
export function openingOfFlow(pad: Pad, { valve, line }: Bypass, flow: number): number {
  const across = stationHead(pad, 'split') - stationHead(pad, 'merge');
  const head = across - lineLoss(line, flow, pad.water.viscosity);
  return head > 0 ? Math.min(openingFor(valve, valveCoefficient(flow, head)), 1) : 1;
}
