/** What stands in for a blank cell of a plot: the figure that the Crops sheet has for its crop, typed over or not. */
import { plainWord } from '../workbook/plainWord';
import { isCellError, type ReadValue, type TableRead, type WorkbookPort } from '../workbook/port';
import { cropsTemplate } from '../templates/crops';
import { layouts, plotStandIns } from '../templates/plots';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const words = catalogue.pane.plots;
const { columns, noFigure } = catalogue.sheets.crops;
/** The table that begins with the column. */
const tableOf = (first: string): string =>
  cropsTemplate.tables.find((table) => table.columns[0]?.header === first)?.name ?? '';
const figuresTable = tableOf(columns.crop);
const namesTable = tableOf(columns.name);

export interface CropFigures {
  readonly figures: TableRead | null;
  readonly names: TableRead | null;
}

/** @throws HostError */
export async function readCropFigures(port: WorkbookPort): Promise<CropFigures> {
  return {
    figures: await port.readTable(figuresTable),
    names: await port.readTable(namesTable),
  };
}

interface Asked {
  readonly header: string;
  readonly crop: string;
  /** As it reads in the sheet; blank for rows. */
  readonly layout: string;
  readonly say: (value: ReadValue) => string;
}

/** "" where nothing stands in, or the crop is not known. */
export function sayStandIn(sheet: CropFigures, { header, crop, layout, say }: Asked): string {
  const [rows] = layouts;
  const standIn = plotStandIns.find(
    (each) => each.header === header && each.layouts.includes(layout === '' ? rows : layout),
  );
  const found = standIn === undefined ? null : figureOf(sheet, crop, standIn.figure);
  if (found === null) return '';
  const { value, takenAs } = found;
  if (value === noFigure) return fill(words.noStandIn, { crop: takenAs });
  return value === null || value === '' || isCellError(value)
    ? ''
    : fill(words.standsIn, { value: say(value), crop: takenAs });
}

/** null where the crop is not known. */
export function figureOf(
  { figures, names }: CropFigures,
  crop: string,
  figure: string,
): { readonly takenAs: string; readonly value: ReadValue } | null {
  const takenAs = names === null ? null : cellFor(names, columns.name, crop, columns.crop);
  if (figures === null || typeof takenAs !== 'string') return null;
  return { takenAs, value: cellFor(figures, columns.crop, takenAs, figure) };
}

/** Each crop that has figures, by its name in the Crops sheet. */
export function cropsOf({ figures }: CropFigures): readonly string[] {
  const at = figures?.headers.indexOf(columns.crop) ?? -1;
  return figures?.rows.map((cells) => String(cells[at] ?? '')).filter((name) => name !== '') ?? [];
}

/** The cell of a table's column in the row that has the key; names are one whatever their case and accents. */
function cellFor(table: TableRead, keyHeader: string, key: string, header: string): ReadValue {
  const keyColumn = table.headers.indexOf(keyHeader);
  const plain = plainWord(key);
  const row = table.rows.find((cells) => plainWord(String(cells[keyColumn])) === plain);
  return row?.[table.headers.indexOf(header)] ?? null;
}
