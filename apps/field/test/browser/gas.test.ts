/** The gas page as a person uses it: sizes by tap, piping drawn by keyboard alone, workings by their address. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';

/** Looking at every rule takes its time on a busy machine. */
const SLOW = 180_000;
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Labels of the picture that run into one another, or out of their places. */
function collisions(): string[] {
  const box = (element: Element): DOMRect => element.getBoundingClientRect();
  const meet = (a: DOMRect, b: DOMRect): boolean =>
    a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1 && b.top < a.bottom - 1;
  const wrong: string[] = [];
  for (const rows of ['.gas-names span', '.gas-tick', '.gas-values > div']) {
    const all = [...document.querySelectorAll(rows)];
    for (const [i, one] of all.entries())
      for (const other of all.slice(i + 1))
        if (meet(box(one), box(other))) wrong.push(`${one.textContent} / ${other.textContent}`);
  }
  for (const cell of document.querySelectorAll('.gas-stretch'))
    for (const part of cell.children)
      if (box(part).left < box(cell).left - 1 || box(part).right > box(cell).right + 1)
        wrong.push(`${part.textContent} leaves its place`);
  if (document.documentElement.scrollWidth > innerWidth) wrong.push('the page scrolls sideways');
  return wrong;
}

async function axe(page: Page): Promise<string[]> {
  // Clear of the bars at head and foot, under which nothing can be pressed.
  await page.evaluate(() => document.querySelector('.gas-way')?.scrollIntoView({ block: 'center' }));
  const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  return violations.map(({ id, nodes }) => `${id} ${nodes.map((node) => node.target.join(' ')).slice(0, 3)}`);
}

describe.skipIf(!CAN_BROWSE)('the gas page', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['a phone', 'House pool', PHONE],
    ['a narrow phone', 'House pool', { width: 360, height: 740 }],
    ['a narrow phone', 'An old heater', { width: 360, height: 740 }],
    ['a phone', 'Public pool', PHONE],
    ['a desk', 'House pool', DESK],
  ])('on %s lets no label collide (%s)', async (_, example, viewport) => {
    const { page, context, errors } = await stage.device({ viewport });
    const job = await openExample(page, example);
    await page.goto(`${job}/gas`);
    for (const state of ['All off', 'Alone', 'All on']) {
      await page.getByText(state, { exact: true }).click();
      expect(await page.evaluate(collisions)).toEqual([]);
    }
    // As many sections on the way as a house may have.
    for (const _ of ['one more', 'and one more']) {
      if ((await page.locator('.gas-stretch').count()) > 7) break;
      await page.locator('.gas-stretch').first().click();
      await page.getByRole('button', { name: 'Put a tee in the middle' }).click();
      await page.keyboard.press('Escape');
      expect(await page.evaluate(collisions)).toEqual([]);
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  it(
    'shows at once what another size does, and undo takes it back',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/gas`);
      const heater = page.locator('.gas-values b');
      const before = await heater.textContent();
      await page.locator('.gas-stretch').nth(4).click();
      await page.locator('.gas-sizes').getByRole('button', { name: /^3\/4/ }).click();
      await expect.poll(() => heater.textContent()).not.toBe(before);
      expect(await axe(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => heater.textContent()).toBe(before);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'is drawn by keyboard alone, from a new job to a tree with a regulator',
    async () => {
      const { page, context, errors } = await stage.device();
      await page.goto('/new');
      await page.getByLabel('What is the job called?').fill('Drawn');
      await page.getByRole('button', { name: 'Begin a job' }).click();
      await page.waitForURL('**/jobs/**');
      const job = /\/jobs\/[^/]+/.exec(new URL(page.url()).pathname)?.[0] ?? '';
      await page.goto(`${job}/gas`);
      const press = async (name: string | RegExp): Promise<void> => {
        await page.getByRole('button', { name, exact: true }).first().focus();
        await page.keyboard.press('Enter');
      };
      const rows = (): Promise<number> => page.locator('.gas-row').count();
      await page.locator('.gas-row').first().waitFor();
      const before = await rows();
      await page.locator('.gas-link .gas-row').first().focus();
      await page.keyboard.press('Enter');
      await press('Put a tee in the middle');
      await press('Appliance here');
      await press('Furnace');
      await expect.poll(() => page.locator('.gas-panel h3').textContent()).toBe('Furnace');
      await page.keyboard.press('Escape');
      await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('gas-row');
      // A tee, a branch, an appliance at its end.
      await expect.poll(rows).toBe(before + 4);
      await page.locator('.gas-link .gas-row').first().focus();
      await page.keyboard.press('Enter');
      await press('Regulator ahead of it');
      await expect.poll(rows).toBe(before + 6);
      await page.keyboard.press('Escape');
      expect(await axe(page)).toEqual([]);
      await page.reload();
      await page.locator('.gas-row').first().waitFor();
      expect(await rows()).toBe(before + 6);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'opens a working in place, by its address too, and all findings on one scale',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/gas`);
      await page.locator('.working-link').first().click();
      await page.locator('.working-step').first().waitFor();
      const address = page.url();
      expect(await axe(page)).toEqual([]);
      await page.goto('/');
      await page.goto(address);
      await page.locator('.working-step').first().waitFor();
      await page.getByRole('link', { name: 'Close it' }).click();
      await page.locator('.working').waitFor({ state: 'detached' });
      await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe('working-link');
      await page.locator('.column.open').click();
      await page.locator('.rung').first().waitFor();
      expect(await axe(page)).toEqual([]);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );
});
