/** One's own library of heaters and pumps, as a person fills it, uses it and loses nothing of it. */
import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

async function add(page: Page, kind: 'heater' | 'pump', name: string): Promise<void> {
  await page.goto('/equipment');
  await page.getByText(kind, { exact: true }).click();
  await page.getByLabel('What is it called?').fill(name);
  await page.getByRole('button', { name: 'Add to the equipment' }).click();
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** Into the field of a plate, by its name. */
async function type(page: Page, field: string, value: string): Promise<void> {
  await page.getByRole('link', { name: new RegExp(`^${field}`, 'i') }).click();
  await page.locator('main').getByRole('textbox').first().fill(value);
  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await page.getByRole('link', { name: 'Back' }).click();
}

async function csv(page: Page, text: string): Promise<void> {
  const buffer = Buffer.from(text);
  await page.locator('input[type=file]').setInputFiles({ name: 'mine.csv', mimeType: 'text/csv', buffer });
}

describe.skipIf(!CAN_BROWSE)('the equipment', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('is typed in from the list of jobs, found again after a reload, renamed, deleted and brought back', async () => {
    const { page, context, errors } = await stage.device();
    await page.goto('/');
    await page.getByRole('link', { name: 'Equipment' }).click();
    await page.getByText('Nothing is kept yet.').waitFor();
    await add(page, 'heater', 'Garage heater');
    await type(page, 'Rated input', '400 kBtu/h');
    expect(await page.locator('.plate-frame').textContent()).toContain('400 kBtu/h');
    await add(page, 'pump', 'Big pump');
    await page.goto('/equipment');
    await page.getByRole('searchbox').fill('garage');
    expect(await page.locator('.equipment-row').allInnerTexts()).toEqual([
      expect.stringMatching(/^Garage heater\s+400 kBtu\/h · readings: 1$/),
    ]);
    await page.locator('.equipment-row').click();
    await page.getByRole('link', { name: 'Rename' }).click();
    await page.locator('main').getByRole('textbox').fill('Yard heater');
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Yard heater' }).waitFor();
    await page.getByRole('button', { name: 'Remove Yard heater from the equipment' }).click();
    await page.getByText('“Yard heater” is deleted.').waitFor();
    expect(await page.locator('.equipment-row').count()).toBe(1);
    await page.locator('.bring-back').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.equipment-row').count()).toBe(2);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is copied into a job, which stays as it was until then', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'A survey half done');
    await add(page, 'heater', 'Spare');
    await type(page, 'Rated input', '250 kBtu/h');
    await page.getByLabel('Job').selectOption({ index: 1 });
    await page
      .getByRole('button', { name: /^Put its readings on/ })
      .first()
      .click();
    await page.getByRole('link', { name: 'Done: look at it in the job' }).click();
    await page.waitForURL(`**${job}/plate/heaters/*`);
    expect(await page.locator('.plate-frame').textContent()).toContain('250 kBtu/h');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.plate-frame').textContent()).not.toContain('250 kBtu/h');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('goes out as a table and comes back; a table with mistakes changes nothing and has each named', async () => {
    const { page, context, errors } = await stage.device();
    await add(page, 'heater', 'Gîte, nº 2');
    await type(page, 'Rated input', '400 kBtu/h');
    await page.goto('/equipment');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ]);
    const table = readFileSync(await file.path(), 'utf8');
    expect(table).toContain('heaters,"Gîte, nº 2"');
    await csv(page, 'kind,name,input\nheaters,One,much\nboilers,Two,\nheaters,,3 kW\n');
    await page.getByText('Nothing was read. To put right: 3.').waitFor();
    const faults = await page.locator('.equipment-csv li').allInnerTexts();
    expect(faults[0]).toMatch(/^Row 2, input: .*much/);
    expect(faults[1]).toMatch(/^Row 3: “boilers” is no kind\. Kinds are heaters, pumps\./);
    expect(faults[2]).toMatch(/^Row 4 has no name\./);
    expect(await page.locator('.equipment-row').count()).toBe(1);
    await csv(page, `${table}pumps,Small pump\n`);
    await page.getByText('Read: 2.').waitFor();
    expect(await page.locator('.equipment-row strong').allInnerTexts()).toEqual(['Gîte, nº 2', 'Small pump']);
    // As an old spreadsheet writes it, one byte a letter.
    const old = Buffer.from('kind;name\nheaters;D\xe9p\xf4t\n', 'latin1');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'o.csv', mimeType: 'text/csv', buffer: old });
    await page.getByText('Read: 1.').waitFor();
    expect(await page.locator('.equipment-row strong').allInnerTexts()).toContain('Dépôt');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('breaks no rule that axe knows: list, plate and entry, daylight and dark', async () => {
    const found: string[] = [];
    for (const dark of [false, true]) {
      const { page, context } = await stage.device({ dark });
      await openExample(page, 'A survey half done');
      await add(page, 'heater', 'Garage heater');
      await type(page, 'Rated input', '400 kBtu/h');
      const item = page.url();
      for (const address of ['/equipment', item, `${item}/input`, `${item}/fuel`, `${item}/name`]) {
        await page.goto(address);
        await page.locator('main').waitFor();
        const { violations } = await new AxeBuilder({ page }).setLegacyMode().analyze();
        found.push(...violations.map(({ id, nodes }) => `${address}: ${id} ${nodes[0]?.target.join(' ')}`));
      }
      await context.close();
    }
    expect(found).toEqual([]);
  }, 120_000);
});
