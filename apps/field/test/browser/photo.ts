/** A photo as a phone makes one. */
import type { Page } from 'playwright-core';

/** A picture with a place written into it: a JPEG whose application part names one. */
export async function photoWithPlace(page: Page): Promise<Buffer> {
  const plain = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2400, 1200);
    canvas.getContext('2d')?.fillRect(0, 0, 2400, 1200);
    return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
  });
  const note = Buffer.from('Exif\0\0GPS 39.7392 N 104.9903 W');
  const head = Buffer.from([0xff, 0xe1, 0, note.length + 2]);
  return Buffer.concat([Buffer.from(plain.slice(0, 2)), head, note, Buffer.from(plain.slice(2))]);
}
