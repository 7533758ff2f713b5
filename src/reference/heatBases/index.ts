/**
 * Temperatures between which a crop gathers heat, and the method they were published with. Where sources differ on a
 * crop each has its row, the one that was tried on first pick before the others.
 */
import data from './data.json';

/** The same temperature in both scales, each as published or rounded from the other. */
export interface InBothScales {
  readonly F: number;
  readonly C: number;
}

export interface HeatBase {
  /** As in reference/crops. */
  readonly crop: string;
  readonly base: InBothScales;
  /** null where none is given. */
  readonly ceiling: InBothScales | null;
  readonly method: string;
  /** A key of reference/sources. */
  readonly ground: string;
}

for (const row of data) {
  Object.freeze(row.base);
  Object.freeze(row.ceiling);
  Object.freeze(row);
}

export const heatBases: readonly HeatBase[] = Object.freeze(data);
