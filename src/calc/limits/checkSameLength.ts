import { refuse } from '../errors';

/** @throws unequalLists */
export function checkSameLength(
  name: string,
  list: readonly unknown[],
  otherName: string,
  other: readonly unknown[],
): void {
  if (list.length === other.length) return;
  refuse({ code: 'unequalLists', name, count: list.length, otherName, otherCount: other.length });
}
