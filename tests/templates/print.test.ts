/** How our sheets come out on paper, worked out from their widths. */
import { describe, expect, test } from 'vitest';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { isIndented, looks } from '../../src/workbook/appearance';
import { layOut } from '../../src/workbook/layOut';

/** Stands where a figure would: its column is one of figures. */
const { noFigure } = english.sheets.crops;

const sheets = allTemplates.map((template) => layOut(template, template.sheet, []));

/** Smaller type is hard to read in a field: common practice, no source. */
const leastPt = 6;
const pointsPerInch = 72;
const marginsInches = 0.8;
/** Of letter and A4. */
const papers = [
  { name: 'letter', long: 11, short: 8.5 },
  { name: 'A4', long: 11.69, short: 8.27 },
];

/** As .xlsx stores widths: a digit of the usual font has 7 pixels, a cell 5 beside its text; 96 pixels an inch. */
const pointsOf = (characters: number): number => ((characters * 7 + 5) * pointsPerInch) / 96;

/** Sheets of paper side by side; a column is never split. */
function pagesWide(widths: readonly number[], repeated: number, room: number): number {
  let pages = 1;
  let used = 0;
  for (const width of widths) {
    if (used + width > room) {
      pages += 1;
      used = repeated;
    }
    used += width;
  }
  return pages;
}

describe.each(sheets.map((sheet) => [sheet.name, sheet] as const))('%s', (_, sheet) => {
  test.each(papers)('is legible on $name', ({ long, short }) => {
    const widths = sheet.widths.map(pointsOf);
    const repeated = sheet.page.repeatColumns === null ? 0 : (widths[0] ?? 0);
    const scale = leastPt / looks.plain.sizePt;
    const side = sheet.page.landscape ? long : short;
    const room = ((side - marginsInches) * pointsPerInch) / scale;
    expect(pagesWide(widths, repeated, room)).toBeLessThanOrEqual(sheet.page.pagesWide);
  });

  test('has a title that fits into the column, where every page repeats it', () => {
    const title = String(sheet.blocks[0]?.contents[0]?.[0]);
    if (sheet.page.repeatColumns === null) return expect(title).not.toBe('');
    const asWideAs = (title.length * looks.title.sizePt) / looks.plain.sizePt;
    expect(asWideAs).toBeLessThanOrEqual(sheet.widths[0] ?? 0);
  });

  test('repeats the headers of the table that goes on over its pages: the last one, and none in Budget', () => {
    const last = sheet.tables.at(-1);
    if (last === undefined || sheet.name === 'Budget') return expect(sheet.page.repeatRows).toBeNull();
    // The units stand above the headers, and above the days of Weeks their months.
    const above = sheet.name === 'Weeks' ? 2 : 1;
    expect(sheet.page.repeatRows).toEqual([last.row - above, last.row]);
  });

  test('has no text hard against the figure to its left', () => {
    // Where two dressings meet, the later one holds.
    const dressings = [...sheet.dressings].reverse();
    const dressOf = (row: number, column: number) =>
      dressings.find(
        (one) =>
          row >= one.row &&
          row < one.row + one.rows &&
          column >= one.column &&
          column < one.column + one.columns,
      );
    const standsLeft = (text: string, row: number, column: number): string[] => {
      const own = dressOf(row, column);
      const before = dressOf(row, column - 1);
      if (own === undefined || before === undefined || looks[own.role].centred) return [];
      const isBesideFigure = looks[before.role].border && !looks[before.role].centred && !isIndented(before);
      return isBesideFigure && !isIndented(own) ? [text] : [];
    };
    const texts = sheet.blocks.flatMap((block) =>
      block.contents.flatMap((cells, i) =>
        cells.flatMap((cell, j) =>
          typeof cell === 'string' && cell !== '' ? standsLeft(cell, block.row + i, block.column + j) : [],
        ),
      ),
    );
    expect(texts.filter((text) => text !== noFigure)).toEqual([]);
  });

  test('has no text but its title in a column that every page repeats', () => {
    const texts = sheet.dressings.filter(({ role }) => ['lead', 'caution', 'label'].includes(role));
    expect(texts).not.toEqual([]);
    const [first, last] = sheet.page.repeatColumns ?? [-1, -1];
    expect(texts.filter(({ column }) => column >= first && column <= last)).toEqual([]);
  });
});
