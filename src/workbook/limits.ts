/** Characters that a cell can hold (Excel specifications and limits; from memory). */
export const longestText = 32_767;

/** What a number in a cell must keep to, in the value of the cell: a share is a fraction. */
export interface Limits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly below?: number;
  readonly isWhole?: boolean;
  /** A share under one in a hundred can be meant; else it was most likely typed where per cent is asked. */
  readonly mayBeTiny?: boolean;
  /** One in a hundred is no such share: 1, typed where per cent is asked, was meant for the whole. */
  readonly isNeverOnePercent?: boolean;
}

export const bounds = ['above', 'atLeast', 'atMost', 'below'] as const;

/** What is wrong with the number; null when nothing is. */
export function checkLimits(number: number, limits: Limits): 'outOfRange' | 'notWhole' | null {
  const { above = -Infinity, atLeast = -Infinity, atMost = Infinity, below = Infinity } = limits;
  const isInside = number > above && number >= atLeast && number <= atMost && number < below;
  if (!isInside) return 'outOfRange';
  return limits.isWhole === true && !Number.isInteger(number) ? 'notWhole' : null;
}
