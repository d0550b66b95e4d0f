/** Ways of working: by keyboard alone, and in either system of units. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, type Stage } from './harness.ts';

const MOST_TABS = 60;

describe.skipIf(!CAN_BROWSE)('the app is used', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('by keyboard alone: a new job, a reading entered and taken back', async () => {
    const { page, context, errors } = await stage.device({ viewport: DESK });
    await page.goto('/');
    await press(page, page.getByRole('link', { name: 'New job' }));
    await reach(page, page.getByLabel('What is the job called?'));
    await page.keyboard.type('Alder Court');
    await page.keyboard.press('Enter');
    await press(page, page.getByRole('link', { name: 'Begin the walk' }));
    await page.waitForURL('**/read/basins/pool/setTemperature');
    await page.getByRole('textbox', { name: 'Water temperature wanted' }).waitFor();
    await page.keyboard.type('84');
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => !url.pathname.endsWith('setTemperature'));
    const entered = page.url();
    await press(page, page.getByRole('button', { name: 'Undo' }), 'Shift+Tab');
    await page.getByRole('button', { name: 'Redo' }).waitFor();
    expect(page.url()).toBe(entered);
    await press(page, page.getByRole('link', { name: 'Back' }), 'Shift+Tab');
    await page.goto(`${entered.replace(/\/read\/.*/, '')}/heat`);
    // Asked for again.
    await expectReading(page, 'Water temperature wanted', 'Enter');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('in both systems of units: what was entered in psi is judged and shown in kPa', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/read/heaters/h1/pressureGreatest`);
    await page.getByRole('textbox').first().fill('60 psi');
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.locator('.job-header [role=status]', { hasText: /kept/ }).waitFor();
    await page.goto(`${job}/water`);
    const outcome = page.locator('[id="water.heater-pressure@h1"] .outcome');
    expect(await outcome.textContent()).toContain('60.0 psi');
    await page.evaluate(`localStorage.setItem('firstfire-settings', '{"system":"si"}')`);
    await page.reload();
    // 1 psi = 6.894757 kPa: NIST Special Publication 811, Appendix B.8.
    expect(await outcome.textContent()).toContain('414 kPa');
    await expectReading(page, 'Greatest water pressure', '60 psi');
    await context.close();
  });
});

async function reach(page: Page, target: Locator, key = 'Tab'): Promise<void> {
  await target.waitFor();
  for (let pressed = 0; pressed < MOST_TABS; pressed += 1) {
    if (await target.evaluate((one) => one === document.activeElement)) return;
    await page.keyboard.press(key);
  }
  throw new Error('the keyboard does not reach it');
}

async function press(page: Page, target: Locator, key = 'Tab'): Promise<void> {
  await reach(page, target, key);
  await page.keyboard.press('Enter');
}

async function expectReading(page: Page, name: string, value: string): Promise<void> {
  const row = page.locator('.reading', { hasText: name }).first();
  await row.waitFor();
  expect(await row.locator('.value').textContent()).toBe(value);
}
