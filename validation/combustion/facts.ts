/** What textbooks and trade pages say in passing. */
import { combustion, evaluate } from '@firstfire/engine';
import type { Suite } from '../suite.ts';

const natural = combustion.COMBUSTION_FUELS.natural;

function carbonDioxideAt(excessAir: number) {
  const { airDemand, dryFlue, carbon } = combustion.flameBalance(natural);
  const found = evaluate(combustion.flueCarbonDioxide, { airDemand, dryFlue, carbon, excessAir });
  return found.ok ? 100 * found.value : found;
}

export const FACTS: Suite = {
  id: 'combustion/facts',
  area: 'combustion',
  kind: 'published',
  document: 'Trade pages on natural gas combustion',
  at: 'products of a cubic foot; where condensing begins; carbon dioxide of a tuned burner',
  quantity: 'as named in each case',
  band: { relative: 0.06 },
  bandBecause: 'whole cubic feet, whole degrees, "about"',
  cases: [
    {
      id: 'wet flue gas of 1 ft3 of natural gas without excess air, ft3',
      published: 11,
      computed: () => {
        const { dryFlue, vapour } = combustion.flameBalance(natural);
        return dryFlue + vapour;
      },
    },
    {
      id: 'water vapour in it, ft3',
      published: 2,
      computed: () => combustion.flameBalance(natural).vapour,
    },
    {
      id: 'condensation starts below, °C, at 5 % excess air',
      published: 58,
      computed: () => {
        const dew = combustion.flueDewPoint(natural, { excessAir: 0.05, airPressure: 101_325 });
        return dew.ok ? dew.value - 273.15 : dew;
      },
    },
    {
      id: 'carbon dioxide at the upper end of the typical 5 to 10 % excess air, about, %',
      published: 10,
      computed: () => carbonDioxideAt(0.1),
    },
  ],
};
