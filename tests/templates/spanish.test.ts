/** The same garden in both languages: other words, and in every cell the same figure. */
import { afterAll, expect, test, vi } from 'vitest';
import type { ReadValue, WorkbookPort } from '../../src/workbook/port';
import type { InputRow, SheetTemplate } from '../../src/workbook/template';

afterAll(() => {
  globalThis.cucurbitLanguage = undefined;
});

type Cells = readonly (readonly ReadValue[])[];

/** The demo garden in a workbook of its own, all modules read anew in the language. */
async function filledIn(
  language: string,
  made: (template: SheetTemplate) => SheetTemplate = (own) => own,
  plots?: readonly InputRow[],
) {
  globalThis.cucurbitLanguage = language;
  vi.resetModules();
  const { functions } = await import('../../src/functions');
  const { createMemoryWorkbook } = await import('../../src/hosts/file/createMemoryWorkbook');
  const { demoFilling } = await import('../../src/templates/demoGarden');
  const { fillSheets } = await import('../../src/workbook/fillSheets');
  const port = createMemoryWorkbook({ functions: [...functions.values()] });
  const fill = () => fillSheets(port, demoFilling, '');
  const { plotsTemplate } = await import('../../src/templates/plots');
  const requests = demoFilling.map((request) => ({
    ...request,
    template: made(request.template),
    inputs: request.template.id === plotsTemplate.id ? (plots ?? request.inputs) : request.inputs,
  }));
  await fillSheets(port, requests, '');
  return { port, fill };
}

/** Its sheets, in the order of the workbook. */
async function sheetsIn(language: string): Promise<readonly (readonly [name: string, cells: Cells])[]> {
  return cellsOf((await filledIn(language)).port);
}

async function cellsOf(port: WorkbookPort): Promise<readonly (readonly [name: string, cells: Cells])[]> {
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

test(
  'sheets of an earlier version, in which crops have their English names, are given the Spanish ones',
  { timeout: 120_000 },
  async () => {
    const { port, fill } = await filledIn('es', asOnce);
    const { demoFilling } = await import('../../src/templates/demoGarden');
    const { readFilling } = await import('../../src/workbook/readFilling');
    const { functions } = await import('../../src/functions');
    const { createMemoryWorkbook } = await import('../../src/hosts/file/createMemoryWorkbook');
    expect((await port.readTable('CropPrices'))?.rows[1]?.[0]).toBe('slicing cucumber');
    // What was typed beside a name goes along when such a plan is opened.
    const opened = await readFilling(
      { ...port, daysToAdd: 0 },
      demoFilling.map(({ template }) => template),
      () => createMemoryWorkbook({ functions: [...functions.values()] }),
    );
    expect(opened?.requests.map(({ template }) => template)).toEqual(
      demoFilling.map(({ template }) => template),
    );
    // And all of it is there after a refresh of the sheets themselves.
    expect((await fill()).gone).toEqual([]);
    const refreshed = await cellsOf(port);
    expect(refreshed).toEqual(await sheetsIn('es'));
  },
);

/** The templates as they were while the names of crops were English in every language. */
function asOnce(template: SheetTemplate): SheetTemplate {
  return {
    ...template,
    tables: template.tables.map((table) => {
      const once = table.columns.map(
        ({ formerly = {} }) => new Map(Object.entries(formerly).map(([then, now]) => [now, then])),
      );
      const rows = table.rows?.map((row) =>
        row.map((cell, column) => (typeof cell === 'string' ? (once[column]?.get(cell) ?? cell) : cell)),
      );
      return { ...table, rows: rows ?? null };
    }),
  };
}

test('a crop typed in either language, with or without accents, is the Spanish one, and an unknown one is told', async () => {
  const { port } = await filledIn('es', (own) => own, [
    { Parcela: 'A', Cultivo: 'melon chino' },
    { Parcela: 'B', Cultivo: 'butternut' },
    { Parcela: 'C', Cultivo: 'Patilla' },
    { Parcela: 'D', Cultivo: 'zapayo' },
  ]);
  const plots = await port.readTable('Plots');
  const takenAs = plots?.rows.map((row) => row[plots.headers.indexOf('Tomado como')]);
  expect(takenAs).toEqual([
    'melón',
    'calabaza de invierno',
    'sandía',
    { error: '#N/A', message: expect.stringContaining('zapallo') as string },
  ]);
});

test('in the Spanish calendar a crop has its name of the sheets, and its days from pick to pick', async () => {
  const { port } = await filledIn('es');
  const { makeCalendar } = await import('../../src/templates/makeCalendar');
  const { calendarTasks } = await import('../../src/functions/calendarTasks');
  await makeCalendar(port, calendarTasks, '');
  const calendar = await port.readTable('Calendar');
  const [plot, crop, task, remark] = ['Parcela', 'Cultivo', 'Tarea', 'Observación'].map(
    (header) => calendar?.headers.indexOf(header) ?? -1,
  ) as [number, number, number, number];
  const pick = calendar?.rows.find((row) => row[plot] === 'Arroyo 1' && row[task] === 'Primer corte');
  expect(pick?.[crop]).toBe('pepino');
  // NC State AG-552 has cucumbers picked every 2 to 3 days; the Crops sheet has the middle, as a whole number.
  expect(pick?.[remark]).toMatch(/^Cada 3 días: 2\.3 cortes por semana/);
});

test('what is clear of pollen is said in Spanish, and Notes is silent of it', async () => {
  const { port } = await filledIn('es');
  const plots = await port.readTable('Plots');
  const [keepApart, notes] = ['Separar', 'Notas'].map((header) =>
    plots?.rows.map((row) => String(row[plots.headers.indexOf(header)])),
  );
  expect(keepApart).toContain('libre');
  expect(keepApart).not.toContain('clear');
  expect(notes?.filter((note) => /^(?:libre|clear)\b/.test(note))).toEqual([]);
  const inEnglish = await (await filledIn('en')).port.readTable('Plots');
  expect(inEnglish?.rows.map((row) => row[inEnglish.headers.indexOf('Keep apart')] === 'clear')).toEqual(
    keepApart?.map((said) => said === 'libre'),
  );
});

test.each(['en', 'es'])(
  'every task of the calendar stands on one line of its column (%s)',
  async (language) => {
    const { port } = await filledIn(language);
    const { makeCalendar } = await import('../../src/templates/makeCalendar');
    const { calendarTasks } = await import('../../src/functions/calendarTasks');
    const { calendarTable } = await import('../../src/templates/calendar');
    await makeCalendar(port, calendarTasks, '');
    const column = calendarTable.columns[4];
    const calendar = await port.readTable('Calendar');
    const tasks =
      calendar?.rows.map((row) => String(row[calendar.headers.indexOf(column?.header ?? '')])) ?? [];
    expect(tasks.some((task) => / 1 (?:of|de) \d$/.test(task))).toBe(true);
    expect(tasks.filter((task) => task.length > (column?.width ?? 0))).toEqual([]);
  },
);

test('in Spanish sheets no crop has its English name but in the list of names that are understood', async () => {
  const { crops } = await import('../../src/reference/crops');
  // A word of both languages tells nothing.
  const english = new Set(
    crops.flatMap(({ name, spanishNames }) => (spanishNames.includes(name) ? [] : [name])),
  );
  const said = (await sheetsIn('es')).flatMap(([, cells]) => {
    const names = cells.findIndex(([first]) => first === 'Nombre');
    return (names < 0 ? cells : cells.slice(0, names)).flat();
  });
  expect(said.filter((value) => english.has(String(value)))).toEqual([]);
  expect(said).toContain('sandía sin semilla');
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
