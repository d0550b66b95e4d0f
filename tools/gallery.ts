/** Pictures of every page of the field app, to be looked at: what a file shows stands in its name. */
import { mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import {
  DESK,
  openExample,
  openStage,
  PHONE,
  type Stage,
  TABLET,
} from '../apps/field/test/browser/harness.ts';
import { LINES, PAGES } from '../apps/field/test/browser/pages.ts';

const FOLDER = join(dirname(dirname(fileURLToPath(import.meta.url))), 'gallery');

const SIZES = { phone: PHONE, tablet: TABLET, desk: DESK };
/** Lines whose picture is fetched when it is first opened. */
const DRAWN = /\/jobs\/[^/]+\/(heat|gas|water)$/;

/** On the phone a line runs on below what is first seen. */
const WHOLE = new Set([...LINES.map((line) => `line-${line}`), 'job', 'working', 'plate']);

const EXAMPLES = ['Public pool', 'An old heater', 'A survey half done', 'Propane in a cold winter'];

async function shoot(stage: Stage, size: keyof typeof SIZES, dark: boolean): Promise<void> {
  const { page, context } = await stage.device({ viewport: SIZES[size], dark });
  const picture = async (what: string, fullPage = false): Promise<void> => {
    await settled(page);
    const name = `${what}.${size}.${dark ? 'dark' : 'daylight'}${fullPage ? '.whole' : ''}.png`;
    await page.screenshot({ path: join(FOLDER, name), fullPage });
  };
  await page.goto('/');
  await picture('jobs-empty');
  await page.goto('/new');
  await picture('new');
  const job = await openExample(page, 'House pool');
  for (const [what, below] of Object.entries(PAGES)) {
    await page.goto(`${job}${below}`);
    await picture(what);
    if (size === 'phone' && WHOLE.has(what)) await picture(what, true);
  }
  await typed(page, job);
  await picture('entry-typed');
  for (const name of EXAMPLES) await openExample(page, name);
  await page.goto('/');
  await page.locator('.job-row').nth(EXAMPLES.length).waitFor();
  await picture('jobs-full');
  for (const what of ['keeping', 'settings', 'equipment']) {
    await page.goto(`/${what}`);
    await picture(what);
  }
  await context.close();
}

/** A reading that changes a verdict, not yet entered. */
async function typed(page: Page, job: string): Promise<void> {
  await page.goto(`${job}/read/gasSupply/-/setPressure`);
  await page.getByRole('textbox').fill('4.5 in w.c.');
}

/** Fonts are there and what is fetched when first opened has come. */
async function settled(page: Page): Promise<void> {
  await page.locator('main').first().waitFor();
  await page.waitForLoadState('networkidle');
  if (DRAWN.test(page.url())) await page.locator('.picture svg').first().waitFor();
  await page.evaluate('document.fonts.ready.then(() => true)');
}

/** Only the sizes named, or all. */
const asked = process.argv.slice(2);
rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
const stage = await openStage();
try {
  for (const size of ['phone', 'tablet', 'desk'] as const) {
    if (asked.length > 0 && !asked.includes(size)) continue;
    await shoot(stage, size, false);
    await shoot(stage, size, true);
  }
  process.stdout.write(`Pictures are in ${FOLDER}\n`);
} finally {
  await stage.close();
}
