/**
 * A model of many devices: two to five, each with a database of its own, edit and undo one job and bring each other their
 * logs, in parts, in any order and again and again. In the end all hold the same, and nothing acknowledged is lost.
 */
import { canonicalJson, type Edit, fold, packDocument, type StoredOperation } from '@firstfire/job';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { JobSession } from '../../src/session/job-session.ts';
import type { DeviceShop } from '../../src/store/device-shop.ts';
import { freshDevice, ids, type Made, named, openTab, pressure, refusing, until } from './device.ts';

type Act =
  | { readonly act: 'edit'; readonly at: number; readonly edits: readonly Edit[] }
  | { readonly act: 'undo' | 'redo' | 'restart' | 'fail' | 'work'; readonly at: number }
  | { readonly act: 'bring'; readonly at: number; readonly to: number; readonly part: number };

const at = fc.nat(4);
const pipe = fc.constantFrom('a', 'b', 'c');
const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.integer({ min: 5, max: 9 }).map(pressure),
  fc.constantFrom('Elm', 'Oak', 'Ash').map(named),
  pipe.map((element): Edit => ({ type: 'add', collection: 'gasPipes', element })),
  pipe.map((element): Edit => ({ type: 'remove', collection: 'gasPipes', element })),
  pipe.map((element): Edit => ({ type: 'restore', collection: 'gasPipes', element })),
  fc.record({
    type: fc.constant('set' as const),
    collection: fc.constant('gasPipes'),
    element: pipe,
    field: fc.constant('length'),
    value: fc.integer({ min: 1, max: 3 }).map((value) => ({ value, unit: 'ft', how: 'measured' })),
  }),
);

const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      act: fc.constant('edit' as const),
      at,
      edits: fc.array(edit, { minLength: 1, maxLength: 3, size: 'max' }),
    }),
  },
  { weight: 3, arbitrary: fc.record({ act: fc.constantFrom('undo' as const, 'redo' as const), at }) },
  { weight: 5, arbitrary: fc.record({ act: fc.constant('bring' as const), at, to: at, part: fc.nat(3) }) },
  {
    weight: 2,
    arbitrary: fc.record({ act: fc.constantFrom('restart' as const, 'fail' as const, 'work' as const), at }),
  },
);

/** One device, and the tab that is open on it. */
class Player {
  readonly device: Made = freshDevice();
  shop!: DeviceShop;
  session!: JobSession;
  /** Ids the device has said are saved. */
  readonly acknowledged = new Set<string>();
  #refusal!: { why: string | undefined };

  async open(doc: string): Promise<void> {
    this.shop = openTab(this.device);
    this.#refusal = refusing(this.shop.storage);
    this.session = await this.shop.session(doc);
  }

  /** Kills the tab: what was not stored is gone with it. */
  async restart(doc: string): Promise<void> {
    await this.acknowledge();
    this.shop.close();
    await this.open(doc);
  }

  fail(): void {
    this.#refusal.why = 'QuotaExceededError';
  }

  async work(): Promise<void> {
    this.#refusal.why = undefined;
    for (const outbox of [this.shop.outbox(this.session.doc)]) await outbox.retry();
    await this.acknowledge();
  }

  async acknowledge(): Promise<void> {
    await until(() => this.session.saved.get().state !== 'saving');
    if (this.session.saved.get().state !== 'saved') return;
    for (const { id } of await this.session.operations()) this.acknowledged.add(id);
  }
}

async function play(players: readonly Player[], acts: readonly Act[]): Promise<void> {
  const pick = (index: number): Player => players[index % players.length] as Player;
  const doc = await begin(players);
  for (const one of acts) {
    const player = pick(one.at);
    if (one.act === 'edit') player.session.edit(one.edits);
    if (one.act === 'undo') player.session.undo();
    if (one.act === 'redo') player.session.redo();
    if (one.act === 'restart') await player.restart(doc);
    if (one.act === 'fail') player.fail();
    if (one.act === 'work') await player.work();
    if (one.act === 'bring') await bring(player, pick(one.to), one.part);
  }
}

async function begin(players: readonly Player[]): Promise<string> {
  const [first] = players;
  if (first === undefined) throw new Error('no player');
  const shop = openTab(first.device);
  const doc = await shop.begin([named('Elm'), { type: 'add', collection: 'gasPipes', element: 'a' }]);
  const begun = await shop.operations(doc);
  shop.close();
  for (const player of players) {
    await player.open(doc);
    await player.shop.take(doc, begun);
  }
  return doc;
}

/** Every part but the last leaves something out. */
async function bring(from: Player, to: Player, part: number): Promise<void> {
  const log = await from.session.operations();
  await to.shop.take(
    from.session.doc,
    log.filter((_, i) => part === 3 || i % 3 === part),
  );
}

function textOf(doc: string, operations: readonly StoredOperation[]): string {
  return canonicalJson(packDocument(fold(operations, doc)));
}

describe('devices that exchange one job', () => {
  it('all end with the same, and lose nothing they have acknowledged', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 2, max: 5 }),
        fc.array(act, { minLength: 1, maxLength: 40, size: 'max' }),
        async (count, acts) => {
          const players = Array.from({ length: count }, () => new Player());
          await play(players, acts);
          for (const player of players) await player.work();
          for (const from of players) for (const to of players) await bring(from, to, 3);
          for (const from of players) for (const to of players) await bring(from, to, 3);
          const { doc } = (players[0] as Player).session;
          const stored = await Promise.all(players.map((one) => one.shop.storage.read(doc)));
          const texts = stored.map((log) => textOf(doc, log));
          const shown = players.map((one) => canonicalJson(packDocument(one.session.now.get().document)));
          for (const player of players) player.shop.close();
          expect(new Set([...texts, ...shown]).size).toBe(1);
          const there = new Set(ids(stored[0] ?? []));
          const lost = players.flatMap(({ acknowledged }) =>
            [...acknowledged].filter((id) => !there.has(id)),
          );
          expect(lost).toEqual([]);
        },
      ),
      { numRuns: 25 },
    );
  });
});
