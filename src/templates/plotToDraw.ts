/** What a picture of a plot is drawn from: its line in the Plots sheet, with the crop's figures for blanks. */
import { input, lookUp, native } from '../workbook/expressions';
import { isCellError, type Expression, type ReadValue } from '../workbook/port';
import { textOf } from '../workbook/readInputs';
import type { Line } from '../workbook/readLines';
import { catalogue } from '../texts/catalogue';
import { isStill } from './isStill';
import { layouts, plotStandIns, plotsTable, type Layout } from './plots';

const { columns: headers, remarks } = catalogue.sheets.plots;
const { noFigure, columns: cropColumns } = catalogue.sheets.crops;
const words = catalogue.plotPictures.refused;

export interface PlotToDraw {
  readonly plot: string;
  readonly crop: string;
  readonly asked: {
    readonly layout: Layout;
    readonly units: 'us' | 'metric';
    /** By the functions' names of their arguments. */
    readonly cells: Readonly<Record<string, ReadValue>>;
    readonly pollenizers: number;
  };
  /** The plants that somebody typed over the formula; null where nobody did. */
  readonly typedPlants: number | null;
  /** Whether the sheets still say what is drawn. */
  readonly stands: Expression;
}

/** The crop's figure that a header stands for when its cell is blank; null where the crop is not known. */
export type FigureOf = (
  crop: string,
  figure: string,
) => { readonly takenAs: string; readonly value: ReadValue } | null;

/** Each cell that places plants, as the functions call it. */
const argumentOf = {
  length: 'length',
  width: 'width',
  rowSpacing: 'row_spacing',
  plantSpacing: 'plant_spacing',
  hillSpacing: 'hill_spacing',
  plantsPerHill: 'plants_per_hill',
  bedWidth: 'bed_width',
  pathWidth: 'path_width',
  rowsPerBed: 'rows_per_bed',
} as const;
const placing = Object.entries(argumentOf) as [keyof typeof argumentOf, string][];

/** All that the picture shows, and what it hangs on. */
const shown = [
  headers.crop,
  headers.layout,
  ...placing.map(([key]) => headers[key]),
  headers.plants,
  headers.pollenizers,
].map(({ header }) => header);

/** @returns the plot, or the advice of what keeps it from being drawn */
export function plotToDraw(
  { values, formulas }: Line,
  units: 'us' | 'metric',
  figureOf: FigureOf,
): { readonly value: PlotToDraw } | { readonly wrong: string } {
  const name = values[headers.plot.header] ?? null;
  const crop = textOf(values[headers.crop.header] ?? null);
  const [rows] = layouts;
  const typedLayout = textOf(values[headers.layout.header] ?? null).toLowerCase();
  const layout = typedLayout === '' ? rows : layouts.find((each) => each === typedLayout);
  const plants = values[headers.plants.header] ?? null;
  const pollenizers = values[headers.pollenizers.header] ?? null;
  if (textOf(name) === '' || isCellError(name) || name === null) return { wrong: words.noName };
  if (crop === '') return { wrong: remarks.noCrop };
  if (layout === undefined) return { wrong: remarks.layoutUnknown };
  // As Plants refuses, so that no picture stands for a number that is none.
  if (isCellError(plants)) return { wrong: plants.message ?? words.plants };
  if (isCellError(pollenizers)) return { wrong: pollenizers.message ?? words.pollenizers };

  const drawnBy: Expression[] = [];
  const cellOf = (header: string): ReadValue => {
    const typed = values[header] ?? null;
    if (typed !== null && typed !== '') return typed;
    const standIn = plotStandIns.find((each) => each.header === header && each.layouts.includes(layout));
    const found = standIn === undefined ? null : figureOf(crop, standIn.figure);
    if (standIn === undefined || found === null) return null;
    drawnBy.push(
      isStill(lookUp({ value: found.takenAs }, 'Crops', cropColumns.crop, standIn.figure), found.value),
    );
    return found.value === noFigure ? null : found.value;
  };
  const cells = Object.fromEntries(placing.map(([key, argument]) => [argument, cellOf(headers[key].header)]));
  const isTyped = typeof plants === 'number' && !formulas.has(headers.plants.header);
  return {
    value: {
      plot: textOf(name),
      crop,
      asked: { layout, units, cells, pollenizers: typeof pollenizers === 'number' ? pollenizers : 0 },
      typedPlants: isTyped ? plants : null,
      stands: native(
        'AND',
        isStill(input('UNITS'), units),
        ...shown.map((header) =>
          isStill(
            lookUp({ value: name }, plotsTable.name, headers.plot.header, header),
            values[header] ?? null,
          ),
        ),
        ...drawnBy,
      ),
    },
  };
}
