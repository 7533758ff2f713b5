/** Things at equal distances along a side of a plot, counted from its corner [ft or m]. */
export interface Evenly {
  readonly first: number;
  /** Above 0, of a single thing too. */
  readonly apart: number;
  /** Whole, 0 or more. */
  readonly count: number;
}

/**
 * Where one of them stands.
 *
 * place = first + index x apart
 *
 * @param index whole, from 0
 * @returns [ft or m]
 * Source: arithmetic.
 * @example placeOf({ first: 2.5, apart: 5, count: 3 }, 2) // 12.5
 */
export function placeOf({ first, apart }: Evenly, index: number): number {
  return first + index * apart;
}
