/** No page breaks the rules of WCAG 2.2 AA that a program can check, by axe-core, daylight and dark, phone and desk. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';
import { OUTSIDE, PAGES } from './pages.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What a theme and a width can change; the rest is the same page. */
const OF_THEME = ['color-contrast', 'target-size', 'scrollable-region-focusable'];

/** The other three ways to look at a page once it has been looked at on a phone by daylight. */
const ALSO = [
  { name: 'phone, dark', size: PHONE, colorScheme: 'dark' },
  { name: 'desk, dark', size: DESK, colorScheme: 'dark' },
  { name: 'desk, daylight', size: DESK, colorScheme: 'light' },
] as const;

describe.skipIf(!CAN_BROWSE)('axe finds nothing', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('on the pages outside a job', async () => {
    const { page, context, errors } = await stage.device();
    const found: string[] = [];
    for (const [what, address] of Object.entries(OUTSIDE))
      found.push(...(await lookedAt(page, what, address)));
    expect(found).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('on the pages of a job', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    const found: string[] = [];
    for (const [what, below] of Object.entries(PAGES))
      found.push(...(await lookedAt(page, what, `${job}${below}`)));
    found.push(...(await lookedAt(page, 'jobs, one there', '/')));
    expect(found).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  }, 240_000);
});

/** What breaks a rule on one page, in all four ways to look at it. */
async function lookedAt(page: Page, what: string, address: string): Promise<readonly string[]> {
  await page.setViewportSize(PHONE);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto(address);
  await page.locator('main').waitFor();
  if (/line|working|jobs,/.test(what)) await page.waitForLoadState('networkidle');
  const found = named(what, await axe(page).withTags(TAGS).analyze());
  for (const { name, size, colorScheme } of ALSO) {
    await page.setViewportSize(size);
    await page.emulateMedia({ colorScheme });
    // A key that has slid half under a bar is not a small one.
    await page.evaluate(() => scrollTo(0, 0));
    found.push(...named(`${what} (${name})`, await axe(page).withRules(OF_THEME).analyze()));
  }
  return found;
}

/** Only what breaks a rule is brought over from the page. */
function axe(page: Page): AxeBuilder {
  return new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).setLegacyMode();
}

type Axe = Awaited<ReturnType<AxeBuilder['analyze']>>;

function named(what: string, { violations }: Axe): string[] {
  return violations.map(({ id, nodes }) => {
    const where = nodes.slice(0, 3).map((node) => node.target.join(' '));
    return `${what}: ${id} ${where.join(' | ')}`;
  });
}
