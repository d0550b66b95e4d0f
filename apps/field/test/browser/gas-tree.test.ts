/** The gas tree of a house with much in it, drawn from nothing on a narrow phone: by tapping alone, and by keys alone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openStage, type Stage } from './harness.ts';

const NARROW = { width: 360, height: 740 };
const USUAL = ['Furnace', 'Water heater', 'Range', 'Dryer', 'Fireplace', 'Grill', 'Generator'];
const LONG = ['Outdoor kitchen with a grill and two side burners', 'Heater of the guest house in the yard'];

/** Presses a button by its name; a row by what it begins with. */
interface Hand {
  readonly press: (name: string) => Promise<void>;
  readonly row: (begins: RegExp, which?: 'first' | 'last') => Promise<void>;
  readonly name: (name: string) => Promise<void>;
}

function finger(page: Page): Hand {
  return {
    press: (name) => page.locator('.gas-panel').getByRole('button', { name, exact: true }).click(),
    row: (begins, which = 'first') => page.locator('.gas-row', { hasText: begins })[which]().click(),
    name: async (name) => {
      await page.getByLabel('Name', { exact: true }).fill(name);
      await page.keyboard.press('Enter');
    },
  };
}

function keys(page: Page): Hand {
  return {
    press: async (name) => {
      await page.locator('.gas-panel').getByRole('button', { name, exact: true }).focus();
      await page.keyboard.press('Enter');
    },
    row: async (begins, which = 'first') => {
      await page.locator('.gas-row', { hasText: begins })[which]().focus();
      await page.keyboard.press('Enter');
    },
    name: async (name) => {
      await page.getByLabel('Name', { exact: true }).focus();
      await page.keyboard.type(name);
      await page.keyboard.press('Enter');
    },
  };
}

/** A medium-pressure house: a regulator, a manifold with a pipe to each appliance, a regulator at the heater. */
async function drawHouse({ press, row, name }: Hand): Promise<void> {
  await row(/^Section/);
  await press('Regulator behind it');
  await press('Close');
  await row(/^Heater/);
  await press('A pipe of its own');
  await press('Close');
  for (const appliance of [...USUAL, ...LONG]) {
    await row(/^(Tee|Joint)/, 'last');
    await press('Appliance here');
    if (USUAL.includes(appliance)) await press(appliance);
    else await name(appliance);
    await press('Close');
  }
  await row(/^Section/, 'last');
  await press('Regulator ahead of it');
  await press('Close');
}

async function newJob(page: Page): Promise<void> {
  await page.goto('/new');
  await page.getByLabel('What is the job called?').fill('Drawn');
  await page.getByRole('button', { name: 'Begin a job' }).click();
  await page.waitForURL('**/jobs/**');
  const job = /\/jobs\/[^/]+/.exec(new URL(page.url()).pathname)?.[0] ?? '';
  await page.goto(`${job}/gas`);
  await page.locator('.gas-row').first().waitFor();
}

const rowsOf = (page: Page): Promise<string[]> => page.locator('.gas-row').allTextContents();

describe.skipIf(!CAN_BROWSE)('a large gas tree', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['tapping', finger],
    ['keys', keys],
  ])('is drawn by %s alone, with ten appliances, two regulators and a manifold', async (_, handOf) => {
    const { page, context, errors } = await stage.device({ viewport: NARROW });
    await newJob(page);
    await drawHouse(handOf(page));
    const rows = await rowsOf(page);
    expect(rows.filter((one) => one.startsWith('Regulator'))).toHaveLength(2);
    // The main, a pipe to each of nine appliances, and the heater's own.
    expect(rows.filter((one) => one.startsWith('Section'))).toHaveLength(11);
    for (const appliance of [...USUAL, ...LONG])
      expect(rows.filter((one) => one.startsWith(`${appliance} `))).toHaveLength(1);
    expect(rows.at(-1)).toMatch(/^Heater/);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.className)).toBe('gas-row');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('moves a branch with what hangs on it, deletes it, and takes both back in place', async () => {
    const { page, context, errors } = await stage.device({ viewport: NARROW });
    await newJob(page);
    await drawHouse(finger(page));
    const hand = finger(page);
    const before = await rowsOf(page);
    const undo = page.locator('.gas-panel').getByRole('button', { name: 'Undo' });
    // The section above the furnace.
    const at = before.findIndex((one) => one.startsWith('Furnace'));
    await page
      .locator('.gas-row')
      .nth(at - 1)
      .click();
    await page.getByLabel('Begins at', { exact: true }).selectOption({ label: 'Supply' });
    await expect.poll(async () => (await rowsOf(page)).findIndex((one) => one.startsWith('Furnace'))).toBe(2);
    await undo.click();
    await expect.poll(() => rowsOf(page)).toEqual(before);
    await hand.press('Remove with all behind it');
    await expect.poll(async () => (await rowsOf(page)).length).toBe(before.length - 2);
    await undo.click();
    await expect.poll(() => rowsOf(page)).toEqual(before);
    await hand.press('Close');
    await hand.row(/^Range/);
    await page.getByLabel('Hangs at', { exact: true }).selectOption({ label: 'Dryer' });
    await expect.poll(async () => (await rowsOf(page)).some((one) => /^Tee to .*Range/.test(one))).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
