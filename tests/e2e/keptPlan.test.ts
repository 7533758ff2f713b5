/** Work that stays: the product's own page left, reloaded, killed, opened twice, and given out as a file. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { gridHands } from './gridPage/gridHands';
import { packBook } from '../hosts/file/packedBook';
import type { GridPage } from './gridPage/openGridPage';
import { openPlanPage, paneHands } from './gridPage/planPage';

/** Creek 1 of the invented garden. */
const firstPlot = 'A8';

describe('the plan in the page', { timeout: 240_000 }, () => {
  let open: GridPage;
  let page: Page;
  beforeAll(async () => {
    open = await openPlanPage();
    page = open.page;
  }, 240_000);
  afterAll(() => open.close());

  const pane = (of = page) => paneHands(of);
  const isReady = (of: Page): Promise<void> =>
    pane(of).root.getByRole('button', { name: 'Save as .xlsx' }).waitFor({ timeout: 60_000 });
  const plotName = async (of = page): Promise<string> =>
    // With its neighbour: an empty cell alone is copied as nothing.
    (await gridHands(of).shown('A8:B8'))[0]?.[0] ?? '';
  const rename = (name: string, of = page): Promise<void> => gridHands(of).typeAlong(firstPlot, [name]);
  /** What the browser's database holds: what is left when the page is gone. */
  const isKept = async (text: string, of = page): Promise<void> => {
    await of.waitForFunction(
      (wanted) =>
        new Promise((resolve, reject) => {
          const opening = indexedDB.open('cucurbit-functions');
          opening.onerror = () => reject(opening.error ?? new Error('no database'));
          opening.onsuccess = () => {
            const get = opening.result.transaction('snapshots').objectStore('snapshots').get('current');
            get.onsuccess = () => {
              opening.result.close();
              resolve(String(get.result?.snapshot).includes(wanted));
            };
          };
        }),
      text,
      { timeout: 60_000, polling: 200 },
    );
  };

  test('begins with the invented garden, and says so and that it is kept', async () => {
    await pane().says(/This garden is invented/);
    await pane().says(/Kept in this browser as you type/);
    expect(await plotName()).toBe('Creek 1');
  });

  test('is there after a reload', async () => {
    await rename('Brook');
    await isKept('Brook');
    await page.reload();
    await isReady(page);
    await pane().says(/To look at \(\d+\)/);
    expect(await plotName()).toBe('Brook');
  });

  test('keeps at once what was typed a moment before leaving', async () => {
    await rename('Ditch');
    await page.goto('about:blank');
    await page.goBack();
    await isReady(page);
    expect(await plotName()).toBe('Ditch');
  });

  test('is there after the page died', async () => {
    await rename('Pond');
    await isKept('Pond');
    const dying = page;
    page = await dying.context().newPage();
    const crashed = dying.waitForEvent('crash');
    await dying.goto('chrome://crash').catch(() => undefined);
    await crashed;
    await page.goto(open.address);
    await isReady(page);
    await pane().says(/Kept in this browser as you type/);
    expect(await plotName()).toBe('Pond');
  });

  test('a second tab says that it keeps nothing, and takes over when the first is closed', async () => {
    const second = await page.context().newPage();
    await second.goto(open.address);
    await isReady(second);
    await pane(second).says(/open in another tab, which keeps it/);
    await rename('Second', second);
    await page.bringToFront();
    await rename('First');
    await isKept('First');
    await page.close({ runBeforeUnload: true });
    page = second;
    await page.bringToFront();
    await pane().press('Open what the other tab kept');
    await pane().says(/This is what the other tab kept/);
    expect(await plotName()).toBe('First');
    await rename('Taken over');
    await isKept('Taken over');
  });

  test('another plan in its place is asked about, and the one before comes back', async () => {
    await pane().root.getByText('Start again', { exact: true }).click();
    await pane().press('An empty plan');
    await pane().says(/Put this plan away\?/);
    await pane().press('No, go on with this one');
    expect(await plotName()).toBe('Taken over');
    await pane().press('An empty plan');
    await pane().press('Yes: An empty plan');
    await pane().says(/An empty plan is open/);
    expect(await plotName()).toBe('');
    await pane().root.getByText('Start again', { exact: true }).click();
    await pane().press('Bring back the plan before');
    await pane().says(/The plan before is open again/);
    expect(await plotName()).toBe('Taken over');
    await isKept('Taken over');
  });

  test('is given out as an .xlsx, which comes in again', async () => {
    const { name, bytes } = await pane().takeFile('Save as .xlsx');
    expect(name).toBe('cucurbit-plan.xlsx');
    await pane().says(/Saved as a file/);
    await rename('Changed after');
    await pane().openPlan('my plan.xlsx', bytes);
    await pane().says(/my plan\.xlsx is open, with 12 plots/);
    expect(await plotName()).toBe('Taken over');
    await isKept('Taken over');
  });

  test('stays as it is when a file cannot be read', async () => {
    await rename('Stays');
    await pane().openPlan(
      'bomb.xlsx',
      Buffer.from(packBook({ 'xl/worksheets/sheet2.xml': new Uint8Array(50_000_000).fill(32) })),
    );
    await pane().says(/Nothing was changed\. The file holds far more than a plan/);
    await pane().openPlan('photo.xlsx', Buffer.from([0x89, 0x50, 0x4e, 0x47]));
    await pane().says(/Nothing was changed\. The file is no workbook/);
    expect(await plotName()).toBe('Stays');
    await isKept('Stays');
    expect(open.troubles).toEqual([]);
  });
});
