/** Keeping over a real (in-memory) IndexedDB; tabs are desks that share it and one lock. */
import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { createDesk, type DeskParts, type PageDesk } from '../../../src/hosts/browser/createDesk';
import { openHeadless } from '../../../src/hosts/browser/openHeadless';
import {
  openSnapshotStore,
  snapshotVersion,
  type SnapshotStore,
} from '../../../src/hosts/browser/snapshotStore';
import type { TabLock } from '../../../src/hosts/browser/tabLock';
import type { BrowserWorkbook } from '../../../src/hosts/browser/openWorkbook';
import type { WorkbookPort } from '../../../src/workbook/port';
import { contractFunctions } from '../../contract/contractFunctions';
import { change } from '../../contract/contractWorkbook';

const options = { functions: contractFunctions, namespace: 'CUCURBIT.', firstSheet: 'Kitchen' };
const noon = Date.UTC(2027, 4, 2, 12);

const put = (workbook: WorkbookPort, text: string): Promise<void> =>
  workbook.apply(change({ cells: [{ sheet: 'Kitchen', row: 0, column: 0, contents: [[text]] }] }));
const keepsAll = (): boolean => false;
const filledWith = (text: string) => (workbook: WorkbookPort) => put(workbook, text);
const textIn = async (workbook: WorkbookPort): Promise<unknown> =>
  (await workbook.read({ sheet: 'Kitchen', row: 0, column: 0, rows: 1, columns: 1 })).values[0]?.[0];

/** What the tabs of a browser share. */
function openBrowser() {
  let holder: object | null = null;
  const waiting: (() => void)[] = [];
  const shown: BrowserWorkbook[] = [];
  const desks: PageDesk[] = [];
  return {
    shown,
    end() {
      // No page goes on keeping after its workbook is gone.
      desks.forEach((desk) => desk.flush());
      shown.forEach((workbook) => workbook.dispose());
    },
    tab(changed: Partial<DeskParts> = {}): { desk: PageDesk; close(): void } {
      const self = {};
      const lock: TabLock = {
        claim: async () => (holder ??= self) === self,
        free: () =>
          new Promise((resolve) => (holder === null ? resolve(null) : waiting.push(() => resolve(null)))),
      };
      const desk = createDesk({
        open(snapshot) {
          const workbook = openHeadless({ ...options, snapshot });
          shown.push(workbook);
          return workbook;
        },
        openEmpty: () => openHeadless(options),
        openStore: () => openSnapshotStore('test'),
        lock,
        now: () => noon,
        ...changed,
      });
      desks.push(desk);
      return {
        desk,
        close() {
          if (holder !== self) return;
          holder = null;
          waiting.splice(0).forEach((tell) => tell());
        },
      };
    },
  };
}

