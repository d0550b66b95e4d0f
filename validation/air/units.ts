/** What these suites write in, in SI. */
import { quantity } from '@firstfire/engine';

/** Btu/h in W. */
export const btu = (perHour: number): number => (perHour * quantity.BTU) / quantity.HOUR;
