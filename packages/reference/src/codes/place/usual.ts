/**
 * What the trade keeps from an outdoor heater where nameplate and code are silent, m.
 * *Common practice, no source.*
 */
const INCH = 0.0254;

/** Before each face: the water side is the one its pipes come out of, the far side the one across. */
export const USUAL_CLEARANCE = {
  above: 36 * INCH,
  front: 24 * INCH,
  back: 6 * INCH,
  water: 12 * INCH,
  far: 6 * INCH,
} as const;

/** From other things of the yard. */
export const USUAL_DISTANCE = {
  'air-conditioner': 24 * INCH,
  /** Out of reach of who stands in the water. */
  water: 60 * INCH,
} as const;
