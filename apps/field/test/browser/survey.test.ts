/** A job surveyed as a person would, only by tapping and typing, every press and every value counted. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerTo } from './answers.ts';
import { CAN_BROWSE, DESK, openStage, PHONE, type Stage } from './harness.ts';
import { Person } from './person.ts';

/** More than a survey has: a walk that never ends fails. */
const MOST = 260;

/** What a person reads off each plate for gas and water. */
const PLATES = {
  'Old heater': ['heaters/old/input'],
  'New heater': [
    'heaters/h1/input',
    'heaters/h1/inletLeast',
    'heaters/h1/inletGreatest',
    'heaters/h1/pressureGreatest',
    'heaters/h1/flowLeast',
    'heaters/h1/flowGreatest',
  ],
};

/** What the code's sizing of the pipe and the flow stand on, besides the plate. */
const SIX = [
  'gasSupply/-/setPressure',
  'gasSupply/-/existingLoad',
  'gasSegments/s1/material',
  'gasSegments/s1/size',
  'gasSegments/s1/length',
  'waterLoop/-/flowFound',
];

function said({ entries, taps, count }: Person): string {
  return `${entries} entries and ${taps} taps, ${count} in all`;
}

/** What the job says of a finding, by the words under its figure. */
async function verdictOf(page: Page, job: string, finding: string): Promise<string> {
  const [line = ''] = finding.split('.');
  await page.goto(`${job}/${line}`);
  return ((await page.locator(`[id="${finding}"] .finding-figure .second`).textContent()) ?? '').trim();
}

describe.skipIf(!CAN_BROWSE)('a survey', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['phone', PHONE],
    ['desk', DESK],
  ])(
    'of a new site on a %s, from blank until all six columns are known',
    async (_, viewport) => {
      const { page, context, errors } = await stage.device({ viewport });
      const person = new Person(page);
      await page.goto('/');
      await person.tap(person.link('New job'));
      await person.type(page.getByLabel('What is the job called?'), 'Harrow Lane');
      await person.tap(person.button('Begin a job'));
      await person.tap(person.link('Begin the walk'));
      await page.waitForURL('**/read/**');
      const asked = await person.walk(answerTo, MOST);
      await page.waitForURL('**/walk');
      const first = `${asked.length} readings, ${said(person)}`;
      const open = page.locator('.columns .figure').filter({ hasText: /^\?/ });
      expect(await open.count()).toBe(0);
      const ways = page.locator('.stop-ways a');
      while ((await ways.count()) > 0 && asked.length < MOST) {
        await person.tap(ways.first());
        await page.waitForURL((url) => !url.pathname.endsWith('/walk'));
        asked.push(...(await person.walk(answerTo, MOST)), ...(await person.questions(answerTo)));
        await page.waitForURL('**/walk');
      }
      process.stdout.write(`survey: first round ${first}; both ${asked.length} readings, ${said(person)}\n`);
      await page.getByText('Nothing is missing').waitFor();
      await person.tap(person.link('Back'));
      await page.waitForURL(/\/jobs\/[^/]+$/);
      expect(await page.locator('.columns .column').count()).toBe(6);
      expect(await page.locator('.columns .hatch').count()).toBe(0);
      expect(new Set(asked).size).toBe(asked.length);
      expect(errors).toEqual([]);
      await context.close();
    },
    180_000,
  );

  it.each([
    ['phone', PHONE],
    ['desk', DESK],
  ])(
    'of a swap on a %s: both plates, with a photo each, and six readings judge gas pipe and flow of water in under 40 entries and taps',
    async (_, viewport) => {
      const { page, context, errors } = await stage.device({ viewport });
      const person = new Person(page);
      await page.goto('/');
      await person.tap(person.link('New job'));
      await person.tap(person.button('Swap'));
      await person.type(page.getByLabel('What is the job called?'), 'Harrow Lane');
      await person.tap(person.button('Begin a job'));
      await page.waitForURL('**/walk');
      const job = page.url().replace(/\/walk$/, '');
      for (const [plate, paths] of Object.entries(PLATES)) {
        await person.tap(person.link(plate));
        await page.waitForURL('**/all');
        await person.photograph();
        for (const path of paths) expect(await person.answerRow(path, answerTo(path))).toBe(true);
        await person.tap(page.locator('.walk-start'));
        await page.waitForURL('**/walk');
      }
      await person.tap(page.getByRole('link', { name: /^The old pipes/ }));
      for (const path of SIX) {
        await page.waitForURL(`**/read/${path}`);
        await person.answer(answerTo(path));
      }
      await page.waitForURL('**/walk');
      process.stdout.write(`swap: ${said(person)} for gas and water, photos included\n`);
      expect(await verdictOf(page, job, 'gas.section-capacity@s1')).toBe('meets');
      expect(await verdictOf(page, job, 'water.heater-flow@h1 v1 clean')).toBe('meets');
      const flow = page.locator('[id="water.heater-flow@h1 v1 clean"]');
      await flow.getByText('Rests on an assumption').waitFor();
      await flow.getByRole('link', { name: 'new heater’s flow over the old one’s' }).waitFor();
      expect(person.count).toBeLessThan(40);
      expect(errors).toEqual([]);
      await context.close();
    },
    60_000,
  );
});
