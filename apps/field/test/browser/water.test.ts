/** The bypass turned as a person would: by finger, by keys, by steps; one edit each, and every one taken back. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

async function opening(page: Page): Promise<number> {
  return Number(await page.locator('.water-grip').getAttribute('aria-valuenow'));
}

describe.skipIf(!CAN_BROWSE)('the loop', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('has a bypass that turns, and the columns follow before it is let go', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/water`);
    const grip = page.locator('.water-grip');
    await grip.scrollIntoViewIfNeeded();
    const column = page.locator('.columns .column.open');
    const [start, before] = [await opening(page), await column.textContent()];
    const box = await grip.boundingBox();
    if (box === null) throw new Error('no handle');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 60, y - 20, { steps: 8 });
    await expect.poll(() => opening(page)).toBeGreaterThan(start + 20);
    await expect.poll(() => column.textContent()).not.toBe(before);
    await page.mouse.up();
    const turned = await opening(page);
    expect(turned).toBeGreaterThan(start + 20);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => opening(page)).toBe(start);
    await grip.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => opening(page)).toBe(start + 11);
    await page.keyboard.down('ArrowRight');
    await page.keyboard.press('Escape');
    await page.keyboard.up('ArrowRight');
    expect(await opening(page)).toBe(start + 11);
    await page.getByRole('button', { name: 'Less open' }).click();
    await expect.poll(() => opening(page)).toBe(start + 6);
    await grip.focus();
    await page.keyboard.press('Enter');
    await page.waitForURL('**/read/waterLoop/-/bypassOpening');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('lets picture and list take the same part in hand, by finger and by keys', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/water`);
    const inPicture = (name: string) =>
      page.locator('.water-loop').getByRole('button', { name, exact: true });
    const inList = page.locator('.water-row[aria-pressed="true"]');
    await inPicture('Circulation pump').click();
    expect(await inList.textContent()).toContain('Circulation pump');
    const card = page.getByRole('region', { name: 'Circulation pump' });
    await card.getByRole('link', { name: /^curve/ }).click();
    await page.waitForURL('**/read/pumps/p1/curve');
    await page.goBack();
    await expect.poll(() => inPicture('Circulation pump').getAttribute('aria-pressed')).toBe('true');
    await page.locator('.water-row', { hasText: 'Filter to heater' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => inPicture('Filter to heater').getAttribute('aria-pressed')).toBe('true');
    expect(await inPicture('Circulation pump').getAttribute('aria-pressed')).toBe('false');
    expect(await inList.count()).toBe(1);
    await inPicture('Heater').focus();
    await page.keyboard.press('Space');
    await expect.poll(() => inList.textContent()).toMatch(/^Heater/);
    await page.keyboard.press('Space');
    await expect.poll(() => inList.count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
