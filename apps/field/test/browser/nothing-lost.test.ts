/** What can go wrong with a phone: a database that is cleared, a new version in the middle of work, a file that is damaged. */
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

const BUILT = process.env['FIRSTFIRE_APP'] ?? fileURLToPath(new URL('../../dist', import.meta.url));

describe.skipIf(!CAN_BROWSE)('nothing is lost', () => {
  let stage: Stage;
  let folder = '';
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'firstfire-'));
    cpSync(BUILT, folder, { recursive: true });
    stage = await openStage(folder);
  });
  afterAll(async () => {
    await stage.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it('when the database is deleted: the work comes back from the second copy, or its loss is said', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'House pool');
    await enter(page, job, '6.4 in w.c.');
    await expect
      .poll(() => page.evaluate('document.cookie'), { timeout: 10_000 })
      .toContain('firstfire-jobs');
    await clear(page, 'database');
    await page.goto('/');
    await page.getByText(/came back from the second copy/).waitFor();
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByText('was 6.4 in w.c.').waitFor();

    await clear(page, 'database and copy');
    await page.goto('/');
    await page
      .getByRole('alert')
      .getByText(/has cleared what was kept here\. Jobs lost: 1/)
      .waitFor();
    expect(await page.locator('.job-row').count()).toBe(0);
    await context.close();
  });

  it('when a new version is offered and taken: what is typed and not entered stays', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    const field = page.getByRole('textbox', { name: 'Delivery pressure, flowing' });
    await field.fill('5.9 in w.c.');
    appendFileSync(join(folder, 'sw.js'), '\n// a newer one\n');
    await page.evaluate(
      'navigator.serviceWorker.getRegistration().then((it) => it.update()).then(() => true)',
    );
    await page.getByText('A new version is ready').waitFor();
    expect(await field.inputValue()).toBe('5.9 in w.c.');
    const reloaded = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Use it now' }).click();
    await reloaded;
    await field.waitFor();
    expect(await field.inputValue()).toBe('5.9 in w.c.');
    await page.getByText('A new version is ready').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByText('was 5.9 in w.c.').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  it('by a damaged file; and a whole one gives another device the same job', async () => {
    const one = await stage.device();
    const job = await openExample(one.page, 'House pool');
    await enter(one.page, job, '6.4 in w.c.');
    const file = await exported(one.page);
    const other = await stage.device();
    await bringIn(other.page, damaged(file));
    await other.page.getByText(/was not brought in, and nothing has changed\. Line 3, column \d+:/).waitFor();
    await other.page.goto('/');
    await other.page.getByText('No job yet').waitFor();
    await bringIn(other.page, file);
    await other.page.getByText(/joined\. Jobs in the file: 1/).waitFor();
    await other.page.goto(`${job}/read/gasSupply/-/setPressure`);
    await other.page.getByText('was 6.4 in w.c.').waitFor();
    await one.page.goto(job);
    await other.page.goto(job);
    expect(await other.page.locator('.columns').textContent()).toBe(
      await one.page.locator('.columns').textContent(),
    );
    expect(JSON.parse(await exported(other.page))).toEqual(JSON.parse(file));
    await one.context.close();
    await other.context.close();
  });
});

async function enter(page: Page, job: string, typed: string): Promise<void> {
  await page.goto(`${job}/read/gasSupply/-/setPressure`);
  await page.getByRole('textbox').first().fill(typed);
  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await page.waitForURL((url) => !url.pathname.endsWith('/gasSupply/-/setPressure'));
  await page.locator('.job-header [role=status]', { hasText: /kept/ }).waitFor();
}

/** From a page of the same origin that does not run the app, so that nothing holds the database open. */
async function clear(page: Page, what: 'database' | 'database and copy'): Promise<void> {
  await page.goto('/icon.svg');
  await page.evaluate(async (both) => {
    for (const { name = '' } of await indexedDB.databases())
      await new Promise((done) => {
        indexedDB.deleteDatabase(name).onsuccess = done;
      });
    const root = await navigator.storage.getDirectory();
    if (both) for await (const name of root.keys()) await root.removeEntry(name, { recursive: true });
  }, what === 'database and copy');
}

async function exported(page: Page): Promise<string> {
  await page.goto('/keeping');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take everything out as a file' }).click();
  return readFileSync(await (await coming).path(), 'utf8');
}

async function bringIn(page: Page, text: string): Promise<void> {
  await page.goto('/keeping');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** A mark of JSON gone from the third line. */
function damaged(file: string): string {
  return file
    .split('\n')
    .map((line, i) => (i === 2 ? line.replace(':', ' ') : line))
    .join('\n');
}
