/** No page breaks the rules of WCAG 2.2 AA that a program can check, by axe-core, daylight and dark, phone and desk. */
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';
import { PAGES } from './pages.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What a theme and a width can change; the rest is the same page. */
const OF_THEME = ['color-contrast', 'target-size', 'scrollable-region-focusable'];

/** Pages that belong to no job. */
const OUTSIDE = { jobs: '/', new: '/new', keeping: '/keeping', settings: '/settings' };

describe.skipIf(!CAN_BROWSE)('axe finds nothing', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['phone, daylight', PHONE, false],
    ['desk, dark', DESK, true],
  ])(
    'on a %s',
    async (_, viewport, dark) => {
      const { page, context, errors } = await stage.device({ viewport, dark });
      const found: string[] = [];
      const look = async (what: string): Promise<void> => {
        const { violations } = await (dark
          ? new AxeBuilder({ page }).withRules(OF_THEME)
          : new AxeBuilder({ page }).withTags(TAGS)
        ).analyze();
        for (const { id, nodes } of violations)
          found.push(
            `${what}: ${id} ${nodes
              .map((node) => node.target.join(' '))
              .slice(0, 3)
              .join(' | ')}`,
          );
      };
      for (const [what, address] of Object.entries(OUTSIDE)) {
        await page.goto(address);
        await page.locator('main').waitFor();
        await look(what);
      }
      const job = await openExample(page, 'House pool');
      for (const [what, below] of Object.entries(PAGES)) {
        await page.goto(`${job}${below}`);
        await page.locator('main').waitFor();
        if (/^line|working/.test(what)) await page.waitForLoadState('networkidle');
        await look(what);
      }
      await page.goto('/');
      await page.locator('.job-row').first().waitFor();
      await look('jobs, one there');
      expect(found).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
    240_000,
  );
});
