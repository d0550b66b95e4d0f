/** Every sum's own worked example, typed as a person types it, against the figures its source prints. */
import { quantity } from '@firstfire/engine';
import { SUMS } from '@firstfire/sums';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../src/sum/values.ts';

/** The names, inputs and outputs that people and their scripts rely on. */
const CONTRACT: Readonly<Record<string, readonly [inputs: string, outputs: string]>> = {
  'gas-capacity': ['gas equation inside-diameter length inlet-pressure pressure-drop', 'capacity heat-input'],
  'gas-drop': ['gas equation inside-diameter length inlet-pressure flow', 'pressure-drop outlet-pressure'],
  'gas-clock': [
    'dial revolutions seconds heating-value gas-pressure gas-temperature altitude',
    'flow standard-flow heat-input',
  ],
  derate: ['heat-input altitude per-thousand-feet from-altitude', 'heat-input'],
  'tank-vaporisation': ['diameter length fill air-temperature', 'heat-input'],
  'pipe-loss': [
    'temperature inside-diameter roughness c-factor length flow method',
    'head-loss velocity reynolds friction-factor',
  ],
  'fitting-loss': ['k inside-diameter flow', 'head-loss'],
  'water-properties': ['temperature', 'density specific-heat vapour-pressure latent-heat viscosity'],
  evaporation: [
    'method water-temperature air-temperature relative-humidity air-speed activity',
    'mass-flux heat-flux',
  ],
  'pool-loss': [
    'method water-temperature air-temperature relative-humidity air-speed activity area sky-temperature cloud',
    'evaporation convection radiation total',
  ],
  'warm-up': [
    'volume area start target output air-temperature relative-humidity air-speed cover',
    'hours naive-hours plateau',
  ],
  'temperature-rise': ['heat flow', 'temperature-rise'],
  'room-air': ['method heat-input ach fan-assisted', 'volume'],
  'air-openings': ['method heat-input', 'area'],
  'vent-capacity': ['kind diameter height lateral', 'heat-input'],
  'vent-draught': ['height gas-temperature air-temperature altitude', 'draught'],
  'voltage-drop': ['voltage current length conductor phases', 'drop percent'],
  ampacity: ['conductor insulation-temperature ambient-temperature conductors', 'current'],
  'saturation-index': ['variant ph temperature calcium alkalinity tds cyanuric-acid', 'index'],
  flue: [
    'fuel o2 co2 stack-temperature air-temperature',
    'excess-air dew-point gross-efficiency net-efficiency',
  ],
  'co-air-free': ['co o2', 'co'],
  'lift-limit': ['horizontal vertical distance asymmetry coupling per-minute', 'weight'],
  'relief-capacity': ['heat-input', 'steam'],
  'standard-efficiency': [
    'heat-input thermal-efficiency burner-power pilot off-heat standby-power off-power',
    'fuel electricity heat-output efficiency',
  ],
  'static-head': ['height', 'pressure'],
  turnover: ['volume flow', 'hours'],
  atmosphere: ['altitude', 'pressure boiling-point'],
};

describe('the sums', () => {
  it('keep the names they promised', () => {
    expect(SUMS.map((sum) => sum.name)).toEqual(Object.keys(CONTRACT).sort());
  });

  it.each(Object.entries(CONTRACT))(
    '%s has its inputs and outputs, and no new one that must be given',
    (name, [inputs, outputs]) => {
      const sum = SUMS.find((one) => one.name === name);
      expect(Object.keys(sum?.inputs ?? {})).toEqual(expect.arrayContaining(inputs.split(' ')));
      expect(Object.keys(sum?.outputs ?? {})).toEqual(outputs.split(' '));
      const added = Object.entries(sum?.inputs ?? {}).filter(([key]) => !inputs.split(' ').includes(key));
      expect(
        added.filter(([, input]) => !input.optional && input.fallback === undefined).map(([key]) => key),
      ).toEqual([]);
    },
  );
});

describe.each(SUMS.map((sum): [string, (typeof SUMS)[number]] => [sum.name, sum]))('%s', (_name, sum) => {
  it('works its example to what the source prints', () => {
    const inputs = readInputs(sum, sum.example.given);
    if (!inputs.ok) throw new Error(JSON.stringify(inputs.issues));
    const answer = sum.run(inputs.value);
    if (!answer.ok) throw new Error(JSON.stringify(answer.issues));
    expect(Object.keys(sum.example.gives).length).toBeGreaterThan(0);
    for (const [name, text] of Object.entries(sum.example.gives)) {
      const kind = sum.outputs[name]?.kind;
      if (kind === undefined) throw new Error(`no output ${name}`);
      const printed = quantity.parseQuantity(text, kind);
      if (!printed.ok) throw new Error(`${text}: ${JSON.stringify(printed.issues)}`);
      const allowed = sum.example.within * Math.abs(printed.value.si) + 1e-12;
      expect(Math.abs((answer.value[name] ?? Number.NaN) - printed.value.si), name).toBeLessThanOrEqual(
        allowed,
      );
    }
  });
});
