/** The built app on a server of its own, and a Chromium to use it as a person would. */
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { listen, type Serving } from '../../../office/src/server.ts';

/** Nothing of the browser's own traffic: only the app is spoken to. */
const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const SMALL = { width: 360, height: 740 };
export const PHONE = { width: 390, height: 844 };
export const TABLET = { width: 820, height: 1180 };
export const DESK = { width: 1366, height: 900 };

/** Browser tests need a Chromium; the full run sees to one. */
export const CAN_BROWSE = Boolean(process.env['FIRSTFIRE_CHROMIUM']);

export interface Stage {
  readonly url: string;
  readonly browser: Browser;
  readonly serving: Serving;
  /** A fresh device: its storage is empty. Errors of the page fail the test that asks for them. */
  device(options?: DeviceOptions): Promise<Device>;
  close(): Promise<void>;
}

export interface DeviceOptions {
  readonly viewport?: { readonly width: number; readonly height: number };
  readonly dark?: boolean;
}

export interface Device {
  readonly context: BrowserContext;
  readonly page: Page;
  /** What the page threw or printed as an error. */
  readonly errors: readonly string[];
}

export async function openStage(folder: string | undefined = process.env['FIRSTFIRE_APP']): Promise<Stage> {
  const serving = await listen({ host: '127.0.0.1', port: 0, ...(folder === undefined ? {} : { folder }) });
  const path = process.env['FIRSTFIRE_CHROMIUM'];
  const browser = await chromium.launch({
    args: ARGUMENTS,
    ...(path === undefined || path === 'own' ? {} : { executablePath: path }),
  });
  const url = `http://localhost:${serving.port}`;
  return {
    url,
    browser,
    serving,
    device: (options) => deviceOf(browser, url, options),
    close: async () => {
      await browser.close();
      await serving.close();
    },
  };
}

async function deviceOf(
  browser: Browser,
  url: string,
  { viewport = PHONE, dark = false }: DeviceOptions = {},
): Promise<Device> {
  const context = await browser.newContext({
    baseURL: url,
    viewport,
    colorScheme: dark ? 'dark' : 'light',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  return { context, page, errors };
}

/** Opens an example by tapping; gives the address of the job. */
export async function openExample(page: Page, name: string): Promise<string> {
  await page.goto('/new');
  await page.getByRole('button', { name }).click();
  await page.waitForURL('**/jobs/*');
  await page.locator('.columns').waitFor();
  return new URL(page.url()).pathname;
}
