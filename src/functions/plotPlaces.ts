/** What the picture of a plot shows: its cells in, where everything stands out, a refusal as its advice. */
import { spreadPollenizers } from '../calc/flowers/spreadPollenizers';
import { checkCount } from '../calc/limits/limits';
import { bedsInPlot } from '../calc/plants/bedsInPlot';
import { hillRowsInPlot } from '../calc/plants/hillRowsInPlot';
import { placeInBeds } from '../calc/plants/placeInBeds';
import { placeInHill } from '../calc/plants/placeInHill';
import { placeInHills } from '../calc/plants/placeInHills';
import { placeInRows } from '../calc/plants/placeInRows';
import { plantsInBeds } from '../calc/plants/plantsInBeds';
import { plantsInHills } from '../calc/plants/plantsInHills';
import { plantsInRows } from '../calc/plants/plantsInRows';
import { rowsInPlot } from '../calc/plants/rowsInPlot';
import { unitSystems, type UnitSystem, type UnitSystemName } from '../calc/units/units';
import { answering } from './answering';
import { number, optionalNumber } from './parameters';

export interface PlotAsked {
  readonly layout: 'rows' | 'hills' | 'beds';
  readonly units: UnitSystemName;
  /** What stands in the plot's cells, or for a blank one, by the name of the functions' argument. */
  readonly cells: Readonly<Record<string, unknown>>;
  /** How many of its plants are pollenizers. */
  readonly pollenizers: number;
}

/** Beyond it a picture draws rows as lines: judgement. */
const mostMarks = 10_000;

type Cells = PlotAsked['cells'];
const cell = (cells: Cells, name: string): number => number(name).read(cells[name]);

export const plotPlaces = answering(({ layout, units: system, cells, pollenizers }: PlotAsked) => {
  const found = layouts[layout](cells, unitSystems[system]);
  return {
    ...found,
    units: system,
    length: cell(cells, 'length'),
    width: cell(cells, 'width'),
    pollenizers,
    /** Which of the plants they are, row by row from 0; null where plants are too many to be drawn one by one. */
    spread: found.plants > mostMarks ? null : spreadPollenizers(found.plants, pollenizers),
  };
});

const layouts = {
  rows: (cells: Cells, units: UnitSystem) => {
    const [rowSpacing, plantSpacing] = [cell(cells, 'row_spacing'), cell(cells, 'plant_spacing')];
    const asked = [cell(cells, 'length'), cell(cells, 'width'), rowSpacing, plantSpacing, units] as const;
    return {
      plants: plantsInRows(...asked),
      rows: placeInRows(rowsInPlot(...asked)),
      layout: { kind: 'rows' as const, rowSpacing, plantSpacing },
    };
  },
  hills: (cells: Cells, units: UnitSystem) => {
    const hillSpacing = cell(cells, 'hill_spacing');
    const plantsPerHill = checkCount('plants_per_hill', cell(cells, 'plants_per_hill'), 'plants', {
      atLeast: 1,
    });
    const rowSpacing = optionalNumber('row_spacing').read(cells['row_spacing']);
    const [length, width] = [cell(cells, 'length'), cell(cells, 'width')];
    const plot = hillRowsInPlot(length, width, hillSpacing, units, undefined, rowSpacing);
    const plants = plantsInHills(length, width, hillSpacing, plantsPerHill, units, undefined, rowSpacing);
    return {
      plants,
      rows: placeInHills(plot),
      layout: {
        kind: 'hills' as const,
        hillSpacing,
        rowSpacing: plot.rows.apart,
        plantsPerHill,
        hill: plants > mostMarks ? null : placeInHill(plantsPerHill, plot, units),
      },
    };
  },
  beds: (cells: Cells, units: UnitSystem) => {
    const [bedWidth, pathWidth] = [cell(cells, 'bed_width'), cell(cells, 'path_width')];
    const [rowsPerBed, plantSpacing] = [cell(cells, 'rows_per_bed'), cell(cells, 'plant_spacing')];
    const [length, width] = [cell(cells, 'length'), cell(cells, 'width')];
    const asked = [length, width, bedWidth, pathWidth, rowsPerBed, plantSpacing, units] as const;
    const plot = bedsInPlot(...asked);
    return {
      plants: plantsInBeds(...asked),
      rows: placeInBeds(plot),
      layout: {
        kind: 'beds' as const,
        beds: plot.beds,
        bedWidth,
        pathWidth,
        rowsPerBed: plot.rowsInBed.count,
        plantSpacing,
      },
    };
  },
};
