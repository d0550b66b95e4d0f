/**
 * The vents of the code’s tables as chimneys: which wall, which connector, which burner.
 *
 * Source: the headings of IFGC tables 504.2(1), 504.2(2) and 504.2(5); states of the burners in `flue-gas.ts`.
 * Range: as the chimney relation. Errors: none of its own.
 * Worked example: `type-b-natural` of 5 in → walls of 0.6 Btu/(h ft2 °F), inlet loss 1.5, 0.66 kg/MJ.
 */
import { ATMOSPHERE } from '../../quantity/index.ts';
import type { Chimney } from './chimney.ts';
import { WALL_TRANSMITTANCE } from './column.ts';
import { BURNERS, FLUE_GAS, flueGasMass, type VentedBurner } from './flue-gas.ts';

type Wall = keyof typeof WALL_TRANSMITTANCE;

interface VentKindParts {
  readonly burner: VentedBurner;
  readonly wall: Wall;
  readonly connector: Wall;
}

export const VENT_KINDS = {
  'type-b-natural': { burner: 'natural', wall: 'type-b', connector: 'type-b' },
  'type-b-fan': { burner: 'fan', wall: 'type-b', connector: 'type-b' },
  'single-wall-connector-natural': { burner: 'natural', wall: 'type-b', connector: 'single-wall' },
  'single-wall-connector-fan': { burner: 'fan', wall: 'type-b', connector: 'single-wall' },
  'single-wall-natural': { burner: 'natural', wall: 'single-wall', connector: 'single-wall' },
} as const satisfies Readonly<Record<string, VentKindParts>>;

export type VentKind = keyof typeof VENT_KINDS;

/** Outdoor air of the tables’ vents, K (60 °F). */
const TABLE_AIR = 288.7056;
/** Elbows that a vent with a lateral has. */
const ELBOWS_OF_LATERAL = 2;

export interface VentSize {
  /** m. */
  readonly diameter: number;
  /** m. */
  readonly height: number;
  /** Lateral, m. */
  readonly offset: number;
}

/** The vent of a table, natural gas at sea level, as the chimney relation takes it. */
export function tableChimney(kind: VentKind, { diameter, height, offset }: VentSize): Chimney {
  const { burner, wall, connector } = VENT_KINDS[kind];
  const { carbonDioxide, rise, inletLoss } = BURNERS[burner];
  return {
    diameter,
    height,
    lateral: offset,
    elbows: offset > 0 ? ELBOWS_OF_LATERAL : 0,
    transmittance: WALL_TRANSMITTANCE[wall],
    connectorTransmittance: WALL_TRANSMITTANCE[connector],
    inletLoss,
    rise,
    massPerHeat: flueGasMass.kernel({ carbonDioxide, ...FLUE_GAS.natural }),
    airTemperature: TABLE_AIR,
    atmosphere: ATMOSPHERE,
  };
}
