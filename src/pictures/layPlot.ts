/** Where a plot lies on its picture; where its plants would be seen as one, a corner enlarged beside or below it. */
import { textPx } from './lettering';
import {
  betweenRows,
  cornerOf,
  nearestPlants,
  type Corner,
  type Ground,
  type PlotPicture,
} from './plotPicture';
import { measuresAcross } from './sayPlot';

/** For what stands around the plot. */
export const room = { above: 26, below: 24, scale: 26, key: 20, left: 30, right: 22, between: 30 };
/** Of the plot: what a sheet has room for, more where the picture is wider than a sheet's. */
const heights = { leastPx: 320, ofWidth: 0.5 };
/** Of that, plot and corner one below the other have each. */
const half = 0.45;
/** A narrower corner stands below. */
const leastBesidePx = 150;
/** From plant to plant: nearer, they are not told apart; what is enlarged has up to the second. */
const apartPx = { least: 6, clear: 16 };

/** Ground to one scale. */
export interface Laid<Shown extends Ground = Ground> {
  readonly ground: Shown;
  /** Pixels of a foot or metre. */
  readonly scale: number;
  readonly left: number;
  /** Under the heading. */
  readonly down: number;
}

export interface LaidPlot {
  readonly whole: Laid;
  readonly corner: Laid<Corner> | null;
}

export function layPlot(plot: PlotPicture, widthPx: number): LaidPlot {
  const { left } = room;
  const { length, width } = plot;
  const labels = Math.max(0, ...measuresAcross(plot).map(({ label }) => textPx(label)));
  const free = widthPx - left - room.right - labels;
  const tall = Math.max(heights.leastPx, widthPx * heights.ofWidth);
  const whole = (mostPx: number): Laid => ({
    ground: { from: { along: 0, across: 0 }, to: { along: length, across: width } },
    scale: Math.min(free / length, mostPx / width),
    left,
    down: 0,
  });
  const nearest = nearestPlants(plot);
  const corner = (mostPx: { along: number; across: number }, at: { left: number; down: number }) => {
    const twoRows = mostPx.across / (2 * betweenRows(plot));
    const scale = Math.min(Math.max(twoRows, apartPx.least / nearest), apartPx.clear / nearest);
    const most = { along: mostPx.along / scale, across: mostPx.across / scale };
    return { ...at, scale, ground: cornerOf(plot, most) };
  };

  const alone = whole(tall);
  const isParted = nearest * alone.scale >= apartPx.least;
  if (isParted || plot.spread === null) return { whole: alone, corner: null };
  const taken = length * alone.scale + labels + room.right + room.between;
  const beside = free + labels - taken;
  if (beside >= leastBesidePx) {
    const at = { left: left + taken, down: 0 };
    return { whole: alone, corner: corner({ along: beside, across: tall }, at) };
  }
  const above = whole(tall * half);
  const down = width * above.scale + room.below + room.scale;
  return { whole: above, corner: corner({ along: free, across: tall * half }, { left, down }) };
}
