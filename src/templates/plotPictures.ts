/** The sheet of the plots' pictures: each in a place of its own beside a list that says which are still true. */
import { native, when } from '../workbook/expressions';
import { findSheet, takeFreeName } from '../workbook/fillSheets';
import { layOut } from '../workbook/layOut';
import type { CellContent, Expression, NewSheet, WorkbookPort } from '../workbook/port';
import { textOf } from '../workbook/readInputs';
import type { SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import type { SheetPicture } from './weatherPictures';

const words = catalogue.plotPictures.sheet;

/** The plots that have a picture, under one another; the state stands to the right of each. */
const listName = 'PLOT_PICTURES';
/** Plots that can have one: judgement. */
const mostPictures = 200;

const template: SheetTemplate = {
  id: idInLanguage('plotPictures'),
  version: 1,
  sheet: words.name,
  title: words.name,
  lead: words.lead,
  cautions: [],
  form: [],
  tables: [],
  optional: true,
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
};
const widths = [20, 14, 3];
/** To the right of the list. */
const pictureColumn = widths.length;
const headerRow = template.lead.length + 2;

/** A row is at least as high, in any program. */
const rowPx = 20;
/** Each picture has as many, so that one takes the place of an older one. */
const rowsOfPicture = 30;
export const mostPicturePx = rowsOfPicture * rowPx;

export interface DrawnPlot extends Omit<SheetPicture, 'name'> {
  readonly plot: string;
  /** Whether the sheets still say what is drawn. */
  readonly stands: Expression;
}

export interface PlotPictureState {
  readonly plot: string;
  /** Whether its picture shows the plot as it stands. */
  readonly isCurrent: boolean;
}

/** What the list in the sheet says, in its order; none where there is no such sheet. @throws HostError */
export async function readPlotPictures(port: WorkbookPort): Promise<readonly PlotPictureState[]> {
  const area = await port.locate(listName);
  if (area === null) return [];
  const { values } = await port.read({ ...area, columns: 2 });
  let used = values.length;
  while (used > 0 && textOf(values[used - 1]?.[0] ?? null) === '') used -= 1;
  return values.slice(0, used).map(([name = null, state]) => ({
    plot: textOf(name),
    isCurrent: state !== words.older,
  }));
}

/**
 * Puts the pictures into their sheet as one change, each in place of the plot's older one or under the others.
 *
 * @param from the Plots sheet as it was when they were drawn: refused when it has changed since
 * @returns the name of the sheet, null where it has no more room @throws HostError; then nothing was written
 */
export async function putPlotPictures(
  port: WorkbookPort,
  drawn: readonly DrawnPlot[],
  from: { readonly sheet: string; readonly stamp: string },
  title: string,
): Promise<string | null> {
  const there = await port.sheets();
  const list = await port.locate(listName);
  const ours = list?.sheet === findSheet(there, template)?.name ? list : null;
  const names = ours === null ? [] : (await readPlotPictures(port)).map(({ plot }) => plot.toLowerCase());
  const places = drawn.map(({ plot }) => {
    const key = plot.toLowerCase();
    return names.includes(key) ? names.indexOf(key) : names.push(key) - 1;
  });
  if (names.length > mostPictures) return null;
  const taken = new Set(there.map(({ name }) => name.toLowerCase()));
  const sheet = ours?.sheet ?? takeFreeName(template.sheet, taken);
  const first = ours?.row ?? headerRow + 1;
  const cells = drawn.map(({ plot, stands }, i) => ({
    row: first + (places[i] ?? 0),
    column: ours?.column ?? 0,
    contents: [[plot, stateOf(stands)]],
  }));
  await port.apply({
    title,
    expect: [from, ...(ours === null ? [] : [{ sheet, stamp: await port.stamp(sheet) }])],
    newSheets: ours === null ? [newSheet(sheet, cells)] : [],
    cells: ours === null ? [] : cells.map((each) => ({ ...each, sheet })),
    tableRows: [],
    pictures: drawn.map(({ plot, png, widthPx, heightPx, altText }, i) => ({
      name: `plot ${plot}`,
      sheet,
      row: first + (places[i] ?? 0) * rowsOfPicture,
      column: (ours?.column ?? 0) + pictureColumn,
      png,
      widthPx,
      heightPx,
      altText,
    })),
    marks: [],
  });
  return sheet;
}

function stateOf(stands: Expression): CellContent {
  return { compute: when(native('IFERROR', stands, false), words.stands, words.older) };
}

function newSheet(name: string, cells: NewSheet['blocks']): NewSheet {
  const made = layOut(template, name, []);
  return {
    ...made,
    blocks: [...made.blocks, { row: headerRow, column: 0, contents: [[words.plot, words.state]] }, ...cells],
    dressings: [
      ...made.dressings,
      { row: headerRow, column: 0, rows: 1, columns: 2, role: 'header', format: 'general' },
      { row: headerRow + 1, column: 0, rows: mostPictures, columns: 1, role: 'plain', format: 'text' },
    ],
    names: { [listName]: [headerRow + 1, 0, mostPictures] },
    widths,
  };
}
