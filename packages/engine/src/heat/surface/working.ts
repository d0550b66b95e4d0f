/**
 * The working of a surface balance: the same kernels run again with a recorder, one group a flow.
 *
 * The values of the groups are those of the fast form; the formulas under them give the flux from a square metre of
 * bare water, and the shares of area and cover are set beside it.
 */
import { saturationPressure, saturationPressureAt } from '../../properties/index.ts';
import { type Formula, type Recorder, traced } from '../../trace/index.ts';
import {
  bowenConvection,
  type ConvectionMethod,
  linearConvection,
  mcadamsConvection,
  watmuffConvection,
} from './convection.ts';
import { COVER_SOURCE, underCover } from './cover.ts';
import {
  type EvaporationMethod,
  type EvaporationState,
  evaporationCoefficient,
  evaporationSource,
} from './evaporation/index.ts';
import { conductedLoss } from './ground.ts';
import type { SurfaceLosses, SurfaceSetting, SurfaceState } from './losses.ts';
import { makeUp } from './make-up.ts';
import { absorbedSun, longWave } from './radiation.ts';
import { spillwayArea, spillwaySpeed } from './spillway.ts';
import {
  ACTIVITY,
  AIR_SPEED,
  AIR_TEMPERATURE_AT_POOL,
  PRESSURE_AT_POOL,
  WATER_TEMPERATURE,
} from './variables.ts';

function equation(method: EvaporationMethod): string {
  if (method === 'ashrae') return 'q = 4e-8·Fa·L(Tw)·(pw − pa)';
  return method === 'shah' ? 'q = Fa·E0·L(Tw)' : 'q = Fa·(a + b·v)·(pw − pa)';
}

/** Heat of evaporation from bare water by a method, W/m2. */
export function evaporationFlux(method: EvaporationMethod): Formula<EvaporationState> {
  return {
    id: `heat.evaporation-flux-${method}`,
    equation: equation(method),
    inputs: {
      waterTemperature: WATER_TEMPERATURE,
      airTemperature: AIR_TEMPERATURE_AT_POOL,
      vapourPressure: { symbol: 'pa', kind: 'absolute-pressure', min: 0, max: 2e4 },
      pressure: PRESSURE_AT_POOL,
      airSpeed: AIR_SPEED,
      activity: ACTIVITY,
    },
    result: { symbol: 'q', kind: 'heat-flux' },
    source: evaporationSource(method),
    kernel: (x, recorder) => {
      const atWater = traced(saturationPressure, { temperature: x.waterTemperature }, recorder);
      return evaporationCoefficient(method, x, atWater) * (atWater - x.vapourPressure);
    },
  };
}

interface Recording {
  readonly losses: Readonly<SurfaceLosses>;
  readonly recorder: Recorder;
}

/** Records every flow of a balance as a group, and the total over them. */
export function recordLosses(
  setting: SurfaceSetting,
  x: SurfaceState,
  { losses, recorder }: Recording,
): void {
  const { cover, area } = setting;
  const group = (name: keyof SurfaceLosses, steps: () => void) => {
    recorder.open();
    steps();
    recorder.closeGroup({ id: `heat.loss-${name}`, value: losses[name], kind: 'heat-rate' });
  };
  const share = (left: number) => {
    recorder.given({ id: 'heat.water-area', value: area, kind: 'area' });
    recorder.given({
      id: 'heat.cover-share',
      value: underCover(left, x.covered),
      kind: 'ratio',
      source: COVER_SOURCE,
    });
  };
  const flux = evaporationFlux(setting.evaporation);
  group('total', () => {
    group('evaporation', () => {
      traced(flux, x, recorder);
      share(cover.evaporation);
    });
    group('convection', () => {
      recordConvection(setting.convection, x, { evaporation: flux.kernel(x), recorder });
      share(cover.dry);
    });
    group('longWave', () => {
      traced(longWave, { ...x, ...setting }, recorder);
      share(cover.dry);
    });
    group('sun', () => {
      traced(absorbedSun, { ...x, ...setting }, recorder);
      share(cover.sun);
    });
    group('ground', () => recordGround(setting, x, recorder));
    group('makeUp', () => {
      const flow = Math.max(0, losses.evaporated) + setting.otherMakeUp;
      traced(makeUp, { ...x, flow }, recorder);
    });
    group('spillway', () => recordSpillway(setting, recorder));
    group('airJets', () => {
      const flow = setting.airJets?.airFlow ?? 0;
      recorder.given({ id: 'heat.air-flow', value: flow, kind: 'volume-flow' });
    });
  });
}

const FILMS = { linear: linearConvection, mcadams: mcadamsConvection, watmuff: watmuffConvection } as const;

interface ConvectionRecording {
  readonly evaporation: number;
  readonly recorder: Recorder;
}

function recordConvection(method: ConvectionMethod, x: SurfaceState, more: ConvectionRecording): void {
  const { evaporation, recorder } = more;
  if (method !== 'bowen') {
    traced(FILMS[method], x, recorder);
    return;
  }
  const vapourDifference = saturationPressureAt(x.waterTemperature) - x.vapourPressure;
  // Where nothing evaporates the printed ratio is 0/0; the flow itself comes from the coefficient.
  if (vapourDifference !== 0) traced(bowenConvection, { ...x, evaporation, vapourDifference }, recorder);
}

function recordGround(setting: SurfaceSetting, x: SurfaceState, recorder: Recorder): void {
  const { waterTemperature } = x;
  const ground = { conductance: setting.groundConductance, outsideTemperature: x.groundTemperature };
  const air = { conductance: setting.airConductance, outsideTemperature: x.airTemperature };
  traced(conductedLoss, { ...ground, waterTemperature }, recorder);
  traced(conductedLoss, { ...air, waterTemperature }, recorder);
}

function recordSpillway({ spillway }: SurfaceSetting, recorder: Recorder): void {
  if (spillway === undefined) return;
  recorder.given({ id: 'heat.spillway-area', value: spillwayArea(spillway), kind: 'area' });
  recorder.given({ id: 'heat.spillway-speed', value: spillwaySpeed(spillway), kind: 'velocity' });
}
