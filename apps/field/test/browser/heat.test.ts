/** The heat page as a person uses it: the flag by keys and finger, sizes by tap, a shape drawn, the year, a bad file. */
import { AxeBuilder } from '@axe-core/playwright';
import { heat } from '@firstfire/engine';
import { catalog } from '@firstfire/reference';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { epwText } from '../../../cli/test/program/epw-text.ts';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';

/** Looking at every rule takes its time on a busy machine. */
const SLOW = 180_000;
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function axe(page: Page): Promise<string[]> {
  // Clear of the bars at head and foot, under which nothing can be pressed.
  await page.evaluate(() => document.querySelector('.heat-chart')?.scrollIntoView({ block: 'center' }));
  const { violations } = await new AxeBuilder({ page }).withTags(TAGS).analyze();
  return violations.map(({ id, nodes }) => `${id} ${nodes.map((node) => node.target.join(' ')).slice(0, 3)}`);
}

const wanted = (page: Page): Promise<string | null> => page.locator('.heat-warm .move-value').textContent();

/** A year of Miami as a file. */
function miami(): string {
  const place = catalog.climate.PLACES.find((one) => one.id === 'miami');
  const hours = place && heat.hourlyWeather(catalog.climate.normalsOf(place));
  if (!hours?.ok) throw new Error('no weather');
  return epwText('Town of Miami', hours.value);
}

