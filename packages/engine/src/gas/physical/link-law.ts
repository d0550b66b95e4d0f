/**
 * Pipes, meters and regulators as laws of the network, in the potential φ = p²·(elevation factor).
 *
 * A meter loses by the square of its flow: k of Δp = k·ρ·V² from its badge, and since p·ρ⁻¹ is Rs·T,
 * Δ(p²) = 2·k·Rs·T·m². A regulator holds set pressure less a droop in proportion to flow; below a fiftieth of its
 * capacity the outlet climbs to lock-up; with too little before it, it stands wide open and loses by the square.
 *
 * Source: physics; the droop line and the fiftieth are *common practice, no source*.
 */
import type { FrictionLaw, LinkLaw, PowerLaw, RegulatorLaw } from '../../numerics/index.ts';
import { ok, type Result } from '../../trace/index.ts';
import { corrugatedFit, corrugatedLaw } from './corrugated-law.ts';
import { elevationFactor, meanElevationFactor } from './elevation.ts';
import type { GasState } from './gas-state.ts';
import { LOCK_UP_SHARE, meterCoefficient, outsidePressure, wideOpenCoefficient } from './outlet-formulas.ts';
import { pipeCoefficients } from './pipe-law.ts';
import type { GasAmbient, GasLink, GasMeter, GasPipe, GasRegulator } from './system-spec.ts';

export interface LinkPlace {
  readonly gas: GasState;
  readonly ambient: GasAmbient;
  readonly specificGravity: number;
  /** Heights of its two junctions above the supply, m. */
  readonly from: number;
  readonly to: number;
}

/** The law of a link where it stands. */
export function linkLaw(link: GasLink, place: LinkPlace): Result<LinkLaw> {
  if (link.type === 'meter') return ok(meterLaw(link, place));
  if (link.type === 'regulator') return ok(regulatorLaw(link, place));
  return pipeLaw(link, place);
}

function pipeLaw({ bore, length, fittings = 0 }: GasPipe, place: LinkPlace): Result<LinkLaw> {
  const weight = meanElevationFactor(place.gas, place.from, place.to);
  if (bore.type === 'corrugated') {
    const fit = corrugatedFit(bore);
    if (!fit.ok) return fit;
    const { specificGravity, ambient } = place;
    const law = corrugatedLaw(fit.value, { length, specificGravity, temperature: ambient.temperature });
    return ok({ ...law, r: law.r * weight });
  }
  const body = { ...bore, length: length + fittings * bore.insideDiameter };
  const { c, ...rest } = pipeCoefficients(body, place.gas);
  return ok({ type: 'friction', c: c * weight, ...rest } satisfies FrictionLaw);
}

function meterLaw({ badge, badgeDrop }: GasMeter, place: LinkPlace): PowerLaw {
  const { gas, specificGravity, from } = place;
  const r = meterCoefficient({ badge, badgeDrop, specificGravity, temperature: gas.temperature });
  return { type: 'power', n: 2, r: r * elevationFactor(gas, from) };
}

function regulatorLaw(regulator: GasRegulator, { gas, ambient, to }: LinkPlace): RegulatorLaw {
  const { setPressure, lockUpPressure, droop, capacity, wideOpenDrop } = regulator;
  const factor = elevationFactor(gas, to);
  const outside = outsidePressure(ambient.atmosphere, ambient.temperature, to);
  const potential = (gauge: number): number => factor * (outside + gauge) ** 2;
  const flows = [0, LOCK_UP_SHARE * capacity, capacity];
  const gauges = [lockUpPressure, setPressure - LOCK_UP_SHARE * droop, setPressure - droop];
  const ratedOutlet = outside + setPressure;
  const open = factor * wideOpenCoefficient({ capacity, wideOpenDrop, ratedOutlet });
  return { type: 'regulator', outlet: { flows, potentials: gauges.map(potential) }, open };
}
