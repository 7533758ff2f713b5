/** One direction of a scrolled sheet, in pixels. */
export interface Direction {
  /** Where each row or column ends, from the first on. */
  readonly ends: readonly number[];
  /** How many of them do not scroll. */
  readonly frozen: number;
  /** Between what does not scroll and the far edge. */
  readonly room: number;
  /** How far it is scrolled. */
  readonly at: number;
}

/**
 * How far to scroll so that the rows or columns from `first` to `last` stand whole in sight, or their beginning where
 * there is no room for all. What is in sight stays where it is. (The engine's own command leaves part of a column
 * behind frozen columns of another width.)
 */
export function scrollAlong({ ends, frozen, room, at }: Direction, first: number, last: number): number {
  // Of whole columns the rows are no numbers, and of whole rows the columns.
  if (last < frozen || Number.isNaN(first)) return at;
  const fixed = startOf(ends, frozen);
  const start = startOf(ends, Math.max(first, frozen)) - fixed;
  const end = (ends[last] ?? start + fixed) - fixed;
  return Math.min(Math.max(at, end - room), start);
}

function startOf(ends: readonly number[], index: number): number {
  return ends[index - 1] ?? 0;
}
