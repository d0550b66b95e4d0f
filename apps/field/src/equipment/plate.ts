/**
 * What stands on a nameplate, part by part as plates have it, and what only the instructions say. The input and what a
 * swap is judged by stand first; within a part, and among what the instructions say, what the most findings wait for.
 */

export interface PlatePart {
  /** Name of the part, by `app.plate-part.*`. */
  readonly part: string;
  readonly fields: readonly string[];
}

export interface Plate {
  readonly plate: readonly PlatePart[];
  readonly instructions: readonly string[];
}

export const PLATES: Readonly<Record<string, Plate>> = {
  heaters: {
    plate: [
      { part: 'heat', fields: ['input', 'efficiency', 'altitudeGreatest', 'altitudeInput', 'inputLeast'] },
      { part: 'gas', fields: ['inletLeast', 'inletGreatest'] },
      { part: 'water', fields: ['pressureGreatest', 'flowLeast', 'flowGreatest', 'riseGreatest'] },
      { part: 'what', fields: ['fuel', 'venting', 'listed', 'made', 'ignition'] },
      { part: 'power', fields: ['volts', 'amperes'] },
      {
        part: 'clearances',
        fields: ['clearanceBack', 'clearanceFront', 'clearanceAbove', 'clearanceWater', 'clearanceFar'],
      },
    ],
    instructions: [
      'loss',
      'waterSide',
      'mass',
      'inletWaterLeast',
      'offSwitch',
      'width',
      'depth',
      'height',
      'runOnLeast',
      'switchKind',
      'switchLeast',
      'switchGreatest',
      'switchDifferential',
      'exchanger',
      'header',
      'headerMetal',
      'innerBypass',
      'waterSideMovable',
      'soundLevel',
      'soundDistance',
      'reliefAsked',
      'reliefStamp',
      'integratedEfficiency',
    ],
  },
  pumps: {
    plate: [{ part: 'what', fields: ['name', 'speedFull'] }],
    instructions: ['curve', 'efficiency', 'suctionHead'],
  },
};

/** Every field that belongs to the equipment and not to the place it stands at. */
export function equipmentFields(collection: string): readonly string[] {
  const plate = PLATES[collection];
  if (plate === undefined) return [];
  const printed = plate.plate.flatMap(({ fields }) => fields).filter((field) => field !== 'name');
  return [...printed, ...plate.instructions];
}
