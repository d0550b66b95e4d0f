/** Entering a reading as a person does: with the pad alone, with a keyboard alone, with a camera, and what cannot be got. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, PHONE, type Stage } from './harness.ts';
import { photoWithPlace } from './photo.ts';

const SMALL = { width: 360, height: 640 };
const EXAMPLE = 'House pool';

/** What was entered is on the device: a page loaded anew shows it. */
async function stored(page: Page): Promise<void> {
  await page.locator('.where-kept.saving').waitFor({ state: 'detached' });
}

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.locator('.pad').getByRole('button', { name: key, exact: true }).click();
}

/** What cannot be seen without scrolling, and keys too small for a finger. */
function outOfReach(): string[] {
  const keys = [...document.querySelectorAll('.pad button, .entry-how button')];
  const wrong = keys.flatMap((key) => {
    const { bottom, right, height, width } = key.getBoundingClientRect();
    const inside = bottom <= innerHeight + 0.5 && right <= innerWidth + 0.5;
    return inside && height >= 44 && width >= 44
      ? []
      : [`${key.textContent} ${width}×${height} to ${bottom}`];
  });
  return document.documentElement.scrollHeight > innerHeight ? [...wrong, 'the page scrolls'] : wrong;
}

/** The bytes of every photo the device holds, as text. */
async function photosOnDevice(): Promise<string[]> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const asked = indexedDB.open('firstfire');
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
  });
  const blobs = await new Promise<Blob[]>((resolve, reject) => {
    const asked = database.transaction('photos').objectStore('photos').getAll();
    asked.onsuccess = () => resolve(asked.result as Blob[]);
    asked.onerror = () => reject(asked.error);
  });
  database.close();
  return Promise.all(blobs.map((blob) => blob.text()));
}

