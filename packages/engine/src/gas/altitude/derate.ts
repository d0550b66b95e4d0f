/**
 * Heat input of an appliance at altitude: by the nameplate where it speaks, else by the code's default, once.
 *
 *     US      input·(1 − 4 %·Z/1000 ft) above 2000 ft, counted from sea level; nothing below
 *     Canada  input·(1 − 10 %) from 2000 to 4500 ft (from memory)
 *
 * Derating twice is the classic mistake: a nameplate rated for altitude reduced again by the code's percentage. Here
 * a sea-level input and an input at altitude are different types, and only the former can be derated.
 *
 * How sources disagree: trade pages that count from 2000 ft (5000 ft: 12 %) contradict the wording of NFPA 54 (2015)
 * Table E.1.1(d), which counts from sea level (20 %).
 *
 * Source: NFPA 54 11.1.2 (read in the 2013 California Mechanical Code, appendix B 1.2); CSA B149.1 from memory.
 * Range: altitude −500 to 15,000 ft. Errors: above the Canadian zone the code has no default and the maker is asked:
 * an `out-of-range` issue with reason `beyond-derate-zone`; an input that would vanish is `no-solution`.
 *
 * Worked example: 400 kBtu/h at 5000 ft by the US default → 320 kBtu/h.
 */
import { FOOT } from '../../quantity/index.ts';
import {
  evaluate,
  type Formula,
  fail,
  ok,
  type Recorder,
  type Result,
  type Source,
} from '../../trace/index.ts';

/** An input as rated at sea level; the only kind that may be derated. */
export interface SeaLevelInput {
  readonly basis: 'sea-level';
  /** W. */
  readonly heatInput: number;
}

/** An input that already holds at an altitude. */
export interface InputAtAltitude {
  readonly basis: 'at-altitude';
  /** W. */
  readonly heatInput: number;
  /** m. */
  readonly altitude: number;
  readonly by: 'nameplate' | 'code-default' | 'not-needed';
}

/** The nameplate's own figure for a band of altitudes. */
export interface NameplateBand {
  /** m, both ends belong to the band. */
  readonly from: number;
  readonly to: number;
  /** W, as printed for that band. */
  readonly heatInput: number;
}

export interface PerHeight {
  readonly type: 'per-height';
  /** Fraction lost per metre above sea level. */
  readonly perMetre: number;
  /** Nothing is lost up to here, m. */
  readonly above: number;
  readonly source: Source;
}

export interface Zone {
  readonly type: 'zone';
  readonly fraction: number;
  /** m. */
  readonly from: number;
  readonly to: number;
  readonly source: Source;
}

export type DerateRule = PerHeight | Zone;

/** United States: 4 % per 1000 ft above sea level, above 2000 ft. */
export const US_DERATE: PerHeight = {
  type: 'per-height',
  perMetre: 0.04 / (1000 * FOOT),
  above: 2000 * FOOT,
  source: { document: 'NFPA 54', at: '11.1.2', known: 'read in a public copy' },
};

/** Canada: 10 % between 2000 and 4500 ft. */
export const CANADA_DERATE: Zone = {
  type: 'zone',
  fraction: 0.1,
  from: 2000 * FOOT,
  to: 4500 * FOOT,
  source: { document: 'CSA B149.1', at: 'appliances at high altitude', known: 'from memory' },
};

const heatInput = { symbol: 'I', kind: 'heat-rate', min: 0, max: 1e8 } as const;
const height = { symbol: 'Z', kind: 'length', min: -500 * FOOT, max: 15_000 * FOOT } as const;

export interface Derating {
  readonly heatInput: number;
  readonly altitude: number;
  /** Fraction per 1000 ft (304.8 m). */
  readonly perThousandFeet: number;
  /** m. */
  readonly fromAltitude: number;
}

/** Input (W) by a rate from sea level that begins above an altitude. */
export const deratedInput: Formula<Derating> = {
  id: 'gas.derated-input',
  equation: 'I·(1 − r·Z/1000 ft) (Z > Z0); I (Z ≤ Z0)',
  inputs: {
    heatInput,
    altitude: height,
    perThousandFeet: { symbol: 'r', kind: 'ratio', min: 0, max: 0.2 },
    fromAltitude: { symbol: 'Z0', kind: 'length', min: 0, max: 15_000 * FOOT },
  },
  result: { ...heatInput, symbol: 'Iz' },
  source: US_DERATE.source,
  kernel: (x) => {
    if (x.altitude <= x.fromAltitude) return x.heatInput;
    const left = 1 - (x.perThousandFeet * x.altitude) / (1000 * FOOT);
    return left > 0 ? x.heatInput * left : Number.NaN;
  },
};

export interface ZoneDerating {
  readonly heatInput: number;
  readonly fraction: number;
}

/** Input (W) reduced by one fraction throughout a zone. */
export const zoneDeratedInput: Formula<ZoneDerating> = {
  id: 'gas.zone-derated-input',
  equation: 'I·(1 − r)',
  inputs: { heatInput, fraction: { symbol: 'r', kind: 'ratio', min: 0, max: 0.5 } },
  result: { ...heatInput, symbol: 'Iz' },
  source: CANADA_DERATE.source,
  kernel: (x) => x.heatInput * (1 - x.fraction),
};

export interface Site {
  /** m above sea level. */
  readonly altitude: number;
  readonly rule: DerateRule;
  /** What the nameplate itself says of altitudes. */
  readonly nameplate?: readonly NameplateBand[];
}

/** The input that holds at a site: the nameplate's, else the code's default, once. */
export function inputAtAltitude(
  input: SeaLevelInput,
  site: Site,
  recorder?: Recorder,
): Result<InputAtAltitude> {
  const { altitude, nameplate = [] } = site;
  const band = nameplate.find((one) => altitude >= one.from && altitude <= one.to);
  if (band !== undefined) {
    recorder?.given({ id: 'gas.nameplate-input', value: band.heatInput, kind: 'heat-rate' });
    return ok({ basis: 'at-altitude', altitude, heatInput: band.heatInput, by: 'nameplate' });
  }
  const found = byCode(input, site, recorder);
  if (!found.ok) return found;
  const by = found.value === input.heatInput ? 'not-needed' : 'code-default';
  return ok({ basis: 'at-altitude', altitude, heatInput: found.value, by });
}

function byCode(input: SeaLevelInput, { altitude, rule }: Site, recorder?: Recorder): Result<number> {
  if (rule.type === 'per-height')
    return evaluate(
      deratedInput,
      {
        heatInput: input.heatInput,
        altitude,
        perThousandFeet: rule.perMetre * 1000 * FOOT,
        fromAltitude: rule.above,
      },
      recorder,
    );
  if (altitude > rule.to)
    return fail({
      code: 'out-of-range',
      where: 'altitude',
      found: altitude,
      max: rule.to,
      kind: 'length',
      reason: 'beyond-derate-zone',
    });
  // At the lower limit itself the zone has not begun, as in the other rule.
  const fraction = altitude > rule.from ? rule.fraction : 0;
  return evaluate(zoneDeratedInput, { heatInput: input.heatInput, fraction }, recorder);
}
