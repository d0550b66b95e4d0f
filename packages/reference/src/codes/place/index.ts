/** The rules of the place line: where the heater stands, and what is around it. */
import type { AnyRule } from '../../evaluate/index.ts';
import {
  airConditioner,
  electricalSpace,
  propertyLine,
  regulatorVent,
  setback,
  tankDistance,
  waterEdge,
} from './distances.ts';
import { clearance, unlistedClearance, usualClearance } from './faces.ts';
import { controlsBarred, finnedEnclosure, listed, wallMounted, yearlyService } from './listing.ts';
import {
  baseHeight,
  connectionsFace,
  ignitionHeight,
  notTouched,
  notUnderDeck,
  outOfSprinkler,
  pad,
  serviceRoom,
  walkwayFree,
} from './standing.ts';
import { aboveFlood, aboveSnow, quietAtLine, standsInWind } from './weather.ts';

export const PLACE_RULES: readonly AnyRule[] = [
  clearance,
  usualClearance,
  unlistedClearance,
  serviceRoom,
  notUnderDeck,
  propertyLine,
  setback,
  airConditioner,
  regulatorVent,
  electricalSpace,
  waterEdge,
  tankDistance,
  pad,
  baseHeight,
  ignitionHeight,
  aboveFlood,
  aboveSnow,
  standsInWind,
  notTouched,
  outOfSprinkler,
  walkwayFree,
  connectionsFace,
  quietAtLine,
  listed,
  controlsBarred,
  finnedEnclosure,
  yearlyService,
  wallMounted,
];
export { USUAL_CLEARANCE, USUAL_DISTANCE } from './usual.ts';
