// @vitest-environment jsdom
/** Sheets in another language are no sheets of this pane: it says so, and offers that language. */
import { expect, it, vi } from 'vitest';
import { paneTools } from '../../src/entries/paneTools';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import { createFakeWorkbook } from './fakeWorkbook';
import { fillFake, openPane, openPaneOver } from './openPane';

const words = english.pane.language;
const isHidden = (part: HTMLElement): boolean => part.hidden;

it('beside sheets in its own language offers the other, and says nothing', async () => {
  const speak = vi.fn(() => true);
  const workbook = createFakeWorkbook();
  await fillFake(workbook, [{ Plot: 'A', Crop: 'gourd' }]);
  const pane = await openPaneOver(workbook, { ...paneTools, speak });
  const button = pane.button(words.other);
  expect(button.lang).toBe('es');
  button.click();
  expect(speak).toHaveBeenCalledExactlyOnceWith('es');
  expect(pane.spoken()).not.toContain(words.notKept);
  expect(isHidden(pane.section('Plots'))).toBe(false);
});

it('has the keyboard again on the page that it began, unless somebody has gone on', async () => {
  const open = async (): Promise<HTMLButtonElement> =>
    (await openPaneOver(createFakeWorkbook(), { ...paneTools, speak: () => true })).button(words.other);
  (await open()).click();
  const button = await open();
  expect(document.activeElement).toBe(button);
  button.click();
  const opening = open();
  document.body.dispatchEvent(new Event('pointerdown', { bubbles: true }));
  await opening;
  expect(document.activeElement).toBe(document.body);
  // Nor on a page that was begun otherwise.
  await open();
  expect(document.activeElement).toBe(document.body);
});

it('where the choice cannot be kept, says what to do', async () => {
  const pane = await openPaneOver(createFakeWorkbook(), { ...paneTools, speak: () => false });
  pane.button(words.other).click();
  expect(pane.spoken()).toContain(words.notKept);
});

it('offers nothing but the language where the sheets are in another', async () => {
  const pane = await openPane(async (workbook) => {
    const template = { ...plotsTemplate, id: 'es.plots', sheet: 'Parcelas' };
    await fillSheets(workbook, [{ template, inputs: [], form: {} }], 'made for the test');
  });
  expect(pane.spoken()).toContain(words.sheetsInOther);
  expect([...pane.root.querySelectorAll('section')].filter((part) => !part.hidden)).toHaveLength(1);
  expect(isHidden(pane.button(words.other))).toBe(false);
});

it('knows each of its sheets in each language by another id', () => {
  expect(allTemplates.map(({ id }) => id).every((id) => !id.includes('.'))).toBe(true);
});
