/** A line of a job as a list: nameplates one tap away, what is missing first, the rest folded, all of the picture in reach. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, DESK, openExample, openStage, type Stage } from './harness.ts';

describe.skipIf(!CAN_BROWSE)('the lists of a line', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it.each(['', '/heat', '/gas', '/water', '/power'])('lead to the nameplate from “%s”', async (below) => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}${below}`);
    await page.getByRole('navigation', { name: 'Nameplates' }).getByRole('link').first().click();
    await page.waitForURL(`**${job}/plate/heaters/*`);
    await page.locator('.plate-frame').waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });

  it('name what is missing first', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'A survey half done');
    await page.goto(`${job}/water`);
    const record = page.locator('.record', { has: page.locator('.needed') }).first();
    await record.waitFor();
    const rows = await record.locator('.reading').all();
    const needed = await Promise.all(rows.map((row) => row.evaluate((one) => one.matches('.needed'))));
    // All of them before the first that is known or not asked for.
    expect(needed.lastIndexOf(true)).toBe(needed.filter(Boolean).length - 1);
    const missing = (await record.locator('.record-missing').textContent()) ?? '';
    expect(Number.parseInt(missing, 10)).toBe(needed.filter(Boolean).length);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('fold what nothing asks for until somebody opens it, and then keep it open', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/air`);
    const folded = page.locator('.unasked').first();
    const row = folded.locator('.reading').first();
    await folded.waitFor();
    expect(await row.isVisible()).toBe(false);
    await folded.locator('summary').focus();
    await page.keyboard.press('Enter');
    await row.waitFor({ state: 'visible' });
    await row.click();
    await page.waitForURL('**/read/**');
    await page.goBack();
    await row.waitFor({ state: 'visible' });
    expect(errors).toEqual([]);
    await context.close();
  });

  it('are searched by the name of a reading, folds or no', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/air`);
    await page.getByRole('searchbox', { name: 'Search the readings' }).fill('SOFFIT');
    const rows = page.locator('.record .reading:visible');
    await expect.poll(() => rows.count()).toBeLessThan(10);
    const texts = await rows.allTextContents();
    expect(texts.length).toBeGreaterThan(0);
    for (const text of texts) expect(text).toMatch(/soffit/i);
    await page.getByText(`${texts.length} found`).waitFor();
    await page.getByRole('searchbox').fill('no such thing');
    await page.getByText('0 found').waitFor();
    expect(await page.locator('.record').count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('stand beside a picture of which nothing is cut on a desk', async () => {
    const { page, context, errors } = await stage.device({ viewport: DESK });
    const job = await openExample(page, 'House pool');
    for (const line of ['heat', 'gas', 'water']) {
      await page.goto(`${job}/${line}`);
      await page.locator('.picture svg').first().waitFor();
      await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
      const reach = await page.locator('.line-page > .picture').evaluate((pane) => {
        pane.scrollTop = pane.scrollHeight;
        const [end, box] = [pane.lastElementChild?.getBoundingClientRect(), pane.getBoundingClientRect()];
        const columns = document.querySelector('.columns')?.getBoundingClientRect();
        return {
          end: (end?.bottom ?? 0) - box.bottom,
          top: box.top - (columns?.bottom ?? 0),
          foot: innerHeight - box.bottom,
        };
      });
      expect(reach.end, line).toBeLessThanOrEqual(0);
      expect(reach.top, line).toBeGreaterThanOrEqual(0);
      expect(reach.foot, line).toBeGreaterThanOrEqual(0);
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  it('fold what meets on a long line, and open where a working is asked for', async () => {
    const { page, context, errors } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.goto(`${job}/power`);
    await page.locator('.finding').first().waitFor();
    expect(await page.locator('.finding:visible').count()).toBeLessThan(8);
    await page.goto(`${job}/power/ladder`);
    await page.locator('.rung').last().click();
    await page.locator('.finding .working').waitFor({ state: 'visible' });
    expect(errors).toEqual([]);
    await context.close();
  });
});