describe('the desk of a page', () => {
  let browser: ReturnType<typeof openBrowser>;
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
    browser = openBrowser();
  });
  afterEach(() => browser.end());

  const failing =
    (cause: Error): DeskParts['openStore'] =>
    async () => {
      const store: SnapshotStore = await openSnapshotStore('test');
      return { ...store, write: () => Promise.reject(cause) };
    };
  const kept = async (): Promise<string> =>
    (await (await openSnapshotStore('test')).read('current'))?.snapshot ?? '';

  test('opens a new workbook the first time, and says that it is kept', async () => {
    const { desk } = browser.tab();
    const { workbook, found } = await desk.start(filledWith('new'), keepsAll);
    expect(found).toBe('nothing');
    expect(await textIn(workbook)).toBe('new');
    expect(desk.keeping()).toEqual({ code: 'kept', at: noon });
    expect(desk.hasBefore()).toBe(false);
  });

  test('keeps an edit by itself, and opens it the next time', async () => {
    const first = browser.tab();
    const { workbook } = await first.desk.start(filledWith('new'), keepsAll);
    await put(workbook, 'edited');
    await vi.waitFor(async () => expect(await kept()).toContain('edited'), { timeout: 20_000 });
    // The page dies without another word.
    first.close();
    const { desk } = browser.tab();
    const again = await desk.start(filledWith('must not be seen'), keepsAll);
    expect(again.found).toBe('kept');
    expect(await textIn(again.workbook)).toBe('edited');
  });

  test('keeps at once what waits when the page may go', async () => {
    const { desk } = browser.tab();
    const { workbook } = await desk.start(filledWith('new'), keepsAll);
    await put(workbook, 'last words');
    desk.flush();
    await vi.waitFor(async () => expect(await kept()).toContain('last words'));
  });

  test('replaces what is open, keeps it as the one before, and brings it back', async () => {
    const first = browser.tab();
    await first.desk.start(filledWith('one'), keepsAll);
    expect(await textIn(await first.desk.replace(filledWith('two')))).toBe('two');
    first.close();
    const { desk } = browser.tab();
    expect(await textIn((await desk.start(filledWith('no'), keepsAll)).workbook)).toBe('two');
    expect(desk.hasBefore()).toBe(true);
    expect(await textIn(await desk.bringBack())).toBe('one');
    expect(await textIn(await desk.bringBack())).toBe('two');
  });

  test('an example that nobody changed makes way for a new one on the next visit, unopened, and the one before stays', async () => {
    const first = browser.tab();
    await first.desk.start(filledWith('a plan'), keepsAll);
    await first.desk.replace(filledWith('example'), true);
    first.close();
    const isOld = vi.fn(() => true);
    const { desk } = browser.tab();
    const { workbook, found } = await desk.start(filledWith('in other words'), isOld);
    expect(isOld.mock.calls).toEqual([[[null]]]);
    expect([found, await textIn(workbook)]).toEqual(['nothing', 'in other words']);
    expect(browser.shown).toHaveLength(3);
    expect(await textIn(await desk.bringBack())).toBe('a plan');
  });

  test('an example stays where it is not old, and one that somebody changed is a plan, what was undone too', async () => {
    const first = browser.tab();
    await first.desk.start(filledWith('example'), keepsAll);
    first.close();
    const second = browser.tab();
    const { workbook } = await second.desk.start(filledWith('no'), keepsAll);
    expect(await textIn(workbook)).toBe('example');
    await put(workbook, 'mine');
    await browser.shown[1]?.undo();
    second.desk.flush();
    second.close();
    const { desk } = browser.tab();
    const again = await desk.start(filledWith('no'), () => true);
    expect([again.found, await textIn(again.workbook)]).toEqual(['kept', 'example']);
  });

  test('changes nothing when what should replace it fails', async () => {
    const { desk } = browser.tab();
    const { workbook } = await desk.start(filledWith('one'), keepsAll);
    const failed = desk.replace(() => Promise.reject(new Error('no such plan')));
    await expect(failed).rejects.toThrow('no such plan');
    expect(await textIn(workbook)).toBe('one');
    expect(browser.shown).toHaveLength(1);
    expect(desk.hasBefore()).toBe(false);
  });

  test('a second tab shows what is kept, writes nothing, and takes over when the first is closed', async () => {
    const first = browser.tab();
    const one = (await first.desk.start(filledWith('one'), keepsAll)).workbook;
    const second = browser.tab();
    const two = (await second.desk.start(filledWith('no'), keepsAll)).workbook;
    expect(await textIn(two)).toBe('one');
    expect(second.desk.keeping()).toEqual({ code: 'otherTab' });
    await put(two, 'typed in the second');
    await second.desk.replace(filledWith('opened in the second'));
    second.desk.flush();
    expect(await second.desk.takeOver()).toBeNull();
    await put(one, 'typed in the first');
    first.desk.flush();
    await vi.waitFor(async () => expect(await kept()).toContain('typed in the first'));
    expect(await kept()).not.toContain('second');
    first.close();
    await vi.waitFor(() => expect(second.desk.keeping()).toEqual({ code: 'otherTabClosed' }));
    const taken = await second.desk.takeOver();
    expect(taken && (await textIn(taken))).toBe('typed in the first');
    expect(second.desk.keeping()).toEqual({ code: 'kept', at: noon });
    // What was typed there meanwhile is not thrown away.
    expect(await textIn(await second.desk.bringBack())).toBe('opened in the second');
  });

  test('says when the storage is full, and when there is room again', async () => {
    const full = Object.assign(new Error('no room'), { name: 'QuotaExceededError' });
    let isFull = true;
    const { desk } = browser.tab({
      async openStore() {
        const store = await openSnapshotStore('test');
        return { ...store, write: (parts) => (isFull ? Promise.reject(full) : store.write(parts)) };
      },
    });
    const { workbook } = await desk.start(filledWith('new'), keepsAll);
    expect(desk.keeping()).toEqual({ code: 'storageFull' });
    isFull = false;
    await put(workbook, 'smaller');
    desk.flush();
    await vi.waitFor(() => expect(desk.keeping()).toEqual({ code: 'kept', at: noon }));
  });

  test('tells a write that the browser broke off without a reason from a browser that keeps nothing', async () => {
    const { desk } = browser.tab({
      async openStore() {
        const database = await openDB('broken', 1, {
          upgrade: (fresh) => void fresh.createObjectStore('any'),
        });
        const store = await openSnapshotStore('test');
        return {
          ...store,
          async write() {
            const change = database.transaction('any', 'readwrite');
            change.abort();
            await change.done;
          },
        };
      },
    });
    await desk.start(filledWith('new'), keepsAll);
    expect(desk.keeping()).toEqual({ code: 'brokenOff' });
  });

  test.each([
    ['no database', { openStore: () => Promise.reject(new Error('denied')) }],
    ['no locks', { lock: null }],
    ['a database that fails', { openStore: failing(new Error('disk')) }],
  ])('works on without keeping where there is %s, and says so', async (_, changed) => {
    const { desk } = browser.tab(changed);
    const { workbook } = await desk.start(filledWith('new'), keepsAll);
    expect(await textIn(workbook)).toBe('new');
    expect(desk.keeping()).toEqual({ code: 'noStorage' });
    expect(await textIn(await desk.replace(filledWith('other')))).toBe('other');
    expect(await textIn(await desk.bringBack())).toBe('new');
  });

  test.each([
    ['damaged', { version: 1, snapshot: '{"id":', at: 1 }],
    ['of a newer version', { version: snapshotVersion + 1, snapshot: '{}', at: 1 }],
  ])('puts aside what is %s, and opens a new workbook', async (_, record) => {
    const store = await openSnapshotStore('test');
    await store.write({ current: record });
    const { desk } = browser.tab();
    const { workbook, found } = await desk.start(filledWith('new'), keepsAll);
    expect(found).toBe('unreadable');
    expect(await textIn(workbook)).toBe('new');
    expect(await store.read('aside')).toEqual(record);
    expect(await kept()).toContain('new');
    expect(desk.countAside()).toBe(1);
    expect(JSON.parse(desk.asideText())).toEqual(record);
    expect(await desk.openAside()).toEqual({ workbook, isOpened: false });
    expect(await store.read('aside')).toEqual(record);
    expect(await textIn(workbook)).toBe('new');
  });

  test('opens what was put aside once it can be read, and keeps it from then on', async () => {
    const first = browser.tab();
    const { workbook } = await first.desk.start(filledWith('old plan'), keepsAll);
    const snapshot = (workbook as BrowserWorkbook).snapshot();
    first.close();
    const store = await openSnapshotStore('test');
    await store.write({ current: null, aside: { version: 1, snapshot, at: 1 } });
    const { desk } = browser.tab();
    await desk.start(filledWith('new'), keepsAll);
    const tried = await desk.openAside();
    expect([tried.isOpened, await textIn(tried.workbook)]).toEqual([true, 'old plan']);
    expect(await kept()).toContain('old plan');
    expect([desk.countAside(), await store.read('aside')]).toEqual([0, null]);
    expect(await textIn(await desk.bringBack())).toBe('new');
  });

  test('keeps what was put aside before when another cannot be read, and opens whichever can be', async () => {
    const first = browser.tab();
    const { workbook } = await first.desk.start(filledWith('old plan'), keepsAll);
    const old = { version: 1, snapshot: (workbook as BrowserWorkbook).snapshot(), at: 1 };
    first.close();
    const damaged = { version: 1, snapshot: '{', at: 2 };
    const store = await openSnapshotStore('test');
    await store.write({ current: damaged, aside: old });
    const { desk } = browser.tab();
    await desk.start(filledWith('new'), keepsAll);
    expect(desk.countAside()).toBe(2);
    expect(await store.read('aside')).toEqual({ ...damaged, earlier: old });
    expect(JSON.parse(desk.asideText())).toEqual({ ...damaged, earlier: old });
    const tried = await desk.openAside();
    expect([tried.isOpened, await textIn(tried.workbook)]).toEqual([true, 'old plan']);
    expect([desk.countAside(), await store.read('aside')]).toEqual([1, damaged]);
  });

  test('does not put aside a second time what is there already', async () => {
    const damaged = { version: 1, snapshot: '{', at: 2 };
    await (await openSnapshotStore('test')).write({ current: damaged, aside: damaged });
    const { desk } = browser.tab();
    await desk.start(filledWith('new'), keepsAll);
    expect(desk.countAside()).toBe(1);
  });

  test('goes on with what is open where the engine fails over what was put aside', async () => {
    const record = {
      version: 1,
      snapshot: '{"id":"workbook","sheetOrder":["a"],"sheets":{"a":{"name":"A"}}}',
      at: 1,
    };
    await (await openSnapshotStore('test')).write({ aside: record });
    const { desk } = browser.tab({
      open(snapshot) {
        if (snapshot === record.snapshot) throw new Error('too much for the engine');
        const workbook = openHeadless({ ...options, snapshot });
        browser.shown.push(workbook);
        return workbook;
      },
    });
    await desk.start(filledWith('new'), keepsAll);
    const { workbook, isOpened } = await desk.openAside();
    expect([isOpened, await textIn(workbook)]).toEqual([false, 'new']);
    expect(desk.countAside()).toBe(1);
  });

  test('goes on with what is open when what the other tab kept cannot be read, and puts that aside', async () => {
    const first = browser.tab();
    await first.desk.start(filledWith('one'), keepsAll);
    const second = browser.tab();
    const { workbook } = await second.desk.start(filledWith('no'), keepsAll);
    const damaged = { version: 1, snapshot: '{', at: 1 };
    const store = await openSnapshotStore('test');
    await store.write({ current: damaged });
    first.close();
    expect(await second.desk.takeOver()).toBe(workbook);
    expect(second.desk.keeping()).toEqual({ code: 'kept', at: noon });
    expect(await store.read('aside')).toEqual(damaged);
    expect(await kept()).toContain('one');
  });

  test('does not offer to bring back what a newer version kept', async () => {
    await (
      await openSnapshotStore('test')
    ).write({ before: { version: snapshotVersion + 1, snapshot: '{}', at: 1 } });
    const { desk } = browser.tab();
    await desk.start(filledWith('new'), keepsAll);
    expect(desk.hasBefore()).toBe(false);
  });

  test('writes nothing over what it can neither read nor put aside', async () => {
    await (await openSnapshotStore('test')).write({ current: { version: 1, snapshot: '{', at: 1 } });
    const { desk } = browser.tab({ openStore: failing(new Error('disk')) });
    expect((await desk.start(filledWith('new'), keepsAll)).found).toBe('unreadable');
    expect(desk.keeping()).toEqual({ code: 'noStorage' });
    expect(await kept()).toBe('{');
  });
});
