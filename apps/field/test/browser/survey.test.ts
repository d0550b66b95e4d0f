/** A job surveyed as a person would, only by tapping and typing, every press and every value counted. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerTo } from './answers.ts';
import { CAN_BROWSE, openStage, type Stage } from './harness.ts';
import { Person } from './person.ts';

/** More than a survey has: a walk that never ends fails. */
const MOST = 260;

/** What a person reads off each plate for gas and water. */
const PLATES = {
  'Old heater': ['input'],
  'New heater': ['input', 'inletLeast', 'inletGreatest', 'pressureGreatest', 'flowLeast', 'flowGreatest'],
};

/** What the code's sizing of the pipe stands on, besides the plate. */
const FIVE = [
  'gasSupply/-/setPressure',
  'gasSupply/-/existingLoad',
  'gasSegments/s1/material',
  'gasSegments/s1/size',
  'gasSegments/s1/length',
];

/** What the flow through the heater stands on, besides the plate. */
const WATER = [
  'heaters/h1/heightAbovePool',
  'heaters/h1/loss',
  'pumps/p1/curve',
  'pumps/p1/speedFull',
  'pumpSpeeds/v1/speed',
  'filters/f1/cleanFlow',
  'filters/f1/cleanLoss',
  'waterLoop/-/bypass',
  'waterLoop/-/pumpAbovePool',
  'waterRuns/return/length',
  'waterRuns/return/material',
  'waterRuns/return/size',
  'waterRuns/suction/length',
  'waterRuns/suction/material',
  'waterRuns/suction/size',
];

function said({ entries, taps, count }: Person): string {
  return `${entries} entries and ${taps} taps, ${count} in all,`;
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

  it('of a new site, from blank until all six columns are known', async () => {
    const { page, context, errors } = await stage.device();
    const person = new Person(page);
    await page.goto('/');
    await person.tap(person.link('New job'));
    await person.type(page.getByLabel('What is the job called?'), 'Harrow Lane');
    await person.tap(person.button('Begin a job'));
    await person.tap(person.link('Begin the walk'));
    await page.waitForURL('**/read/**');
    const asked: string[] = [];
    for (let path = person.reading(); path !== undefined && asked.length < MOST; path = person.reading()) {
      asked.push(path);
      await person.answer(answerTo(path));
    }
    const { taps, entries } = person;
    process.stdout.write(`survey: ${asked.length} readings, ${entries} entries, ${taps} taps\n`);
    await page.waitForURL(/\/jobs\/[^/]+$/);
    expect(await page.locator('.columns .column').count()).toBe(6);
    expect(await page.locator('.columns .hatch').count()).toBe(0);
    expect(new Set(asked).size).toBe(asked.length);
    expect(errors).toEqual([]);
    await context.close();
  }, 180_000);

  // The flow of water takes the pump's curve and the heater's, so that it cannot be had from five readings.
  it('of a swap: both plates and five readings judge the gas pipe in under 40 entries and taps; fifteen more, two of them curves, the flow of water', async () => {
    const { page, context, errors } = await stage.device();
    const person = new Person(page);
    await page.goto('/');
    await person.tap(person.link('New job'));
    await person.tap(person.button('Swap'));
    await person.type(page.getByLabel('What is the job called?'), 'Harrow Lane');
    await person.tap(person.button('Begin a job'));
    await page.waitForURL('**/walk');
    const job = page.url().replace(/\/walk$/, '');
    for (const [plate, fields] of Object.entries(PLATES)) {
      await person.tap(person.link(plate));
      const [first = ''] = fields;
      await person.tap(page.locator(`.plate-cell[href$="/${first}"]`));
      await page.waitForURL('**/read/**');
      for (const field of fields) {
        await person.passTo(field);
        await person.answer(answerTo(person.reading() ?? ''));
      }
      await person.tap(person.link('Back'));
      await person.tap(person.link('Back'));
      await page.waitForURL('**/walk');
    }
    await person.tap(page.getByRole('link', { name: /^The old gas pipe/ }));
    for (const path of FIVE) {
      await page.waitForURL(`**/read/${path}`);
      await person.answer(answerTo(path));
    }
    await page.waitForURL('**/walk');
    const [forGas, presses] = [said(person), person.count];
    const gas = await verdictOf(page, job, 'gas.section-capacity@s1');
    await person.answerAll(WATER, answerTo);
    const water = await verdictOf(page, job, 'water.heater-flow@h1 v1 clean');
    process.stdout.write(`swap: ${forGas} for the gas pipe; ${said(person)} with the flow of water\n`);
    expect([gas, water]).toEqual(['meets', 'meets']);
    expect(presses).toBeLessThan(40);
    expect(errors).toEqual([]);
    await context.close();
  }, 60_000);
});
