/**
 * The picture of each line, fetched when the line is first opened. A line's picture is the default export of
 * `<line>/<line>-picture.tsx`; a line without such a file shows its findings and readings alone.
 */
import { type ComponentType, lazy } from 'react';

type Fetch = () => Promise<{ readonly default: ComponentType }>;

const FOUND: Readonly<Record<string, Fetch>> = import.meta.glob<{ readonly default: ComponentType }>([
  '../heat/heat-picture.tsx',
  '../gas/gas-picture.tsx',
  '../air/air-picture.tsx',
  '../water/water-picture.tsx',
  '../power/power-picture.tsx',
  '../place/place-picture.tsx',
]);

export const PICTURES: ReadonlyMap<string, ComponentType> = new Map(
  Object.entries(FOUND).map(([path, fetch]) => [path.split('/')[1] ?? '', lazy(fetch)]),
);
