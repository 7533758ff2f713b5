/** What a picture of a plot is drawn from, and what follows from it before anything is drawn. */
import type { Units } from './sayLength';

/** Things at equal distances [ft or m]. */
interface Evenly {
  readonly first: number;
  readonly apart: number;
  readonly count: number;
}

/** From the corner where rows begin [ft or m]. */
export interface Spot {
  readonly along: number;
  readonly across: number;
}

interface Rows {
  readonly kind: 'rows';
  readonly rowSpacing: number;
  readonly plantSpacing: number;
}

interface Hills {
  readonly kind: 'hills';
  readonly hillSpacing: number;
  readonly rowSpacing: number;
  readonly plantsPerHill: number;
  /** Its plants by their distance from its middle; null where they are too many to be drawn one by one. */
  readonly hill: { readonly radius: number; readonly plants: readonly Spot[] } | null;
}

interface Beds {
  readonly kind: 'beds';
  /** The near edge of each. */
  readonly beds: Evenly;
  readonly bedWidth: number;
  readonly pathWidth: number;
  readonly rowsPerBed: number;
  readonly plantSpacing: number;
}

/** Lengths in feet or metres, plant spacing in inches or centimetres. */
export interface PlotPicture {
  readonly plot: string;
  readonly crop: string;
  readonly units: Units;
  readonly length: number;
  readonly width: number;
  /** As many as `rows` hold. */
  readonly plants: number;
  /** What somebody typed over them in the sheet; null where nobody did. */
  readonly typedPlants: number | null;
  /** Of plants or hills, from the near edge on. */
  readonly rows: readonly { readonly across: number; readonly along: Evenly }[];
  readonly layout: Rows | Hills | Beds;
  readonly pollenizers: number;
  /** Which of the plants they are, row by row from 0; null where plants are too many to be drawn one by one. */
  readonly spread: readonly number[] | null;
}

/** Plants, or hills, in the order in which pollenizers count them. */
export function placesOf({ rows }: Pick<PlotPicture, 'rows'>): Spot[] {
  return rows.flatMap(({ across, along: { first, apart, count } }) =>
    Array.from({ length: count }, (_, i) => ({ along: first + i * apart, across })),
  );
}

/** Every plant. */
export function plantsOf(plot: PlotPicture): Spot[] {
  const places = placesOf(plot);
  if (plot.layout.kind !== 'hills') return places;
  const inHill = plot.layout.hill?.plants ?? [];
  return places.flatMap(({ along, across }) =>
    inHill.map((plant) => ({ along: along + plant.along, across: across + plant.across })),
  );
}

/** Between two rows, or across the only one [ft or m]. */
export function betweenRows({ rows, width }: PlotPicture): number {
  const [first, second] = rows;
  return first === undefined || second === undefined ? width : second.across - first.across;
}

/** How near two plants come to one another [ft or m]. */
export function nearestPlants(plot: PlotPicture): number {
  const [one, other] = (plot.layout.kind === 'hills' ? plot.layout.hill?.plants : undefined) ?? [];
  const inHill =
    one === undefined || other === undefined
      ? Infinity
      : Math.hypot(one.along - other.along, one.across - other.across);
  return Math.min(plot.rows[0]?.along.apart ?? Infinity, betweenRows(plot), inHill);
}

/** What of a plot is drawn [ft or m]. */
export interface Ground {
  readonly from: Spot;
  readonly to: Spot;
}

/** The ground of the first plants or hills of the first rows. */
export interface Corner extends Ground {
  readonly rows: number;
  readonly inRow: number;
}

/** As much of the corner where rows begin as goes into that, at least a plant or hill. */
export function cornerOf(plot: PlotPicture, most: Spot): Corner {
  const { first, apart, count } = plot.rows[0]?.along ?? { first: 0, apart: 0, count: 0 };
  const places = Array.from({ length: count }, (_, i) => first + i * apart);
  const rows = plot.rows.map(({ across }) => across);
  const along = firstOf(places, apart, most.along, plot.length);
  const across = firstOf(rows, betweenRows(plot), most.across, plot.width);
  return {
    from: { along: along.from, across: across.from },
    to: { along: along.to, across: across.to },
    rows: across.count,
    inRow: along.count,
  };
}

/** The first of things in a line, with the ground around each, up to the line's end. */
function firstOf(
  places: readonly number[],
  apart: number,
  most: number,
  end: number,
): { readonly from: number; readonly to: number; readonly count: number } {
  const around = Math.min(apart, most) / 2;
  const from = Math.max(0, (places[0] ?? 0) - around);
  const count = Math.max(1, places.filter((place) => place + around - from <= most).length);
  return { from, to: Math.min(end, (places[count - 1] ?? 0) + around), count };
}

/** Whether it lies there. */
export function isOn({ from, to }: Ground, { along, across }: Spot): boolean {
  return along >= from.along && along <= to.along && across >= from.across && across <= to.across;
}

/** The beds, from edge to edge across the plot; none in other layouts. */
export function bedsOf({ layout }: PlotPicture): { readonly from: number; readonly to: number }[] {
  if (layout.kind !== 'beds') return [];
  const { beds, bedWidth } = layout;
  return Array.from({ length: beds.count }, (_, i) => {
    const from = beds.first + i * beds.apart;
    return { from, to: from + bedWidth };
  });
}
