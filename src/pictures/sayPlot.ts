/** The picture of a plot in words and figures. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Corner, PlotPicture } from './plotPicture';
import { sayCount, sayLength, saySpacing } from './sayLength';

const words = catalogue.plotPictures;
const { measures } = words;

/** A longer name would run out of the picture. */
const mostLetters = 60;

export function titleOf({ plot, crop }: PlotPicture): string {
  return fill(words.title, { plot: cut(plot), crop: cut(crop) });
}

function cut(name: string): string {
  return name.length <= mostLetters ? name : fill(words.cut, { start: name.slice(0, mostLetters) });
}

export function saySize({ length, width, units }: PlotPicture): string {
  return fill(words.size, { length: sayLength(length, units), width: sayLength(width, units) });
}

/** Whole sentences. @param corner that is enlarged */
export function sayPlants(plot: PlotPicture, corner: Corner | null): string[] {
  const { plants, typedPlants, pollenizers, spread } = plot;
  const sentence = spread === null ? words.pollenizersNotShown : words.pollenizers;
  return [
    sayLayout(plot),
    ...(pollenizers === 0
      ? []
      : [fill(sentence, { count: pollenizers, pollenizers: sayCount(pollenizers) })]),
    ...(corner === null ? [] : [sayCorner(plot, corner)]),
    ...(spread === null ? [fill(words.asLines, { plants: sayCount(plants) })] : []),
    ...(typedPlants === null ? [] : [fill(words.typedOver, { typed: sayCount(typedPlants, 2) })]),
  ];
}

function sayCorner({ layout }: PlotPicture, { rows, inRow }: Corner): string {
  const { hills, plants } = words.corner;
  return fill(layout.kind === 'hills' ? hills : plants, { rows: sayCount(rows), inRow: sayCount(inRow) });
}

function sayLayout({ layout, plants, rows, units }: PlotPicture): string {
  const inRow = sayCount(rows[0]?.along.count ?? 0);
  const counted = { count: plants, plants: sayCount(plants), inRow, rows: sayCount(rows.length) };
  if (layout.kind === 'hills') {
    return fill(words.hills, {
      ...counted,
      hills: sayCount(plants / layout.plantsPerHill),
      perHill: sayCount(layout.plantsPerHill),
      rowSpacing: sayLength(layout.rowSpacing, units),
      hillSpacing: sayLength(layout.hillSpacing, units),
    });
  }
  const plantSpacing = saySpacing(layout.plantSpacing, units);
  if (layout.kind === 'rows') {
    return fill(words.rows, { ...counted, plantSpacing, rowSpacing: sayLength(layout.rowSpacing, units) });
  }
  return fill(words.beds, {
    ...counted,
    plantSpacing,
    beds: sayCount(layout.beds.count),
    rows: sayCount(layout.rowsPerBed),
    bedWidth: sayLength(layout.bedWidth, units),
    pathWidth: sayLength(layout.pathWidth, units),
  });
}

/** Each measure with its name. */
export function listMeasures(plot: PlotPicture): string[][] {
  const { layout, plants, pollenizers, rows, units } = plot;
  const length = (value: number): string => sayLength(value, units);
  return [
    [measures.plants, sayCount(plants)],
    [measures.pollenizers, sayCount(pollenizers)],
    [measures.length, length(plot.length)],
    [measures.width, length(plot.width)],
    [measures.rows, sayCount(rows.length)],
    [measures.inRow, sayCount(rows[0]?.along.count ?? 0)],
    ...(layout.kind === 'hills'
      ? [
          [measures.hills, sayCount(plants / layout.plantsPerHill)],
          [measures.perHill, sayCount(layout.plantsPerHill)],
          [measures.hillSpacing, length(layout.hillSpacing)],
          [measures.rowSpacing, length(layout.rowSpacing)],
        ]
      : [[measures.plantSpacing, saySpacing(layout.plantSpacing, units)]]),
    ...(layout.kind === 'rows' ? [[measures.rowSpacing, length(layout.rowSpacing)]] : []),
    ...(layout.kind === 'beds'
      ? [
          [measures.beds, sayCount(layout.beds.count)],
          [measures.rowsPerBed, sayCount(layout.rowsPerBed)],
          [measures.bedWidth, length(layout.bedWidth)],
          [measures.pathWidth, length(layout.pathWidth)],
        ]
      : []),
  ];
}

/** A measure that is drawn beside the plot, from one place to another [ft or m]. */
export interface Measure {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** Along the last row. */
export function measuresAlong({ rows, layout, units }: PlotPicture): Measure[] {
  const { first, apart, count } = rows[rows.length - 1]?.along ?? { first: 0, apart: 0, count: 0 };
  if (count < 2) return [];
  const label =
    layout.kind === 'hills'
      ? fill(words.apart.hills, { spacing: sayLength(layout.hillSpacing, units) })
      : fill(words.apart.plants, { spacing: saySpacing(layout.plantSpacing, units) });
  return [{ from: first, to: first + apart, label }];
}

/** Across the plot: between the first rows, or the first bed and path. */
export function measuresAcross({ rows, layout, units }: PlotPicture): Measure[] {
  if (layout.kind !== 'beds') {
    const [first, second] = rows;
    if (first === undefined || second === undefined) return [];
    return [{ from: first.across, to: second.across, label: sayLength(layout.rowSpacing, units) }];
  }
  const { beds, bedWidth, pathWidth } = layout;
  const bed = { from: beds.first, to: beds.first + bedWidth };
  return [
    { ...bed, label: fill(words.bed, { width: sayLength(bedWidth, units) }) },
    ...(beds.count < 2 || pathWidth === 0
      ? []
      : [
          {
            from: bed.to,
            to: bed.to + pathWidth,
            label: fill(words.path, { width: sayLength(pathWidth, units) }),
          },
        ]),
  ];
}
