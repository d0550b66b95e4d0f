/** The list of jobs, and what a device can say of where it stands. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

describe.skipIf(!CAN_BROWSE)('the list of jobs', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('says of each job its stage, place, smallest margin and what is next; it is searched', async () => {
    const { page, context, errors } = await stage.device();
    await openExample(page, 'House pool');
    await openExample(page, 'A survey half done');
    await page.goto('/');
    const rows = page.locator('.job-row');
    await expect.poll(() => rows.count()).toBe(2);
    const house = rows.filter({ hasText: 'Juniper Bend' });
    expect(await house.textContent()).toMatch(/Plan|Survey/);
    expect(await house.locator('.job-worst').textContent()).toMatch(/fails|tight|meets|unknown/);
    await page.getByRole('searchbox').fill('juniper');
    await expect.poll(() => rows.count()).toBe(1);
    await page.getByRole('searchbox').fill('no such place');
    await expect.poll(() => rows.count()).toBe(0);
    expect(await page.locator('.empty').textContent()).not.toBe('');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('copies a job, puts one away and takes it out, deletes one and brings it back', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto('/');
    const rows = page.locator('.job-row');
    const choose = async (row: number, name: string): Promise<void> => {
      await page.locator('.job-menu summary').nth(row).click();
      await page.locator('.job-menu[open]').getByRole('button', { name }).click();
    };
    await rows.first().waitFor();
    await choose(0, 'Copy');
    await expect.poll(() => rows.count()).toBe(2);
    const copied = await rows.evaluateAll((links) => links.map((link) => link.getAttribute('href')));
    expect(new Set(copied).size).toBe(2);
    expect(copied).toContain(job);
    await choose(0, 'Put away');
    await expect.poll(() => page.locator('.job-row:visible').count()).toBe(1);
    await page.locator('.put-away > summary').click();
    await expect.poll(() => page.locator('.job-row:visible').count()).toBe(2);
    await choose(1, 'Back to the list');
    await expect.poll(() => page.locator('.put-away').count()).toBe(0);
    await choose(0, 'Delete');
    await expect.poll(() => rows.count()).toBe(1);
    await page.reload();
    await expect.poll(() => rows.count()).toBe(1);
    await page.goto('/keeping');
    const back = page.getByRole('button', { name: 'Bring back' });
    await back.click();
    // It goes once the device has it.
    await expect.poll(() => back.count()).toBe(0);
    await page.goto('/');
    await expect.poll(() => rows.count()).toBe(2);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('takes altitude and nearest climate from the device where that is allowed, and says so where it is not', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/read/site/-/altitude`);
    await page.locator('.entry-here').click();
    await expect.poll(() => page.locator('.entry-here').textContent()).toContain('not');
    // Miami by any atlas: 25.8° N, 80.2° W.
    await context.grantPermissions(['geolocation']);
    await context.setGeolocation({ latitude: 25.8, longitude: -80.2, accuracy: 10 });
    await page.goto(`${job}/read/site/-/climatePlace`);
    const first = page.locator('.entry-choices button').first();
    expect(await first.textContent()).not.toContain('Miami');
    await page.locator('.entry-here').click();
    await expect.poll(() => first.textContent()).toMatch(/^Miami.* mi$/);
    await context.close();
  });
});
