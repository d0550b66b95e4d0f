/** Nominal sizes by their names, for the grid: what the catalogue has of a material, one tap each, never a number. */
import { catalog } from '@firstfire/reference';

export interface Sizes {
  readonly material: string;
  readonly names: readonly string[];
}

const GAS: Readonly<Record<string, readonly string[]>> = {
  'steel-schedule-40': catalog.gas.STEEL_SCHEDULE_40.sizes.map((one) => one.id),
  'copper-tube': catalog.gas.COPPER_TUBE.sizes.map((one) => one.id),
  polyethylene: catalog.gas.POLYETHYLENE.sizes.map((one) => one.id),
  csst: catalog.gas.CSST_SIZES.map((one) => `EHD ${one}`),
};

const WATER_PIPES: Readonly<Record<string, string>> = {
  'pvc-40': 'pvc-schedule-40',
  'pvc-80': 'pvc-schedule-80',
  'cpvc-40': 'cpvc-schedule-40',
  'cpvc-80': 'cpvc-schedule-80',
  'copper-L': 'copper-l',
};

/** Smaller than these no gas line and no pool line is run. */
const LEAST_WATER = 0.02;

/** Sizes of one material; of every material there is where it is not known yet. */
export function sizesOf(collection: string, material: string | undefined): readonly Sizes[] {
  const table = collection === 'gasSegments' ? GAS : waterSizes();
  const known = material === undefined ? undefined : table[material];
  if (material !== undefined && known !== undefined) return [{ material, names: known }];
  return Object.entries(table).map(([name, names]) => ({ material: name, names }));
}

/** Of a pipe's end, m. */
export interface Bore {
  readonly inside: number;
  readonly outside?: number;
}

/** What a size looks like; corrugated tubing has no one bore. */
export function boreOf(collection: string, material: string, name: string): Bore | undefined {
  if (collection === 'gasSegments') {
    const size = catalog.gas.PIPES.find((pipe) => pipe.id === material)?.sizes.find((one) => one.id === name);
    if (size === undefined) return undefined;
    // A plastic pipe's wall is its outside diameter over its dimension ratio.
    const outside =
      size.outsideDiameter ?? (size.sdr === undefined ? undefined : size.insideDiameter / (1 - 2 / size.sdr));
    return { inside: size.insideDiameter, ...(outside === undefined ? {} : { outside }) };
  }
  const pipe = catalog.water.WATER_PIPES.find((one) => one.id === WATER_PIPES[material]);
  const size = pipe?.sizes.find((one) => one.id === name);
  if (size === undefined) return undefined;
  const { insideDiameter: inside, outsideDiameter: outside } = size;
  return { inside, ...(outside === undefined ? {} : { outside }) };
}

function waterSizes(): Readonly<Record<string, readonly string[]>> {
  const pipes = catalog.water.WATER_PIPES;
  return Object.fromEntries(
    Object.entries(WATER_PIPES).map(([material, id]) => {
      const sizes = pipes.find((pipe) => pipe.id === id)?.sizes ?? [];
      return [material, sizes.filter((one) => one.insideDiameter >= LEAST_WATER).map((one) => one.id)];
    }),
  );
}
