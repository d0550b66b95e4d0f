/** A person with a phone: taps what can be seen, types into what has the focus, and every press and every value is counted. */
import type { Locator, Page } from 'playwright-core';
import { photoWithPlace } from './photo.ts';

/** What is given to a reading: typed, or picked by the words on a key, or points of a curve. */
export type Answer =
  | { readonly typed: string }
  | { readonly key: string }
  | { readonly points: readonly (readonly [number, number])[] };

export class Person {
  readonly page: Page;
  /** Presses of a key, a button or a link. */
  taps = 0;
  /** Values typed, whatever their length; a point of a curve is two. */
  entries = 0;

  constructor(page: Page) {
    this.page = page;
  }

  get count(): number {
    return this.taps + this.entries;
  }

  async tap(target: Locator): Promise<void> {
    this.taps += 1;
    await target.click();
  }

  async type(target: Locator, value: string): Promise<void> {
    this.entries += 1;
    await target.fill(value);
  }

  /** A tap on the camera, and one on its shutter. */
  async photograph(): Promise<void> {
    const chooser = this.page.waitForEvent('filechooser');
    await this.tap(this.page.locator('.photo'));
    this.taps += 1;
    const buffer = await photoWithPlace(this.page);
    await (await chooser).setFiles({ name: 'plate.jpg', mimeType: 'image/jpeg', buffer });
    await this.page.locator('.photo img').waitFor();
  }

  button(name: string): Locator {
    return this.page.getByRole('button', { name, exact: true });
  }

  link(name: string): Locator {
    return this.page.getByRole('link', { name, exact: true });
  }

  /** Path of the reading that is open, undefined where none is. */
  reading(): string | undefined {
    return /\/read\/(.+)$/.exec(decodeURIComponent(new URL(this.page.url()).pathname))?.[1];
  }

  /** Enters the open reading, and waits until the next is asked for or the walk is over. */
  async answer(answer: Answer): Promise<void> {
    const before = this.page.url();
    if ('key' in answer) await this.tap(this.button(answer.key).first());
    else {
      if ('typed' in answer)
        await this.type(this.page.locator('main').getByRole('textbox').first(), answer.typed);
      else await this.#points(answer.points);
      await this.tap(this.button('Next'));
    }
    await this.page.waitForURL((url) => url.href !== before, { timeout: 8000, waitUntil: 'commit' });
  }

  /** Along the walk for as long as it asks for a reading: what was asked. */
  async walk(answerTo: (path: string) => Answer, most: number): Promise<string[]> {
    const asked: string[] = [];
    for (let path = this.reading(); path !== undefined && asked.length < most; path = this.reading()) {
      asked.push(path);
      await this.answer(answerTo(path));
    }
    return asked;
  }

  /** Answers every row of a list, those too that come up while it is answered: what was asked. */
  async answerRows(answerTo: (path: string) => Answer): Promise<string[]> {
    const asked: string[] = [];
    for (let path = await this.#row(asked); path !== undefined; path = await this.#row(asked)) {
      asked.push(path);
      await this.answerRow(path, answerTo(path));
    }
    return asked;
  }

  /** From station to station for as long as there are questions: what was asked. */
  async questions(answerTo: (path: string) => Answer): Promise<string[]> {
    const asked: string[] = [];
    while (this.page.url().includes('/questions/')) {
      await this.page.locator('.quick-row').first().waitFor();
      asked.push(...(await this.answerRows(answerTo)));
      const before = this.page.url();
      await this.tap(this.page.locator('.walk-start'));
      await this.page.waitForURL((url) => url.href !== before, { waitUntil: 'commit' });
    }
    return asked;
  }

  async #row(but: readonly string[]): Promise<string | undefined> {
    const ids = await this.page.locator('.quick-row').evaluateAll((rows) => rows.map((row) => row.id));
    return ids.find((id) => !but.includes(id));
  }

  /** Answers a row of a list that takes its readings in place; false where such a reading has a page of its own. */
  async answerRow(path: string, answer: Answer): Promise<boolean> {
    const row = this.page.locator(`li[id="${path}"]`);
    await row.waitFor();
    const field = row.getByRole('textbox');
    if ('key' in answer) await this.tap(row.getByRole('button', { name: answer.key, exact: true }).first());
    else if ('typed' in answer && (await field.count()) === 1) {
      await this.type(field, answer.typed);
      this.taps += 1;
      await field.press('Enter');
    } else return false;
    return true;
  }

  /** Enters the readings named: where the walk does not lead to one by itself, by its link on the page of its line. */
  async answerAll(wanted: readonly string[], answerTo: (path: string) => Answer): Promise<void> {
    const left = new Set(wanted);
    for (let path = await this.#next(left); path !== undefined; path = await this.#next(left)) {
      left.delete(path);
      await this.answer(answerTo(path));
    }
  }

  /** The reading that is open if it is wanted, else one that is opened by a tap; undefined when none is left. */
  async #next(left: ReadonlySet<string>): Promise<string | undefined> {
    const [first] = left;
    const open = this.reading();
    if (first === undefined || (open !== undefined && left.has(open))) return first && open;
    const links = [...left].map((path) => this.page.locator(`main a[href$="/read/${path}"]:visible`).first());
    for (let tries = 0; tries < 3; tries += 1) {
      for (const link of links) {
        if ((await link.count()) === 0) continue;
        await this.tap(link);
        await this.page.waitForURL('**/read/**');
        return this.reading();
      }
      const line = first.startsWith('gas') ? 'gas' : 'water';
      await this.tap(this.page.locator(`.columns a[href*="/${line}"]`).first());
      await this.page.waitForURL((url) => url.pathname.includes(`/${line}`));
    }
    throw new Error(`no way to ${first}`);
  }

  async #points(points: readonly (readonly [number, number])[]): Promise<void> {
    for (const [i, [x, y]] of points.entries()) {
      const across = this.page.getByLabel(`Point ${i + 1}, across`);
      if ((await across.count()) === 0) await this.tap(this.button('Another point'));
      await this.type(across, String(x));
      await this.type(this.page.getByLabel(`Point ${i + 1}, up`), String(y));
    }
  }
}
