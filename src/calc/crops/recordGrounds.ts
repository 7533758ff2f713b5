import { unsourcedGrounds } from '../../reference/sources';
import type { Unit } from '../units/units';
import type { Quantity, Recorder } from '../working';

const unsourced: ReadonlySet<string> = new Set(unsourcedGrounds);

/**
 * Notes in the working what a figure of the reference stands on: a publication, or that there is none.
 *
 * @param grounds keys of reference/sources, or the words for none
 * @param value the figure [`unit`]
 * @param trait what it is a figure of
 * Source: project convention: no figure without its ground.
 * @example recordGrounds(['judgement'], 21, 'days', 'harvest days', record)
 */
export function recordGrounds(
  grounds: readonly string[],
  value: Quantity,
  unit: Unit,
  trait: string,
  record: Recorder | undefined,
): void {
  if (record === undefined) return;
  for (const ground of grounds) {
    record(unsourced.has(ground) ? { assumed: trait, value, unit, ground } : { source: ground });
  }
}
