/** After one visit everything works with the network off: reload, deep links, edits, and a tab that is killed. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAN_BROWSE, openExample, openStage, type Stage } from './harness.ts';

describe.skipIf(!CAN_BROWSE)('with no signal', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await openStage();
  });
  afterAll(() => stage.close());

  it('keeps what was entered through a killed tab and reloads', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'House pool');
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await context.setOffline(true);
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByRole('textbox').fill('6.4 in w.c.');
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.locator('.job-header [role=status]', { hasText: /kept/ }).waitFor();
    await page.close({ runBeforeUnload: false });

    const again = await context.newPage();
    await again.goto(`${job}/read/gasSupply/-/setPressure`);
    await again.getByText('6.4 in w.c.').first().waitFor();
    await again.reload();
    await again.getByText('6.4 in w.c.').first().waitFor();
    await again.goto('/');
    await again.getByText('Juniper Bend').first().waitFor();
    expect(await again.locator('.job-row').count()).toBe(1);
    await context.close();
  });

  it('shows in a second tab what the first has written', async () => {
    const { page, context } = await stage.device();
    const job = await openExample(page, 'House pool');
    const other = await context.newPage();
    await other.goto(`${job}/gas`);
    await other.locator('.columns').waitFor();
    await page.goto(`${job}/read/gasSupply/-/setPressure`);
    await page.getByRole('textbox').fill('5.1 in w.c.');
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await other.getByText('5.1 in w.c.').first().waitFor();
    await context.close();
  });
});
