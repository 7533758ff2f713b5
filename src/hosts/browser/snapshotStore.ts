/** Snapshots in the browser's own database. A write is there whole or not at all, also when the page dies in it. */
import { openDB, type DBSchema } from 'idb';

/** `aside` is what could not be read: for whoever can. */
export type Slot = 'current' | 'before' | 'aside';

export interface Kept {
  /** Of what `snapshot` holds. */
  readonly version: number;
  readonly snapshot: string;
  /** In milliseconds since 1970. */
  readonly at: number;
  /** An example that nobody has changed. */
  readonly isExample?: boolean;
  /** Of one that is put aside: what was put aside before it. */
  readonly earlier?: Kept;
}

/** 1 had each formula written out; it can still be read. */
export const snapshotVersion = 2;

export interface SnapshotStore {
  read(slot: Slot): Promise<Kept | null>;
  /** null empties a slot. @throws DOMException: QuotaExceededError where there is no room, AbortError where none is given */
  write(parts: Partial<Record<Slot, Kept | null>>): Promise<void>;
}

interface Schema extends DBSchema {
  snapshots: { key: Slot; value: Kept };
}

/** @throws where the browser keeps nothing */
export async function openSnapshotStore(name: string): Promise<SnapshotStore> {
  const database = await openDB<Schema>(name, 1, {
    upgrade: (fresh) => void fresh.createObjectStore('snapshots'),
  });
  return {
    read: async (slot) => (await database.get('snapshots', slot)) ?? null,
    async write(parts) {
      const change = database.transaction('snapshots', 'readwrite', { durability: 'strict' });
      const puts = (Object.entries(parts) as [Slot, Kept | null][]).map(([slot, kept]) =>
        kept === null ? change.store.delete(slot) : change.store.put(kept, slot),
      );
      // At once: a page that goes takes what it has not committed along.
      change.commit();
      await Promise.all([...puts, change.done]);
    },
  };
}
