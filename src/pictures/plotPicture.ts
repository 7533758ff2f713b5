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

/** The beds, from edge to edge across the plot; none in other layouts. */
export function bedsOf({ layout }: PlotPicture): { readonly from: number; readonly to: number }[] {
  if (layout.kind !== 'beds') return [];
  const { beds, bedWidth } = layout;
  return Array.from({ length: beds.count }, (_, i) => {
    const from = beds.first + i * beds.apart;
    return { from, to: from + bedWidth };
  });
}
