/** What browsers do to stored work: the database deleted under the app, everything cleared, files damaged, writes refused. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, type Device, openExample, openStage, type Stage } from './harness.ts';

async function enter(page: Page, job: string, text: string): Promise<void> {
  await page.goto(`${job}/read/gasSupply/-/setPressure`);
  await page.getByRole('textbox').first().fill(text);
  await page.getByRole('button', { name: 'Next', exact: true }).click();
  await page.locator('.where-kept.saved').waitFor();
}

/** Away from the app, so that nothing holds what is taken from under it. */
async function clear({ context, page }: Device, url: string, files: boolean): Promise<void> {
  await page.goto('about:blank');
  const aside = await context.newPage();
  await aside.goto(`${url}/icon.svg`);
  await aside.evaluate(async (alsoFiles) => {
    await new Promise((resolve, reject) => {
      const request = indexedDB.deleteDatabase('firstfire');
      request.onsuccess = resolve;
      request.onerror = reject;
    });
    const root = await navigator.storage.getDirectory();
    if (alsoFiles) await root.removeEntry('second-copy', { recursive: true });
  }, files);
  await aside.close();
}

/** Characters in the second copy. */
function copied(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('second-copy', { create: true });
    let size = 0;
    for await (const handle of folder.values())
      if (handle.kind === 'file') size += (await (handle as FileSystemFileHandle).getFile()).size;
    return size;
  });
}

/** Until the server's cookie says that there is one job. */
async function isRemembered(page: Page): Promise<void> {
  const cookie = (): Promise<string> => page.evaluate(() => document.cookie);
  await expect.poll(cookie, { timeout: 10_000 }).toMatch(/firstfire-jobs=1\.\d+/);
}

describe.skipIf(!CAN_BROWSE)('work kept in a browser', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('comes back from the second copy when the database is deleted, with a notice', async () => {
    const device = await stage.device();
    const { page, context, errors } = device;
    const job = await openExample(page, 'House pool');
    await enter(page, job, '6.4 in w.c.');
    await expect.poll(() => copied(page)).toBeGreaterThan(100_000);
    await isRemembered(page);
    const size = await copied(page);
    await clear(device, stage.url, false);
    await page.goto('/');
    await page.getByText('came back from the second copy').waitFor();
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByText('6.4 in w.c.').first().waitFor();
    expect(await copied(page)).toBe(size);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('that is gone altogether is noticed by the cookie, and a file brings it back', async () => {
    const device = await stage.device();
    const { page, context, errors } = device;
    const job = await openExample(page, 'House pool');
    await enter(page, job, '6.4 in w.c.');
    await page.goto('/keeping');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Take everything out' }).click(),
    ]);
    const file = await download.path();
    await page.getByText('All work is in a file, too.').waitFor();
    await isRemembered(page);
    await clear(device, stage.url, true);
    await page.goto('/');
    await page.getByText('Jobs lost: 1').waitFor();
    await page.getByRole('link', { name: 'Bring a file in' }).click();
    await page.locator('input[type=file]').setInputFiles(file);
    await page.getByText('new entries: 563').waitFor();
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByText('6.4 in w.c.').first().waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is not touched by a damaged file, which says where it is wrong', async () => {
    const { page, context } = await stage.device();
    await openExample(page, 'A survey half done');
    await page.goto('/keeping');
    await page.locator('input[type=file]').setInputFiles([
      {
        name: 'torn.json',
        mimeType: 'application/json',
        buffer: Buffer.from('{"format":"firstfire-job",\n"ver'),
      },
      { name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') },
    ]);
    await page.getByText('torn.json was not brought in').waitFor();
    await page.getByText('Line 2').waitFor();
    await page.getByText('other.json was not brought in').waitFor();
    await page.goto('/');
    await page.locator('.job-row').first().waitFor();
    expect(await page.locator('.job-row').count()).toBe(1);
    await context.close();
  });

  it('stays in memory while the device refuses, is said and exported, and kept once it can be', async () => {
    const { page, context } = await stage.device();
    await page.addInitScript(() => {
      const put = IDBObjectStore.prototype.add;
      IDBObjectStore.prototype.add = function add(...given: Parameters<typeof put>) {
        if (Reflect.get(globalThis, 'refuse')) throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, given);
      };
    });
    const job = await openExample(page, 'House pool');
    await page.getByRole('link', { name: /Gas/ }).first().click();
    await page.evaluate(() => Reflect.set(globalThis, 'refuse', true));
    await page.getByRole('button', { name: /^The work is now/ }).click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Install/ })
      .click();
    await page.locator('.where-kept.refused').waitFor();
    await page.getByRole('link', { name: /Where the work is/ }).click();
    await page.getByText('The device is full').first().waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Take everything out' }).click(),
    ]);
    const stream = await download.createReadStream();
    let text = '';
    for await (const chunk of stream) text += String(chunk);
    expect(text).toContain('"value":"install"');
    await page.evaluate(() => Reflect.set(globalThis, 'refuse', false));
    await page.getByText('The device is full').first().waitFor({ state: 'detached' });
    await page.goto(job);
    await page.getByRole('button', { name: 'The work is now: Install' }).waitFor();
    await context.close();
  });
});
