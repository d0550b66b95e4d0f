/** The sheet of stages, the questions of a station, and what is left before leaving. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

const HALF_DONE = 'A survey half done';

describe.skipIf(!CAN_BROWSE)('a job', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('has its stage set from a sheet, by keyboard too, and gives the focus back', async () => {
    const { page, context, errors } = await stage.device();
    await openExample(page, HALF_DONE);
    const button = page.getByRole('button', { name: /^The work is now/ });
    await button.focus();
    await page.keyboard.press('Enter');
    const sheet = page.getByRole('dialog', { name: 'What the work is now' });
    await sheet.getByRole('button', { name: /^Survey.*readings first.*later/ }).waitFor();
    await sheet.getByRole('button', { name: /^Plan \d+ fail, \d+ not known/ }).waitFor();
    expect(await sheet.getByText('not in the app yet').count()).toBe(3);
    const found = await new AxeBuilder({ page }).include('dialog').analyze();
    expect(found.violations).toEqual([]);
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'hidden' });
    expect(await isFocused(page, /^The work is now/)).toBe(true);
    await page.keyboard.press('Enter');
    await sheet.getByRole('button', { name: /^Install/ }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'The work is now: Install' }).waitFor();
    expect(await isFocused(page, /Install/)).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('leads from the sheet to its history, what was written last on top', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, HALF_DONE);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByRole('textbox').first().fill('7 in w.c.');
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.getByRole('button', { name: /^The work is now/ }).click();
    await page.getByRole('dialog').getByRole('link', { name: 'History' }).click();
    await page.waitForURL('**/history');
    const first = await page.locator('main .reading').first().textContent();
    expect(first).toMatch(/pressure.*7 in w\.c\./);
    await context.close();
  });

  it('has the questions of a station answered by a tap each, taken back by undo, and passed over', async () => {
    const { page, context, errors } = await stage.device();
    await openExample(page, HALF_DONE);
    await page.goto(`${page.url()}/questions/pad`);
    const rows = page.locator('.quick-row');
    await rows.first().waitFor();
    const left = page.locator('main [role=status]');
    const before = Number.parseInt((await left.textContent()) ?? '', 10);
    const key = rows.first().locator('.quick-key').first();
    await key.click();
    expect(await key.getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await key.getAttribute('aria-pressed')).toBe('false');
    expect(Number.parseInt((await left.textContent()) ?? '', 10)).toBe(before);
    await rows.first().getByRole('button', { name: 'Can’t tell' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'No access' }).click();
    await rows.first().getByRole('button', { name: 'No access', pressed: true }).waitFor();
    expect(Number.parseInt((await left.textContent()) ?? '', 10)).toBe(before - 1);
    await rows
      .nth(1)
      .getByRole('button', { name: /^Where do I find this/ })
      .click();
    await page.getByRole('dialog').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  it('has a plate entered in one go: what is not understood stays, through a reload too', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, HALF_DONE);
    const [, id = ''] = /plate\/heaters\/([^/"]+)/.exec(await page.locator('main').innerHTML()) ?? [];
    await page.goto(`${job}/plate/heaters/${id}/all`);
    const field = page.locator(`li[id="heaters/${id}/volts"]`).getByRole('textbox');
    await field.fill('240 bananas');
    await field.press('Enter');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await page.reload();
    expect(await field.inputValue()).toBe('240 bananas');
    await field.fill('240');
    await field.press('Enter');
    await page.goto(`${job}/read/heaters/${id}/volts`);
    await page.getByText('240 V, nameplate').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  it('lists in two taps what can only be got on the site, and each row leads to its reading', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, HALF_DONE);
    await page.goto(`${job}/read/gasSupply/-/lockUpPressure`);
    await page.getByRole('button', { name: 'Can’t get it' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'No access' }).click();
    await page.waitForURL((url) => !url.pathname.endsWith('lockUpPressure'));
    await page.goto(job);
    await page.getByRole('button', { name: /^The work is now/ }).click();
    await page.getByRole('dialog').getByRole('link', { name: 'Before you leave' }).click();
    await page.waitForURL('**/leaving');
    await page.getByRole('heading', { name: 'Plates without a photo' }).waitFor();
    expect(await page.getByRole('heading', { name: 'Anywhere' }).count()).toBe(0);
    const skipped = page.getByRole('region', { name: 'Could not be got' }).getByRole('link');
    expect(await skipped.textContent()).toContain('No access');
    await skipped.click();
    await page.waitForURL('**/read/gasSupply/-/lockUpPressure');
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function isFocused(page: Page, name: RegExp): Promise<boolean> {
  const label = await page.evaluate(
    `document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? ''`,
  );
  return name.test(String(label));
}
