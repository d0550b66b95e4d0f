/** What a finger moves in the field app: script, style and layout from the event to the frame that shows it. */
import type { Page } from 'playwright-core';
import { openExample, type Stage } from '../apps/field/test/browser/harness.ts';
import type { BenchRow } from './measure.ts';

const MOVES = 60;
/** The first moves are still compiled. */
const WARM = 10;
/** Long enough for the frame that a move asks for. */
const REST_MS = 50;

interface Moved {
  readonly name: string;
  readonly page: string;
  /** What is taken hold of. */
  readonly grip: string;
  /** Where the finger goes, px beside the grip, `turn` from 0 to 1 and back. */
  readonly way: (turn: number) => readonly [number, number];
}

const DRAGS: readonly Moved[] = [
  {
    name: 'the bypass handle turned by one move of the finger',
    page: 'water',
    grip: '.water-grip',
    way: (turn) => [60 * turn, -20 * turn],
  },
  {
    name: 'the flag of the wanted hour moved likewise',
    page: 'heat',
    grip: '.heat-grip',
    way: (turn) => [-80 * turn, 0],
  },
];

/**
 * Runs in the page: the handlers of an event, then what the next frame's callbacks do and the layout they ask for; not
 * the wait between the two. What follows after that frame is not counted.
 */
const WATCH = `
  globalThis.firstfireMoves = [];
  for (const type of ['pointermove', 'click']) {
    let start = 0, frame = 0;
    addEventListener(type, () => {
      start = performance.now();
      requestAnimationFrame(() => { frame = performance.now(); });
    }, { capture: true });
    addEventListener(type, () => {
      const handled = performance.now() - start;
      requestAnimationFrame(() => {
        document.body.getBoundingClientRect();
        firstfireMoves.push(handled + performance.now() - frame);
      });
    });
  }
`;

export async function moveBench(stage: Stage, slowed: number): Promise<readonly BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const rate of [1, slowed]) {
    for (const drag of DRAGS) rows.push(row(drag.name, rate, await dragged(stage, drag, rate)));
    rows.push(row('a pipe size tapped on the gas page', rate, await tapped(stage, rate)));
  }
  return rows;
}

function row(name: string, rate: number, p95: number): BenchRow {
  const goal = rate === 1 ? 16 : 50;
  const slow = rate === 1 ? '' : `, slowed ${rate} times`;
  return {
    name: `${name}${slow}`,
    ours: `${p95.toFixed(1)} ms, 95th percentile`,
    goal: `${goal} ms`,
    met: p95 <= goal,
  };
}

async function dragged(stage: Stage, { page: below, grip, way }: Moved, rate: number): Promise<number> {
  const { page, context } = await stage.device();
  const job = await openExample(page, 'House pool');
  await page.goto(`${job}/${below}`);
  const held = page.locator(grip).first();
  await held.scrollIntoViewIfNeeded();
  const box = await held.boundingBox();
  if (box === null) throw new Error(`nothing to take hold of on ${below}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const p95 = await counted(page, rate, async (i) => {
    const turn = Math.abs(((i / 20) % 2) - 1);
    const [right, down] = way(1 - turn);
    await page.mouse.move(x + right, y + down);
  });
  await page.mouse.up();
  await context.close();
  return p95;
}

async function tapped(stage: Stage, rate: number): Promise<number> {
  const { page, context } = await stage.device();
  const job = await openExample(page, 'House pool');
  await page.goto(`${job}/gas?part=section~s1`);
  const sizes = page.locator('.gas-sizes button');
  await sizes.first().waitFor();
  const p95 = await counted(page, rate, async (i) => {
    await sizes.nth(1 + (i % 2)).click();
  });
  await context.close();
  return p95;
}

/** 95th percentile of what each move costs until the next frame, ms. */
async function counted(page: Page, rate: number, move: (i: number) => Promise<void>): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  await page.evaluate(WATCH);
  for (let i = 0; i < MOVES; i += 1) {
    await move(i);
    await page.waitForTimeout(REST_MS * rate);
  }
  const times = await page.evaluate<number[]>('firstfireMoves');
  const warm = times.slice(WARM).sort((a, b) => a - b);
  return warm[Math.floor(warm.length * 0.95)] ?? Number.NaN;
}
