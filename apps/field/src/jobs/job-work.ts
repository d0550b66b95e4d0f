/** Work on a whole job from the list: exported, copied, put away. */
import type { Summary } from '../store/database.ts';
import type { Shop } from '../store/shop.ts';
import { saveFile } from './save-file.ts';

export async function saveJob(shop: Shop, { doc, name }: Summary): Promise<void> {
  const { alone } = await import('../store/take-out.ts');
  const { text, counts } = await alone(doc, shop);
  saveFile(`${fileName(name)}.job.json`, text);
  await shop.exported(counts);
}

/** A copy begins a log of its own with the readings as they stand. */
export async function copyJob(shop: Shop, { doc }: Summary, name: string): Promise<void> {
  const session = await shop.session(doc);
  const { editsOf } = await import('./edits-of.ts');
  await shop.begin(editsOf(session.now.get().document, name));
}

export async function setArchived(shop: Shop, { doc, archived }: Summary): Promise<void> {
  const session = await shop.session(doc);
  session.edit([
    {
      type: 'set',
      collection: 'job',
      field: 'archived',
      value: { value: archived ? 'no' : 'yes', how: 'told', at: new Date().toISOString() },
    },
  ]);
}

/** A name that any file system takes. */
export function fileName(name: string): string {
  return (
    name
      .normalize('NFKD')
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'job'
  );
}
