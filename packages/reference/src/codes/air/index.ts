/** The rules of the air line: enough to burn, nothing that fouls it, and a safe way out for the flue gas. */
import type { AnyRule } from '../../evaluate/index.ts';
import { openingHigh, openingLow, openingSide } from './openings.ts';
import { combustionAir, highOpening, noChemicals, roomPull, supplyOpening } from './supply.ts';
import {
  capOverRoof,
  flueFromInlet,
  flueFromOpenings,
  terminalOverGround,
  terminalOverWalkway,
} from './terminal.ts';
import { commonVentCarries, ventCarries, ventHigh, ventStaysDry, ventSuits } from './vent.ts';

export const AIR_RULES: readonly AnyRule[] = [
  combustionAir,
  supplyOpening,
  highOpening,
  openingLow,
  openingHigh,
  openingSide,
  roomPull,
  ventSuits,
  ventCarries,
  ventStaysDry,
  commonVentCarries,
  ventHigh,
  capOverRoof,
  flueFromOpenings,
  flueFromInlet,
  terminalOverGround,
  terminalOverWalkway,
  noChemicals,
];
