/** The same garden in both languages: other words, and in every cell the same figure. */
import { afterAll, expect, test, vi } from 'vitest';
import type { ReadValue } from '../../src/workbook/port';

afterAll(() => {
  globalThis.cucurbitLanguage = undefined;
});

type Cells = readonly (readonly ReadValue[])[];

/** The demo garden in a workbook of its own, all modules read anew in the language. */
async function filledIn(language: string) {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { functions } = await import('../../src/functions');
  const { createMemoryWorkbook } = await import('../../src/hosts/file/createMemoryWorkbook');
  const { demoFilling } = await import('../../src/templates/demoGarden');
  const { fillSheets } = await import('../../src/workbook/fillSheets');
  const port = createMemoryWorkbook({ functions: [...functions.values()] });
  const fill = () => fillSheets(port, demoFilling, '');
  await fill();
  return { port, fill };
}

/** Its sheets, in the order of the workbook. */
async function sheetsIn(language: string): Promise<readonly (readonly [name: string, cells: Cells])[]> {
  const { port } = await filledIn(language);
  const sheets = await port.sheets();
  return Promise.all(
    sheets.map(
      async ({ name, used }) => [name, used === null ? [] : (await port.read(used)).values] as const,
    ),
  );
}

test.each(['en', 'es'])('sheets that are filled again miss no row of theirs (%s)', async (language) => {
  const { fill } = await filledIn(language);
  expect((await fill()).gone).toEqual([]);
});

/**
 * Headers with a word that is broken, or nearly: a bold letter is wider than the digit that widths are counted in, and
 * the browser's grid broke "Fracción" and "Envasada" in columns of 9.
 */
async function brokenHeadersIn(language: string): Promise<string[]> {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { knownTemplates } = await import('../../src/templates/sheets');
  const columns = knownTemplates.flatMap(({ tables, lists = [] }) =>
    [...tables, ...lists].flatMap((table): readonly { header: string; width: number }[] => table.columns),
  );
  expect(columns.length).toBeGreaterThan(150);
  const isBroken = ({ header, width }: { header: string; width: number }): boolean =>
    header.split(/[ -]/).some((word) => word.length + (word.length < 8 ? 0 : 1) >= width);
  return columns.filter(isBroken).map(({ header }) => header);
}

test.each(['en', 'es'])('no header is broken within a word (%s)', async (language) => {
  expect(await brokenHeadersIn(language)).toEqual([]);
});

/** Of a letter, where any other takes the room of one. */
const narrowLetter = 0.5;
/**
 * Of a column's width, what bold letters fill. The browser's grid cut off three labels after 29.5 to 30 letters in a
 * column of 34, and showed all of one of 28.5.
 */
const lettersInWidth = 0.85;

/** Labels of forms that reach over the cell at their right, which would cut them off. */
async function cutLabelsIn(language: string): Promise<string[]> {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { knownTemplates } = await import('../../src/templates/sheets');
  const { columnWidths } = await import('../../src/workbook/layOut');
  const lines = knownTemplates.flatMap((template) =>
    template.form.map(({ label }) => ({ label, width: columnWidths(template)[0] ?? 0 })),
  );
  expect(lines.length).toBeGreaterThan(50);
  const roomOf = (label: string): number =>
    label.length - (1 - narrowLetter) * (label.match(/[ iíjlrtfI.,:'’¿?()]/g)?.length ?? 0);
  return lines.filter(({ label, width }) => roomOf(label) > lettersInWidth * width).map(({ label }) => label);
}

test.each(['en', 'es'])('no label of a form is cut off (%s)', async (language) => {
  expect(await cutLabelsIn(language)).toEqual([]);
});

/** The longest formula of each table, printed as Excel gets it. */
async function longestFormulasIn(language: string): Promise<[table: string, length: number][]> {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { functionNamespace, knownTemplates } = await import('../../src/templates/sheets');
  const { printFormula } = await import('../../src/workbook/printFormula');
  return knownTemplates
    .flatMap(({ tables }) => tables)
    .map(({ name, columns, rows }) => {
      const contents = rows?.flat() ?? columns.map(({ compute }) => compute && { compute });
      const lengths = contents.map((content) =>
        typeof content === 'object' && content !== null
          ? printFormula(content.compute, { namespace: functionNamespace, table: name, isStored: true })
              .length
          : 0,
      );
      return [name, Math.max(0, ...lengths)];
    });
}

/** Of a formula: Excel specifications and limits, by its vendor; from memory. */
const longestFormula = 8192;

test.each(['en', 'es'])('no formula is longer than Excel takes (%s)', async (language) => {
  const lengths = await longestFormulasIn(language);
  expect(lengths.length).toBeGreaterThan(15);
  expect(lengths.filter(([, length]) => length > longestFormula)).toEqual([]);
});

/** What does not hang on the language: a number, yes or no, that there is a text, the code of an error. */
const figureOf = (value: ReadValue): ReadValue => {
  if (typeof value === 'string') return value === '' ? '' : 'text';
  return typeof value === 'object' && value !== null ? value.error : value;
};

test(
  'a garden filled in Spanish has the figures of the same garden in English',
  { timeout: 120_000 },
  async () => {
    const inEnglish = await sheetsIn('en');
    const inSpanish = await sheetsIn('es');
    expect(inSpanish).toHaveLength(inEnglish.length);
    for (const [index, [name, cells]] of inSpanish.entries()) {
      const [nameInEnglish, cellsInEnglish] = inEnglish[index] ?? ['', []];
      expect(name).not.toBe(nameInEnglish);
      expect(
        cells.map((row) => row.map(figureOf)),
        name,
      ).toEqual(cellsInEnglish.map((row) => row.map(figureOf)));
    }
    const numbers = inSpanish
      .flatMap(([, cells]) => cells.flat())
      .filter((value) => typeof value === 'number');
    expect(numbers.length).toBeGreaterThan(1000);
  },
);
