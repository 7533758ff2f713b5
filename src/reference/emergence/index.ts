/**
 * Days from sowing half an inch deep to emergence, and the share of normal seedlings, at steady soil temperatures, by
 * the kinds of reference/seedStandards. Pumpkin and squash are not in the copies of the table that could be read.
 */
import data from './data.json';

export interface EmergenceKnot {
  readonly celsius: number;
  /** null where it was not tested. */
  readonly days: number | null;
  /** Share of normal seedlings. */
  readonly normal: number;
}

for (const knots of Object.values(data)) {
  knots.forEach(Object.freeze);
  Object.freeze(knots);
}

export const emergence = Object.freeze(data) as Readonly<Partial<Record<string, readonly EmergenceKnot[]>>>;

export const emergenceSource = 'harrington-minges-1954';
