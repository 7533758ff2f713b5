// @vitest-environment jsdom
/** Which language a page begins in, and how it is changed. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';

const reload = vi.fn();
beforeEach(() => {
  vi.resetModules();
  localStorage.clear();
  reload.mockClear();
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  globalThis.cucurbitLanguage = undefined;
});

async function begunIn(browserLanguage: string | undefined): Promise<string> {
  vi.stubGlobal('navigator', browserLanguage === undefined ? undefined : { language: browserLanguage });
  await import('../../src/entries/chooseLanguage');
  const { catalogue } = await import('../../src/texts/catalogue');
  return catalogue.sheets.plots.sheet;
}

test.each([
  ['es-MX', 'Parcelas'],
  ['es', 'Parcelas'],
  ['en-US', 'Plots'],
  // Of a language that nothing is translated into.
  ['fr-CA', 'Plots'],
  // Where functions run without a page.
  [undefined, 'Plots'],
])('in that of the browser where it is known: %s', async (browserLanguage, sheet) => {
  expect(await begunIn(browserLanguage)).toBe(sheet);
});

test('in the one that was chosen, whatever the browser has', async () => {
  vi.stubGlobal('location', { reload });
  const { speak } = await import('../../src/entries/keptLanguage');
  expect(speak('es')).toBe(true);
  expect(reload).toHaveBeenCalledOnce();
  expect(await begunIn('en-US')).toBe('Parcelas');
});

test('in that of the browser where nothing can be kept, and the choice says so', async () => {
  vi.stubGlobal('location', { reload });
  vi.stubGlobal('localStorage', undefined);
  const { speak } = await import('../../src/entries/keptLanguage');
  expect(speak('es')).toBe(false);
  expect(reload).not.toHaveBeenCalled();
  expect(await begunIn('es-PE')).toBe('Parcelas');
});
