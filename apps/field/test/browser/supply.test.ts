/** The supply pressure moved as a person would: by finger, by keys, by steps; one edit each, and every one taken back. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

/** What is said of the handle: supply, heater, nameplate, verdict. */
async function said(page: Page): Promise<readonly string[]> {
  return (await page.locator('.gas-grip').getAttribute('aria-valuetext'))?.split('; ') ?? [];
}

async function supply(page: Page): Promise<number> {
  return Number.parseFloat((await said(page))[0] ?? '');
}

describe.skipIf(!CAN_BROWSE)('the supply pressure', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('follows the finger over a ground that stands still, and is one edit when let go', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/gas`);
    const grip = page.locator('.gas-grip');
    await grip.evaluate((one) => one.scrollIntoView({ block: 'center' }));
    const start = await supply(page);
    expect(start).toBe(7.2);
    const box = await grip.boundingBox();
    if (box === null) throw new Error('no handle');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const grid = await page.locator('.gas-tick').allTextContents();
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 60, { steps: 12 });
    await expect.poll(() => supply(page)).toBeLessThan(start - 0.4);
    const under = await grip.boundingBox();
    expect(Math.abs((under?.y ?? 0) + box.height / 2 - y - 60)).toBeLessThan(6);
    expect(await page.locator('.gas-tick').allTextContents()).toEqual(grid);
    // Nothing is written yet: leaving it would leave nothing to undo.
    expect(await page.getByRole('button', { name: 'Undo', disabled: false }).count()).toBe(0);
    await page.mouse.up();
    const moved = await supply(page);
    expect(moved).toBeLessThan(start - 0.4);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => supply(page)).toBe(start);
    expect(await page.getByRole('button', { name: 'Undo', disabled: false }).count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is moved by keys and by steps, typed on Enter, and says how it stands', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/gas`);
    const grip = page.locator('.gas-grip');
    await grip.focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => supply(page)).toBe(7.3);
    await page.keyboard.press('PageDown');
    await expect.poll(() => supply(page)).toBe(6.8);
    await page.keyboard.down('ArrowUp');
    await page.keyboard.press('Escape');
    await page.keyboard.up('ArrowUp');
    expect(await supply(page)).toBe(6.8);
    expect((await said(page)).at(-1)).toBe('meets');
    // One unit above the 4.5 of the nameplate, two and a half below what the line costs.
    for (let pressed = 0; pressed < 4; pressed += 1) await page.keyboard.press('PageDown');
    await expect.poll(async () => (await said(page)).at(-1)).toBe('fails');
    expect(await grip.evaluate((one) => one === document.activeElement)).toBe(true);
    await grip.click();
    await page.getByRole('button', { name: 'Higher' }).click();
    await expect.poll(() => supply(page)).toBe(4.9);
    await page.getByRole('button', { name: 'step' }).click();
    await page.getByRole('button', { name: 'Higher' }).click();
    await expect.poll(() => supply(page)).toBe(5.4);
    await page.keyboard.press('Escape');
    await grip.focus();
    await page.keyboard.press('Enter');
    await page.waitForURL('**/read/gasSupply/-/setPressure');
    expect(await page.getByRole('textbox').first().inputValue()).not.toContain('Enter');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('with all off is the lock-up pressure', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/gas`);
    await page.getByText('All off', { exact: true }).click();
    expect(await supply(page)).toBe(8.4);
    await page.locator('.gas-grip').focus();
    await page.keyboard.press('Enter');
    await page.waitForURL('**/read/gasSupply/-/lockUpPressure');
    expect(errors).toEqual([]);
    await context.close();
  });
});
