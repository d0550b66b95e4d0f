/** Siegert's constants, from memory, against the balance they abridge. */
import { combustion, evaluate } from '@firstfire/engine';
import type { Case, Suite } from '../suite.ts';

const FUELS = ['natural', 'propane'] as const;

const greatest: Suite = {
  id: 'combustion/siegert-greatest-carbon-dioxide',
  area: 'combustion',
  kind: 'practice',
  document: '1. BImSchV, Siegert’s constants (from memory)',
  at: 'greatest carbon dioxide of natural gas and propane',
  quantity: 'carbon dioxide of the dry flue gas without excess air, %',
  band: { absolute: 0.1 },
  bandBecause: 'printed to a tenth; natural gas is no pure methane',
  cases: FUELS.map((name) => ({
    id: name,
    published: combustion.SIEGERT[name].greatestCarbonDioxide,
    computed: () => {
      const { carbon, dryFlue } = combustion.flameBalance(combustion.COMBUSTION_FUELS[name]);
      return (100 * carbon) / dryFlue;
    },
  })),
};

const AIR = 293.15;

function netLoss(name: (typeof FUELS)[number], oxygen: number, rise: number): number {
  const found = combustion.flueGas(
    combustion.COMBUSTION_FUELS[name],
    { oxygen },
    { stackTemperature: AIR + rise, airTemperature: AIR, airPressure: 101_325 },
  );
  return found.ok ? 100 * (1 - found.value.netEfficiency) : Number.NaN;
}

const losses: Suite = {
  id: 'combustion/siegert-loss',
  area: 'combustion',
  kind: 'practice',
  document: '1. BImSchV, Siegert’s constants (from memory)',
  at: 'flue loss at 3 and 6 % oxygen, 100 and 180 K above the air',
  quantity: 'flue loss, % of the net heat; ours by the heat balance',
  band: { relative: 0.05 },
  bandBecause: 'two digits in each constant',
  cases: FUELS.flatMap((name) =>
    [0.03, 0.06].flatMap((oxygen) =>
      [100, 180].map((rise): Case => {
        const { a2, b } = combustion.SIEGERT[name];
        const loss = evaluate(combustion.siegertLoss, { oxygen, rise, a2, b });
        return {
          id: `${name}, ${100 * oxygen} %, ${rise} K`,
          published: loss.ok ? 100 * loss.value : Number.NaN,
          computed: () => netLoss(name, oxygen, rise),
        };
      }),
    ),
  ),
};

export const SIEGERT_SUITES: readonly Suite[] = [greatest, losses];
