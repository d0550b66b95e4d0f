/** How each kind of thing on a plan is shown: its word, its sign on the text map, its line on the drawing. */

export interface KindStyle {
  /** Key of its word. */
  readonly word: string;
  readonly sign: string;
  /** Dashes of its line, in hundredths of a metre; solid where empty. */
  readonly dash: string;
  /** Width of its line, in hundredths of a metre. */
  readonly line: number;
}

const style = (word: string, sign: string, line: number, dash = ''): KindStyle => ({
  word,
  sign,
  line,
  dash,
});

/** Higher in the list is drawn over lower. */
export const KINDS: Readonly<Record<string, KindStyle>> = {
  'property line': style('yard.kind.property-line', ':', 4, '30 8 4 8'),
  walkway: style('yard.kind.walkway', '=', 2, '4 4'),
  pool: style('yard.kind.pool', '~', 4),
  sprinkler: style('yard.kind.sprinkler', '*', 2, '2 6'),
  deck: style('yard.kind.deck', 'd', 3, '12 4'),
  overhang: style('yard.kind.overhang', 'o', 3, '20 6'),
  building: style('yard.kind.building', '#', 8),
  shrub: style('yard.kind.shrub', 's', 2, '6 3'),
  fence: style('yard.kind.fence', 'f', 5, '2 3'),
  wall: style('yard.kind.wall', 'W', 8),
  opening: style('yard.kind.opening', 'w', 12, '6 6'),
  'air conditioner': style('yard.kind.air-conditioner', 'a', 3),
  electrical: style('yard.kind.electrical', 'e', 10),
  'regulator vent': style('yard.kind.regulator-vent', 'r', 3),
  'propane tank': style('yard.kind.propane-tank', 't', 5),
  pump: style('yard.kind.pump', 'p', 3),
};

/** Ground, best first. */
export const GROUND = {
  free: { sign: '+', word: 'yard.sign.free' },
  tight: { sign: '-', word: 'yard.sign.tight' },
  barred: { sign: '.', word: 'yard.sign.barred' },
  heater: { sign: 'H', word: 'yard.sign.heater' },
} as const;
