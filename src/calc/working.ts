/**
 * The working of a calculation, recorded by the same lines that compute it. A calculation takes an optional
 * recorder as its last argument and says `record?.({...})`: nobody asking costs nothing.
 */
import type { Unit } from './units/units';

export type Quantity = number | string | boolean;

/** One step. `step` is the key of its name and formula in texts/catalogue/workings; `inputs` are the numbers put in. */
export interface Step {
  readonly step: string;
  readonly inputs: Readonly<Record<string, Quantity>>;
  readonly result: Quantity;
  readonly unit: Unit;
  readonly rounded?: 'up' | 'down';
}

/** A value the caller left out. `ground` is a key of reference/sources, or one of the two words. */
export interface Assumption {
  readonly assumed: string;
  readonly value: Quantity;
  readonly unit: Unit;
  readonly ground: string;
}

/** A remark that travels with the result; the key of a sentence in texts/catalogue/workings. */
export interface Remark {
  readonly remark: string;
}

/** Where a step's formula or number comes from: a key of reference/sources, or of the words for what has none. */
export interface Citation {
  readonly source: string;
}

export type Entry = Step | Assumption | Remark | Citation;
export type Recorder = (entry: Entry) => void;

/** The given value, or the default with a note of it in the working. */
export function orAssume<T extends Quantity>(
  given: T | undefined,
  fallback: T,
  assumed: string,
  unit: Unit,
  ground: string,
  record?: Recorder,
): T {
  if (given !== undefined) return given;
  record?.({ assumed, value: fallback, unit, ground });
  return fallback;
}
