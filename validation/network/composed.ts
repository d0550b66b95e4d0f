/**
 * Looped networks composed from a seed: a grid of pipes between reservoirs at different levels, with demands, two
 * lifting pumps, check valves and throttles. Nothing in them is measured; they are there to be solved by two
 * independent programs.
 */
import type { PipeNetwork, PipeRow } from './pad.ts';

const DIAMETERS = [1.61, 2.067, 2.469, 3.068, 4.026, 6.065];

/** A repeatable source of numbers in [0, 1): a 32-bit congruential generator with mixed output. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const mixed = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
    return ((mixed ^ (mixed >>> 13)) >>> 0) / 2 ** 32;
  };
}

export interface Wanted {
  /** About how many links. */
  readonly links: number;
  readonly seed: number;
  readonly friction: 'H-W' | 'D-W';
}

/** A grid network of about the wanted number of links. */
export function composeNetwork({ links, seed, friction }: Wanted): PipeNetwork {
  const random = seeded(seed);
  const side = Math.max(2, Math.round(Math.sqrt(links / 2)));
  const columns = Math.max(2, Math.round((links + side) / (2 * side - 1)));
  const node = (r: number, c: number): string => `N${r}_${c}`;
  const pipes: PipeRow[] = [];
  const pipe = (from: string, to: string): void => {
    pipes.push(randomPipe(`P${pipes.length}`, random() < 0.5 ? [from, to] : [to, from], friction, random));
  };
  for (let r = 0; r < side; r += 1)
    for (let c = 0; c < columns; c += 1) {
      if (c + 1 < columns) pipe(node(r, c), node(r, c + 1));
      if (r + 1 < side) pipe(node(r, c), node(r + 1, c));
    }
  const inner = pipes.length;
  pipes.push(randomPipe('FEED1', ['HIGH', node(0, 0)], friction, random));
  pipes.push(randomPipe('FEED2', ['LOW', node(side - 1, columns - 1)], friction, random));
  const demands: Record<string, number> = {};
  for (let r = 0; r < side; r += 1)
    for (let c = 0; c < columns; c += 1) if (random() < 0.4) demands[node(r, c)] = (random() * 60) / side;
  return {
    id: `grid-${links}-${friction === 'H-W' ? 'hazen-williams' : 'darcy-weisbach'}`,
    friction,
    viscosity: 1,
    reservoirs: { HIGH: 90, LOW: 60, SUMP: 0 },
    demands,
    elevation: 0,
    pipes,
    checks: pipes
      .slice(0, inner)
      .filter(() => random() < 0.03)
      .map(([id]) => id),
    throttles: [['THROTTLE', node(0, 1), node(1, 0), 2.067, 4 + 20 * random()]],
    devices: [['FILTER', node(1, 1), node(0, 0), 'LOSS']],
    pumps: [['PUMP', 'SUMP', node(side - 1, 0), 'LIFT', 1]],
    curves: {
      LIFT: [
        [0, 180],
        [300, 140],
        [700, 70],
      ],
      LOSS: [
        [0, 0],
        [20, 1],
        [40, 4],
        [80, 16],
        [160, 64],
      ],
    },
  };
}

function randomPipe(
  id: string,
  [from, to]: readonly [string, string],
  friction: 'H-W' | 'D-W',
  random: () => number,
): PipeRow {
  const length = Math.round(20 + 400 * random());
  const diameter = DIAMETERS[Math.floor(DIAMETERS.length * random())]!;
  const roughness = friction === 'H-W' ? Math.round(100 + 50 * random()) : 0.005 + 0.5 * random();
  return [id, from, to, length, diameter, roughness, Math.round(4 * random())];
}
