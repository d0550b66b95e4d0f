/** IFGC appendix E, Table E-1: room volumes for inputs from 5,000 to 180,000 Btu/h. */
import { air, evaluate, expectOk, quantity } from '@firstfire/engine';
import type { Suite } from '../suite.ts';
import { btu } from './units.ts';

const { CUBIC_FOOT } = quantity;

/** Input, then the volume by the standard method, with a fan at 0.20 and 0.40, without at 0.20 and 0.40 air changes, ft3. */
const TABLE_E1: readonly (readonly [input: number, ...volumes: number[]])[] = [
  [5000, 250, 375, 188, 525, 263],
  [10_000, 500, 750, 375, 1050, 525],
  [15_000, 750, 1125, 563, 1575, 788],
  [20_000, 1000, 1500, 750, 2100, 1050],
  [25_000, 1250, 1875, 938, 2625, 1313],
  [30_000, 1500, 2250, 1125, 3150, 1575],
  [35_000, 1750, 2625, 1313, 3675, 1838],
  [40_000, 2000, 3000, 1500, 4200, 2100],
  [45_000, 2250, 3375, 1688, 4725, 2363],
  [50_000, 2500, 3750, 1875, 5250, 2625],
  [55_000, 2750, 4125, 2063, 5775, 2888],
  [60_000, 3000, 4500, 2250, 6300, 3150],
  [65_000, 3250, 4875, 2438, 6825, 3413],
  [70_000, 3500, 5250, 2625, 7350, 3675],
  [75_000, 3750, 5625, 2813, 7875, 3938],
  [80_000, 4000, 6000, 3000, 8400, 4200],
  [85_000, 4250, 6375, 3188, 8925, 4463],
  [90_000, 4500, 6750, 3375, 9450, 4725],
  [95_000, 4750, 7125, 3563, 9975, 4988],
  [100_000, 5000, 7500, 3750, 10_500, 5250],
  [105_000, 5250, 7875, 3938, 11_025, 5513],
  [110_000, 5500, 8250, 4125, 11_550, 5775],
  [115_000, 5750, 8625, 4313, 12_075, 6038],
  [120_000, 6000, 9000, 4500, 12_600, 6300],
  [125_000, 6250, 9375, 4688, 13_125, 6563],
  [130_000, 6500, 9750, 4875, 13_650, 6825],
  [135_000, 6750, 10_125, 5063, 14_175, 7088],
  [140_000, 7000, 10_500, 5250, 14_700, 7350],
  [145_000, 7250, 10_875, 5438, 15_225, 7613],
  [150_000, 7500, 11_250, 5625, 15_750, 7875],
  [155_000, 7750, 11_625, 5813, 16_275, 8138],
  [160_000, 8000, 12_000, 6000, 16_800, 8400],
  [165_000, 8250, 12_375, 6188, 17_325, 8663],
  [170_000, 8500, 12_750, 6375, 17_850, 8925],
  [175_000, 8750, 13_125, 6563, 18_375, 9188],
  [180_000, 9000, 13_500, 6750, 18_900, 9450],
];

const COLUMNS = [
  { name: 'standard' },
  { name: 'fan-assisted at 0.20', airChanges: 0.2, coefficient: 15 },
  { name: 'fan-assisted at 0.40', airChanges: 0.4, coefficient: 15 },
  { name: 'natural at 0.20', airChanges: 0.2, coefficient: 21 },
  { name: 'natural at 0.40', airChanges: 0.4, coefficient: 21 },
] as const;

export const ROOM_VOLUMES: Suite = {
  id: 'air/ifgc-table-e-1',
  area: 'air',
  kind: 'published',
  document: 'International Fuel Gas Code, appendix E (Minnesota)',
  at: 'Table E-1, a city copy; the three cells its scan garbles are the ones the section gives; air changes of the columns from memory',
  quantity: 'room volume, ft3',
  band: { absolute: 0.51 },
  bandBecause: 'whole cubic feet',
  cases: TABLE_E1.flatMap(([input, ...volumes]) =>
    COLUMNS.map((column, index) => ({
      id: `${input} Btu/h, ${column.name}`,
      published: volumes[index] ?? Number.NaN,
      computed: () => {
        const heatInput = btu(input);
        const volume =
          'airChanges' in column
            ? evaluate(air.infiltrationRoomVolume, { heatInput, ...column })
            : evaluate(air.standardRoomVolume, { heatInput });
        return expectOk(volume) / CUBIC_FOOT;
      },
    })),
  ),
};
