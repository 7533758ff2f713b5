import type { RecordRow } from './readRows';
import type { Doubts } from './recordDoubts';

/** A day of a record; null where nothing was measured, or nothing that can be relied on. */
export interface RecordDay {
  readonly day: number;
  readonly high: number | null;
  readonly low: number | null;
}

/** So many days twice, with other temperatures, are no slips any more: judgement. */
const slips = { count: 5, share: 0.05 };

/**
 * One entry a day, by date. A day whose low is above its high, or that comes twice with other temperatures, is left
 * empty: which is right cannot be known. Each is added to the doubts.
 */
export function settleDays(rows: readonly RecordRow[], doubts: Doubts): readonly RecordDay[] {
  const back = rows.find(({ day }, index) => day < (rows[index - 1]?.day ?? day));
  if (back !== undefined) doubts.add({ code: 'notInOrder', line: back.line });

  const whole = rows.filter(({ high, low }) => high !== null && low !== null);
  const swapped = whole.filter(isSwapped);
  if (swapped[0] !== undefined && swapped.length * 2 > whole.length) {
    const { line } = swapped[0];
    doubts.add({ code: 'columnsSwapped', line, count: swapped.length, days: whole.length });
    return [];
  }
  for (const { line, high, low } of swapped) {
    doubts.add({ code: 'lowAboveHigh', line, high: high ?? 0, low: low ?? 0 });
  }
  return joinSameDays(
    rows.map((row) => (isSwapped(row) ? { ...row, high: null, low: null } : row)),
    doubts,
  );
}

function isSwapped({ high, low }: RecordRow): boolean {
  return high !== null && low !== null && low > high;
}

function joinSameDays(rows: readonly RecordRow[], doubts: Doubts): readonly RecordDay[] {
  const days = new Map<number, RecordRow>();
  const differing: { readonly row: RecordRow; readonly first: RecordRow }[] = [];
  for (const row of rows) {
    const first = days.get(row.day);
    if (first === undefined) {
      days.set(row.day, row);
    } else if (isSameOrNull(first.high, row.high) && isSameOrNull(first.low, row.low)) {
      doubts.add({ code: 'sameDayTwice', line: row.line, day: row.day, otherLine: first.line });
      days.set(row.day, { ...first, high: first.high ?? row.high, low: first.low ?? row.low });
    } else {
      differing.push({ row, first });
    }
  }
  const count = differing.length;
  const isTwo = count >= slips.count && count > days.size * slips.share;
  for (const { row, first } of differing) {
    const where = { line: row.line, day: row.day, otherLine: first.line };
    doubts.add(isTwo ? { code: 'twoRecords', ...where, count } : { code: 'sameDayDiffers', ...where });
    if (isTwo) return [];
    days.set(row.day, { ...first, high: null, low: null });
  }
  return [...days.values()]
    .map(({ day, high, low }) => ({ day, high, low }))
    .sort((one, other) => one.day - other.day);
}

function isSameOrNull(one: number | null, other: number | null): boolean {
  return one === null || other === null || one === other;
}
