// @vitest-environment jsdom
/** The pane as Excel opens it: the entry itself, the vendor's library, and the stand-in for Excel behind it. */
import { afterEach, expect, test, vi } from 'vitest';
import { functions } from '../../src/functions';
import { english } from '../../src/texts/english';
import { openStandIn, type StandIn } from '../excelStandIn/openStandIn';

const { pane } = english;

let excel: StandIn;
async function openEntry(host: string | null): Promise<HTMLElement> {
  excel = openStandIn({ firstSheet: 'Sheet1', functions: [...functions.values()] });
  vi.stubGlobal('Excel', excel.excel);
  vi.stubGlobal('Office', {
    HostType: { Excel: 'Excel' },
    context: { requirements: { isSetSupported: excel.isSetSupported } },
    onReady: () => Promise.resolve({ host }),
  });
  document.body.innerHTML = '<script id="office"></script><main id="pane"></main>';
  vi.resetModules();
  await import('../../src/entries/excel');
  return document.getElementById('pane') as HTMLElement;
}
afterEach(() => {
  excel.close();
  vi.unstubAllGlobals();
});

const says = (root: HTMLElement, text: string | RegExp): Promise<void> =>
  vi.waitFor(() => expect(root.textContent).toMatch(text), { timeout: 30_000 });

function press(root: HTMLElement, text: string): void {
  const button = [...root.querySelectorAll('button')].find((one) => one.textContent === text);
  if (button === undefined) throw new Error(`no button says ${text}`);
  button.click();
}

const sheetNames = (): string[] => excel.book.sheets.map(({ name }) => name);

test('opens on an empty workbook and fills it', async () => {
  const root = await openEntry('Excel');
  await says(root, pane.sheets.missing);
  press(root, pane.sheets.fill);
  await says(
    root,
    /Made: Season, Plots, Calendar, Weeks, Seed order, Prices, By crop, Budget, Crops, Crop ranges\./,
  );
  expect(sheetNames()).toEqual(expect.arrayContaining(['Sheet1', 'Season', 'Plots', 'Crops', 'Crop ranges']));
});

test('after a change that was cut off, offers to put things back before the pane opens', async () => {
  const first = await openEntry('Excel');
  await says(first, pane.sheets.missing);
  const before = sheetNames();
  // Late enough for the change to have begun.
  excel.goneFrom(8);
  press(first, pane.sheets.fill);
  await says(first, /was cut off half-way/);
  excel.goneFrom(null);

  first.replaceChildren();
  vi.resetModules();
  await import('../../src/entries/excel');
  await says(first, /was cut off half-way the last time/);
  press(first, pane.cutOff.put);
  await says(first, pane.sheets.missing);
  expect(sheetNames()).toEqual(before);
});

test('opened elsewhere, says where it belongs', async () => {
  const root = await openEntry(null);
  await says(root, pane.opening.reasons.outside);
});
