/** What stands on a nameplate, where plates have it, and what only the instructions say. */

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
      { part: 'what', fields: ['fuel', 'venting', 'ignition', 'made', 'listed'] },
      { part: 'heat', fields: ['input', 'inputLeast', 'altitudeInput', 'altitudeGreatest', 'efficiency'] },
      { part: 'gas', fields: ['inletLeast', 'inletGreatest'] },
      { part: 'water', fields: ['pressureGreatest', 'flowLeast', 'flowGreatest', 'riseGreatest'] },
      { part: 'power', fields: ['volts', 'amperes'] },
      {
        part: 'clearances',
        fields: ['clearanceWater', 'clearanceFar', 'clearanceBack', 'clearanceFront', 'clearanceAbove'],
      },
    ],
    instructions: [
      'loss',
      'header',
      'headerMetal',
      'exchanger',
      'inletWaterLeast',
      'innerBypass',
      'switchKind',
      'switchLeast',
      'switchGreatest',
      'switchDifferential',
      'runOnLeast',
      'offSwitch',
      'width',
      'depth',
      'height',
      'mass',
      'waterSide',
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
