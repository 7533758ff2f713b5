/** Opens one workbook after another and keeps each as it is edited. */
import type { Desk, Filling, Keeping } from '../../workbook/desk';
import type { BrowserWorkbook } from './openWorkbook';
import { markIn } from './sheetCustom';
import { readSnapshot } from './snapshot';
import { snapshotVersion, type Kept, type SnapshotStore } from './snapshotStore';
import type { TabLock } from './tabLock';

export interface DeskParts {
  /** In front of the person. @throws when the snapshot is none */
  open(snapshot: string): BrowserWorkbook;
  /** Without a screen. */
  openEmpty(): BrowserWorkbook;
  /** @throws where the browser keeps nothing */
  openStore(): Promise<SnapshotStore>;
  /** null where the browser has no such thing. */
  readonly lock: TabLock | null;
  now(): number;
}

export interface PageDesk extends Desk {
  /** Keeps at once what waits to be kept: the page may go. */
  flush(): void;
}

/** From the first change that is not kept yet: no more than that is lost when the page dies. */
const pauseMs = 1000;

export function createDesk(parts: DeskParts): PageDesk {
  const listeners = new Set<() => void>();
  let workbook: BrowserWorkbook | null = null;
  let isExample = false;
  let before: string | null = null;
  let aside: Kept | null = null;
  let keeping: Keeping = { code: 'noStorage' };
  let opened: SnapshotStore | null = null;
  /** null where nothing may be written: there is no store, or another tab has it. */
  let store: SnapshotStore | null = null;
  let stopListening = (): void => undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const set = (next: Keeping): void => {
    keeping = next;
    listeners.forEach((listener) => listener());
  };
  const keptNow = (snapshot: string): Kept => ({ version: snapshotVersion, snapshot, at: parts.now() });
  const currentNow = (snapshot: string): Kept => ({ ...keptNow(snapshot), ...(isExample && { isExample }) });

  async function write(slots: Parameters<SnapshotStore['write']>[0]): Promise<boolean> {
    if (store === null) return false;
    try {
      await store.write(slots);
      if (slots.current) set({ code: 'kept', at: slots.current.at });
      return true;
    } catch (cause) {
      set({ code: whyNotKept(cause) });
      return false;
    }
  }

  function flush(): void {
    if (timer === undefined || workbook === null) return;
    clearTimeout(timer);
    timer = undefined;
    void write({ current: currentNow(workbook.snapshot()) });
  }

  function show(snapshot: string, asExample = false): BrowserWorkbook {
    const shown = parts.open(snapshot);
    workbook = shown;
    isExample = asExample;
    const stops = [
      shown.onEdit(() => (isExample = false)),
      shown.onMutation(() => {
        if (store !== null) timer ??= setTimeout(flush, pauseMs);
      }),
    ];
    stopListening = () => stops.forEach((stop) => stop());
    return shown;
  }

  async function fill(filling: Filling): Promise<string> {
    const empty = parts.openEmpty();
    try {
      await filling(empty);
      return empty.snapshot();
    } finally {
      empty.dispose();
    }
  }

  /**
   * What is open becomes the one before.
   * @throws when `next` is no snapshot; then nothing has changed
   */
  async function swap(next: string, asExample = false): Promise<BrowserWorkbook> {
    readSnapshot(next);
    const last = workbook?.snapshot() ?? null;
    clearTimeout(timer);
    timer = undefined;
    stopListening();
    workbook?.dispose();
    const shown = showOrGoBack(next, asExample, last);
    if (last !== null) before = last;
    await write({ current: currentNow(next), ...(last === null ? {} : { before: keptNow(last) }) });
    return shown;
  }

  /** What passes for a workbook can still be too much for the engine. */
  function showOrGoBack(next: string, asExample: boolean, last: string | null): BrowserWorkbook {
    const wasExample = isExample;
    try {
      return show(next, asExample);
    } catch (cause) {
      if (last !== null) show(last, wasExample);
      throw cause;
    }
  }

  /** @throws when it cannot be read */
  async function open(kept: Kept): Promise<BrowserWorkbook> {
    if (!isOurVersion(kept)) throw new Error(`version ${kept.version}`);
    const asExample = kept.isExample === true;
    return workbook === null ? show(kept.snapshot, asExample) : swap(kept.snapshot, asExample);
  }

  /** Opens it; null, and the store keeps it aside, when it cannot be read. */
  async function openKept(kept: Kept | null): Promise<BrowserWorkbook | null> {
    if (kept === null) return null;
    try {
      return await open(kept);
    } catch {
      // The same again where nothing could be kept in its place the last time.
      if (aside?.snapshot !== kept.snapshot) aside = { ...kept, ...(aside && { earlier: aside }) };
      // Whoever cannot put it aside may not write over it either.
      if (!(await write({ aside }))) store = null;
      return null;
    }
  }

  function waitForOther(lock: TabLock): void {
    set({ code: 'otherTab' });
    void lock.free().then(() => set({ code: 'otherTabClosed' }));
  }

  return {
    async start(filling, isOld) {
      let kept: Kept | null = null;
      let isOurs = false;
      try {
        opened = await parts.openStore();
        isOurs = (await parts.lock?.claim()) ?? false;
        if (isOurs) store = opened;
        kept = await opened.read('current');
        if (kept !== null && isOldExample(kept, isOld)) kept = null;
        const last = await opened.read('before');
        aside = await opened.read('aside');
        before = last !== null && isOurVersion(last) ? last.snapshot : null;
      } catch {
        opened = null;
        store = null;
      }
      const found = await openKept(kept);
      if (kept !== null && found !== null && store !== null) set({ code: 'kept', at: kept.at });
      if (opened !== null && parts.lock !== null && !isOurs) waitForOther(parts.lock);
      return {
        workbook: found ?? (await swap(await fill(filling), true)),
        found: kept === null ? 'nothing' : found === null ? 'unreadable' : 'kept',
      };
    },
    replace: async (filling, asExample) => swap(await fill(filling), asExample),
    hasBefore: () => before !== null,
    bringBack: () => swap(before ?? ''),
    countAside: () => asideOnes(aside).length,
    asideText: () => JSON.stringify(aside),
    async openAside() {
      const all = asideOnes(aside);
      for (const one of all) {
        const shown = await open(one).catch(() => null);
        if (shown === null) continue;
        aside = asOneAside(all.filter((other) => other !== one));
        await write({ aside });
        return { workbook: shown, isOpened: true };
      }
      return { workbook: workbook as BrowserWorkbook, isOpened: false };
    },
    async takeOver() {
      if (opened === null || parts.lock === null) return null;
      if (!(await parts.lock.claim())) {
        waitForOther(parts.lock);
        return null;
      }
      store = opened;
      const kept = await openKept(await opened.read('current'));
      if (kept === null) await write({ current: currentNow(workbook?.snapshot() ?? '') });
      return kept ?? workbook;
    },
    keeping: () => keeping,
    onKeeping(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    flush,
  };
}

/** Not what cannot be read: that is put aside. */
function isOldExample(kept: Kept, isOld: Parameters<Desk['start']>[1]): boolean {
  if (kept.isExample !== true || !isOurVersion(kept)) return false;
  try {
    return isOld(Object.values(readSnapshot(kept.snapshot).sheets).map(({ custom }) => markIn(custom ?? {})));
  } catch {
    return false;
  }
}

function isOurVersion({ version }: Kept): boolean {
  return version <= snapshotVersion;
}

/** The latest first. */
function asideOnes(aside: Kept | null): Kept[] {
  return aside === null ? [] : [aside, ...asideOnes(aside.earlier ?? null)];
}

function asOneAside(ones: readonly Kept[]): Kept | null {
  return ones.reduceRight<Kept | null>((earlier, { version, snapshot, at }) => {
    return { version, snapshot, at, ...(earlier && { earlier }) };
  }, null);
}

function whyNotKept(cause: unknown): 'storageFull' | 'brokenOff' | 'noStorage' {
  const name = cause instanceof Error ? cause.name : '';
  if (name === 'QuotaExceededError') return 'storageFull';
  return name === 'AbortError' ? 'brokenOff' : 'noStorage';
}
