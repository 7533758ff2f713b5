/** What stands in for a blank cell of a plot: the figure that the Crops sheet has for its crop, typed over or not. */
import { isCellError, type ReadValue, type TableRead, type WorkbookPort } from '../workbook/port';
import { cropsTemplate } from '../templates/crops';
import { plotStandIns } from '../templates/plots';
import { english } from '../texts/english';
import { fill } from '../texts/fill';

const words = english.pane.plots;
const { columns, noFigure } = english.sheets.crops;
const [figuresTable, namesTable] = cropsTemplate.tables.map(({ name }) => name);

export interface CropFigures {
  readonly figures: TableRead | null;
  readonly names: TableRead | null;
}

/** @throws HostError */
export async function readCropFigures(port: WorkbookPort): Promise<CropFigures> {
  return {
    figures: await port.readTable(figuresTable ?? ''),
    names: await port.readTable(namesTable ?? ''),
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
export function sayStandIn({ figures, names }: CropFigures, { header, crop, layout, say }: Asked): string {
  const [rows] = english.sheets.plots.layouts;
  const standIn = plotStandIns.find(
    (each) => each.header === header && each.layouts.includes(layout === '' ? rows : layout),
  );
  const takenAs = names === null ? null : cellFor(names, columns.name, crop, columns.crop);
  if (figures === null || standIn === undefined || typeof takenAs !== 'string') return '';
  const value = cellFor(figures, columns.crop, takenAs, standIn.figure);
  if (value === noFigure) return fill(words.noStandIn, { crop: takenAs });
  return value === null || value === '' || isCellError(value)
    ? ''
    : fill(words.standsIn, { value: say(value), crop: takenAs });
}

/** The cell of a table's column in the row that has the key; names are one whatever their case. */
function cellFor(table: TableRead, keyHeader: string, key: string, header: string): ReadValue {
  const keyColumn = table.headers.indexOf(keyHeader);
  const row = table.rows.find((cells) => String(cells[keyColumn]).toLowerCase() === key.toLowerCase());
  return row?.[table.headers.indexOf(header)] ?? null;
}
