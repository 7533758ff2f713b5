// @vitest-environment jsdom
/** What the pane shows of figures while results are still to come. */
import { describe, expect, it, vi } from 'vitest';
import { paneTools } from '../../src/entries/paneTools';
import { mountPane } from '../../src/taskpane/mountPane';
import { createFakeWorkbook } from './fakeWorkbook';
import { openGridPane } from './openGridPane';
import { fillFake, until } from './openPane';

describe('while the grid calculates', () => {
  it('says so in the headings from the change on, counts nothing, and follows when it is done', async () => {
    const workbook = createFakeWorkbook();
    await fillFake(workbook, [{ Plot: 'Creek', Crop: 'gourd' }]);
    workbook.compute(workbook.cell('Plots', 0, 'Plants'), 40);
    workbook.compute(workbook.cell('Plots', 0, 'Notes'), 'Test the seed. ');
    let calculated = Promise.resolve();
    const settle = vi.fn(() => calculated.then(() => workbook.settle(0)));
    const root = document.createElement('main');
    document.body.replaceChildren(root);
    const handle = await mountPane(root, { ...workbook, settle }, paneTools);
    const headings = (): (string | null)[] => [...root.querySelectorAll('h2')].map((one) => one.textContent);
    const busy = (): (string | null)[] =>
      ['.findings', '.lines'].map(
        (each) => root.querySelector(each)?.closest('[aria-busy]')?.getAttribute('aria-busy') ?? null,
      );
    expect(headings()).toEqual(expect.arrayContaining(['Plots (1)', 'To look at (1)']));

    let finish = (): void => {};
    calculated = new Promise((resolve) => (finish = resolve));
    workbook.compute(workbook.cell('Plots', 0, 'Plants'), 80);
    workbook.compute(workbook.cell('Plots', 0, 'Notes'), '');
    expect(headings()).toEqual(
      expect.arrayContaining(['Plots (1): calculating…', 'To look at: calculating…']),
    );
    expect(busy()).toEqual(['true', 'true']);
    await until(() => expect(settle).toHaveBeenCalledTimes(2));
    finish();
    await until(() => expect(headings()).toEqual(expect.arrayContaining(['Plots (1)', 'To look at'])));
    expect(root.querySelector('.line')?.textContent).toContain('80 plants');
    expect(busy()).toEqual(['false', 'false']);

    // Some results do not come within the time that is waited.
    workbook.unsettled = [workbook.cell('Plots', 0, 'Plants')];
    workbook.tellChange();
    await until(() => expect(root.querySelector('.line')?.textContent).toContain('calculating…'));
    expect(root.querySelector('.line')?.textContent).not.toContain('plants');
    expect(headings()).toEqual(
      expect.arrayContaining(['Plots (1): calculating…', 'To look at: calculating…']),
    );
    handle.dispose();
  });

  it('never has the figures of one plot beside another', async () => {
    const pane = await openGridPane([
      { Plot: 'Creek', Crop: 'gourd', Length: 30, Width: 10 },
      { Plot: 'Hill', Crop: 'zucchini', Length: 600, Width: 26 },
    ]);
    const figures = (): readonly (readonly [string, string])[] =>
      [...pane.root.querySelectorAll('.line')].map((line) => [
        line.querySelector('.line-name')?.textContent ?? '',
        /\d+ plants/.exec(line.textContent ?? '')?.[0] ?? 'none',
      ]);
    const own = new Map(figures());
    expect(own.get('Creek')).not.toBe(own.get('Hill'));
    const seen = new Set<string>();
    const watcher = new MutationObserver(() => {
      for (const [name, plants] of figures()) seen.add(`${name}: ${plants}`);
    });
    watcher.observe(pane.root, { subtree: true, childList: true, characterData: true });
    pane.root.querySelector<HTMLInputElement>('[type=radio]')?.click();
    await pane.press('Move down', '"Creek" is line 2 of 2 now.');
    await until(() => expect(figures()).toEqual([...own].reverse()));
    watcher.disconnect();
    expect([...seen].sort()).toEqual(
      [...own].flatMap(([name, plants]) => [`${name}: ${plants}`, `${name}: none`]).sort(),
    );
    pane.close();
  }, 120_000);
});