describe.skipIf(!CAN_BROWSE)('a reading', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each([
    ['a phone', PHONE, 'gasSegments/s3/length'],
    ['a phone', PHONE, 'gasSupply/-/setPressure'],
    ['a small phone', SMALL, 'gasSegments/s3/length'],
    ['a small phone', SMALL, 'heaters/h1/heightAbovePool'],
  ])('on %s has every key in reach (%o, %s)', async (_, viewport, path) => {
    const { page, context, errors } = await stage.device({ viewport });
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/${path}`);
    await press(page, '2', '7');
    expect(await page.evaluate(outOfReach)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is entered by the pad: 27 ft 9-1/2, kept as it was typed', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSegments/s3/length`);
    await press(page, '2', '7', 'ft', '9', '1/2');
    expect(await page.getByRole('textbox').inputValue()).toBe('27 ft 9-1/2');
    expect(await page.locator('.entry-read').textContent()).toContain('read as 27 ft 9-1/2 in');
    expect(await page.locator('.entry-changed').textContent()).toMatch(/^Gas was .*, now .*: still fails/);
    await press(page, 'Next');
    await page.goto(`${job}/read/gasSegments/s3/length`);
    expect(await page.locator('.entry-read').textContent()).toContain('was 27 ft 9-1/2, measured');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is entered by the keyboard alone on a desk; odd is asked about and never blocked', async () => {
    const { page, context, errors } = await stage.device({ viewport: DESK });
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByRole('textbox').waitFor();
    await page.keyboard.type('70');
    await page.getByRole('button', { name: 'Meant 7.0 in w.c.?' }).waitFor();
    expect(await page.locator('.entry-read').textContent()).toContain('That is 2.5 psi.');
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => !url.pathname.endsWith('setPressure'));
    await stored(page);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    expect(await page.locator('.entry-read').textContent()).toContain('was 70 in w.c., measured');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('is not lost when the tab goes before the device has it', async () => {
    const { page, context } = await stage.device();
    // The device takes its time: no transaction that writes ever ends in this tab.
    await page.addInitScript(() => {
      const add = IDBObjectStore.prototype.add;
      IDBObjectStore.prototype.add = function hold(...given: Parameters<typeof add>) {
        if (sessionStorage.getItem('hold') === null) return add.apply(this, given);
        const again = (): void => this.get('').addEventListener('success', again);
        again();
        return add.apply(this, given);
      };
    });
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByRole('textbox').fill('6.6');
    await page.evaluate(() => sessionStorage.setItem('hold', 'yes'));
    await press(page, 'Next');
    await page.close();
    const next = await context.newPage();
    await next.goto(`${job}/read/gasSupply/-/setPressure`);
    await next.locator('.entry-read').getByText('was 6.6 in w.c.').waitFor();
    await context.close();
  });

  it('that is not understood stays, and is still there after the page is loaded anew', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSegments/s3/length`);
    await page.getByRole('textbox').fill('18 xx');
    await press(page, 'Next');
    expect(await page.locator('.entry-mirror mark').textContent()).toBe('xx');
    await page.reload();
    expect(await page.getByRole('textbox').inputValue()).toBe('18 xx');
    await page.getByRole('button', { name: 'Keep it as typed' }).click();
    await page.waitForURL((url) => !url.pathname.endsWith('s3/length'));
    await page.goto(`${job}/read/gasSegments/s3/length`);
    expect(await page.locator('.entry-read').textContent()).toContain('was 18 xx');
    await context.close();
  });

  it('that can be read both ways is asked about, and what the reader’s own format writes is not', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSegments/s3/length`);
    await page.getByRole('textbox').fill('1,234 m');
    expect(await page.locator('.entry-read').textContent()).toContain('read as 1,234 m');
    await page.evaluate(() => localStorage.setItem('firstfire-settings', '{"locale":"es-ES"}'));
    await page.reload();
    await page.getByRole('textbox').fill('1.234 m');
    await page.getByRole('button', { name: '1,234 m', exact: true }).click();
    expect(await page.getByRole('textbox').inputValue()).toBe('1,234 m');
    await context.close();
  });

  it('may have a photo, which loses its place, is opened large and deleted', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    const buffer = await photoWithPlace(page);
    expect(buffer.includes('GPS')).toBe(true);
    await page.locator('input[type=file]').setInputFiles({ name: 'p.jpg', mimeType: 'image/jpeg', buffer });
    const small = page.locator('.entry-how-button img');
    await small.waitFor();
    const size = await small.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]);
    expect(size).toEqual([1600, 800]);
    const kept = await page.evaluate(photosOnDevice);
    expect(kept).toHaveLength(1);
    expect(kept[0]).toContain('JFIF');
    expect(kept[0]).not.toContain('GPS');
    await page.reload();
    await small.waitFor();
    await page.locator('.entry-how-button.photo').click();
    await page.getByRole('button', { name: 'Delete this photo' }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    await page.locator('.entry-how-button img').waitFor({ state: 'detached' });
    expect(errors).toEqual([]);
    await context.close();
  });

  it('that cannot be got is not asked for again, until somebody asks', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'survey half done');
    await page.goto(`${job}/walk`);
    await page.getByRole('link', { name: 'Begin the walk' }).click();
    const first = new URL(page.url()).pathname;
    await page.getByRole('button', { name: 'Can’t get it' }).click();
    await page.getByRole('button', { name: 'No access' }).click();
    await page.waitForURL((url) => url.pathname !== first);
    await page.goto(`${job}/walk`);
    await page.getByRole('link', { name: 'Begin the walk' }).click();
    expect(new URL(page.url()).pathname).not.toBe(first);
    await page.goto(first);
    await page.getByRole('button', { name: 'ask again' }).click();
    await page.goto(`${job}/walk`);
    await page.getByRole('link', { name: 'Begin the walk' }).click();
    expect(new URL(page.url()).pathname).toBe(first);
    await context.close();
  });
});

describe.skipIf(!CAN_BROWSE)('a nameplate', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('is read field by field and kept for the next job; a bad table takes nothing', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, EXAMPLE);
    await page.goto(`${job}/plate/heaters/h1`);
    await page.getByRole('link', { name: /least input/i }).click();
    await press(page, '1', '0', '0', 'Next');
    await page.goto(`${job}/plate/heaters/h1`);
    expect(await page.getByRole('link', { name: /least input/i }).textContent()).toContain('100 kBtu/h');
    await page.getByRole('button', { name: /Keep as equipment/ }).click();
    await page.getByText('Kept: Heater.').waitFor();
    await page.goto('/equipment');
    const table = (text: string) =>
      page
        .locator('.equipment-csv input')
        .setInputFiles({ name: 'e.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
    await table('kind,name,input\nheaters,A,400\nheaters,B,400 kBtu/h\n');
    await page.getByText('Nothing was read. To put right: 1.').waitFor();
    expect(await page.locator('.equipment-row').count()).toBe(1);
    await table('kind,name,input\nheaters,B,400 kBtu/h\n');
    await page.getByText('Read: 1.').waitFor();
    await page.goto(`${job}/plate/heaters/h1`);
    await page.locator('.equipment-list li', { hasText: 'B' }).getByRole('button', { name: 'Take' }).click();
    expect(await page.getByRole('link', { name: /rated input/i }).textContent()).toContain('400 kBtu/h');
    await page.goto('/');
    await page.getByText('Juniper Bend').first().waitFor();
    expect(await page.getByText('Without a name').count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