describe.skipIf(!CAN_BROWSE)('the heat page', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it(
    'moves the flag by keys, steps and finger, each one edit that can be undone',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      const flag = page.getByRole('slider', { name: 'warm-up time wanted' });
      await flag.press('ArrowLeft');
      expect(await wanted(page)).toBe('wanted in 47 h');
      expect(await flag.getAttribute('aria-valuenow')).toBe('47');
      await page.getByRole('button', { name: 'Wanted later' }).click();
      expect(await wanted(page)).toBe('wanted in 48 h');
      const { x, y, width } = (await flag.boundingBox()) ?? { x: 0, y: 0, width: 0 };
      const middle = x + width / 2;
      await page.mouse.move(middle, y + 60);
      await page.mouse.down();
      await page.mouse.move(middle - 60, y + 60, { steps: 4 });
      await page.mouse.up();
      const moved = Number(/(\d+) h/.exec((await wanted(page)) ?? '')?.[1]);
      expect(moved).toBeGreaterThan(20);
      expect(moved).toBeLessThan(47);
      await page.getByRole('button', { name: 'Undo' }).click();
      expect(await wanted(page)).toBe('wanted in 48 h');
      await flag.press('Enter');
      await page.waitForURL('**/read/basins/pool/warmUpTime');
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'compares sizes, puts one in the plan, and works out the year anew',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      const year = page.locator('.heat-year .heat-line strong');
      const before = await year.textContent();
      expect(before).toMatch(/^\d+ therm a year$/);
      await page.getByRole('button', { name: '150 kBtu/h' }).click();
      await page.getByRole('button', { name: 'Put it in the plan' }).click();
      await page.locator('.heat-step.own', { hasText: '150 kBtu/h' }).waitFor();
      expect(await page.locator('.heat-warm .heat-line').textContent()).toContain('too late');

      await expect.poll(() => year.textContent(), { timeout: 30_000 }).not.toBe(before);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'draws a basin by its corners, with keys alone',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      await page.getByRole('radio', { name: 'polygon' }).check();
      await page.getByRole('button', { name: 'Draw it by its corners' }).press('Enter');
      const area = page.locator('.heat-shape > .heat-line span').last();
      const before = await area.textContent();
      const corner = page.locator('.heat-corner').nth(2);
      await corner.press('Shift+ArrowRight');
      await expect.poll(() => area.textContent()).not.toBe(before);
      expect(await page.evaluate(() => document.activeElement?.className)).toContain('heat-corner');
      await page.getByRole('button', { name: 'Put a corner after 1' }).press('Enter');
      expect(await page.locator('.heat-corner').count()).toBe(5);
      await page.getByRole('button', { name: 'Take corner 2 away' }).press('Enter');
      expect(await page.locator('.heat-corner').count()).toBe(4);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'says what is wrong with a weather file, line by line, and takes typed months',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      await page
        .locator('input[type=file]')
        .setInputFiles({ name: 'bad.epw', mimeType: 'text/plain', buffer: Buffer.from('LOCATION,x\nno\n') });
      const alert = page.getByRole('alert').filter({ hasText: 'bad.epw' });
      await alert.waitFor();
      expect(await alert.textContent()).toMatch(/line \d/);
      await page.getByText('Type monthly means').click();
      const may = page.getByRole('textbox', { name: 'Air, May' });
      await may.fill('warm');
      await page.getByRole('button', { name: 'Use these months' }).click();
      await page.locator('.heat-normals .notice').waitFor();
      expect(await may.inputValue()).toBe('warm');
      await may.fill('70');
      await page.getByRole('button', { name: 'Use these months' }).click();
      const typed = page.getByRole('radio', { name: 'months typed in: Denver, Colorado' });
      await expect.poll(() => typed.isChecked()).toBe(true);
      await page.reload();
      await page.getByText('The climate is that of the months typed in.').waitFor();
      expect(await typed.isChecked()).toBe(true);
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'rests design day, warm-up and year on a weather file, and sizes for its cold hours',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      const said = page.locator('.heat-losses');
      const warm = page.locator('.heat-warm .heat-line strong');
      const before = await warm.textContent();
      await page
        .locator('input[type=file]')
        .setInputFiles({ name: 'miami.epw', mimeType: 'text/plain', buffer: Buffer.from(miami()) });
      await page.getByText('The climate is that of the months of a weather file.').waitFor();
      expect(await said.textContent()).toContain('Town of Miami (miami.epw)');
      expect(await warm.textContent()).not.toBe(before);
      await page.getByText('A typical year of Town of Miami (miami.epw).').waitFor();
      const mild = await warm.textContent();
      await page.getByRole('button', { name: 'Size for that' }).click();
      await page.getByText('Air decided at').waitFor();
      expect(await warm.textContent()).not.toBe(mild);
      await page.reload();
      await page.getByText('Air decided at').waitFor();
      await page.getByText('A typical year of Town of Miami (miami.epw).').waitFor();
      await page.getByRole('radio', { name: 'Denver, Colorado' }).check();
      await page.getByText('The climate is that of the place on board.').waitFor();
      await page.getByRole('button', { name: 'Use it', exact: true }).click();
      await page.getByText('The climate is that of the months of a weather file.').waitFor();
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'moves the hours under the cover by keys, steps and finger, and compares fuel and cost with it and without',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      const hours = page.locator('.heat-cover .move-value');
      const cover = page.getByRole('slider', { name: 'hours covered a day' });
      const fuel = page.locator('.heat-compare tbody tr').last();
      const saved = async (): Promise<number> => Number(/(\d+)%/.exec((await fuel.textContent()) ?? '')?.[1]);
      await fuel.waitFor();
      expect(await page.locator('.heat-compare tbody tr').count()).toBe(3);
      const most = await saved();
      await cover.press('ArrowLeft');
      expect(await hours.textContent()).toBe('covered 13.5 h a day');
      expect(await cover.getAttribute('aria-valuenow')).toBe('13.5');
      await cover.press('Home');
      expect(await cover.getAttribute('aria-valuetext')).toContain('never on');
      await page.getByRole('button', { name: 'Covered for longer' }).click();
      expect(await hours.textContent()).toBe('covered 1 h a day');
      // One hour under it saves less than fourteen.
      await expect.poll(saved, { timeout: 30_000 }).toBeLessThan(most / 2);
      const { x, y, width, height } = (await cover.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
      await page.mouse.move(x + width / 2, y + height / 2);
      await page.mouse.down();
      await page.mouse.move(x + width / 2 + 150, y + height / 2, { steps: 5 });
      await page.mouse.up();
      expect(Number(await cover.getAttribute('aria-valuenow'))).toBeGreaterThan(8);
      await page.getByRole('button', { name: 'Undo' }).click();
      expect(await hours.textContent()).toBe('covered 1 h a day');
      await cover.press('Enter');
      await page.waitForURL('**/read/basins/pool/coverHours');
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it(
    'shows a spa at its own temperature beside the pool, each with its own warm-up',
    async () => {
      const { page, context, errors } = await stage.device();
      const job = await openExample(page, 'House pool');
      await page.goto(`${job}/heat`);
      // 82 °F and 102 °F are what the example sets.
      await page.getByRole('radio', { name: /Pool 82\.0 °F · \d+ h/ }).waitFor();
      await page.getByRole('radio', { name: /Spa 102 °F · \d+ min/ }).check();
      await page.locator('.heat-warm text', { hasText: '102 °F' }).waitFor();
      expect(await wanted(page)).toBe('wanted in 30 min');
      expect(errors).toEqual([]);
      await context.close();
    },
    SLOW,
  );

  it.each([
    ['a phone', 'House pool', PHONE, false],
    ['a narrow phone', 'Public pool', { width: 360, height: 740 }, true],
    ['a desk', 'A survey half done', DESK, true],
  ])(
    'on %s has nothing to complain of (%s)',
    async (_, example, viewport, dark) => {
      const { page, context } = await stage.device({ viewport, dark });
      const job = await openExample(page, example);
      await page.goto(`${job}/heat`);
      await page.locator('.heat-picture').waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      expect(await axe(page)).toEqual([]);
      await context.close();
    },
    SLOW,
  );
});
