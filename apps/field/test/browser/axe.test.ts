/** No page breaks the rules of WCAG 2.2 AA that a program can check, by axe-core, daylight and dark, phone and desk. */
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const LINES = ['heat', 'gas', 'air', 'water', 'power', 'place'];

describe.skipIf(!CAN_BROWSE)('axe finds nothing', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['phone, daylight', PHONE, false],
    ['desk, dark', DESK, true],
  ])('on a %s', async (_, viewport, dark) => {
    const { page, context, errors } = await stage.device({ viewport, dark });
    const found: string[] = [];
    const look = async (what: string): Promise<void> => {
      const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
      for (const { id, nodes } of violations)
        found.push(
          `${what}: ${id} ${nodes
            .map((node) => node.target.join(' '))
            .slice(0, 3)
            .join(' | ')}`,
        );
    };
    await page.goto('/');
    await page.locator('main').waitFor();
    await look('jobs');
    const job = await openExample(page, 'House pool');
    await look('job');
    for (const line of LINES) {
      await page.goto(`${job}/${line}`);
      await page.locator('main').waitFor();
      await look(line);
    }
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.locator('main').waitFor();
    await look('entry');
    expect(found).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});
