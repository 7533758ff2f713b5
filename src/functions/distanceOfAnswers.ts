import type { CellFault, Scalar } from './define';

export type Answer = Scalar | Scalar[][];

/** How far an answer is from another, in its own unit; 1 for another word and for a row more or less, Infinity for a refusal. */
export function distanceOfAnswers(base: Answer, answer: { readonly value: Answer } | CellFault): number {
  if ('error' in answer) return Infinity;
  const [before, after] = [rowsOf(base), rowsOf(answer.value)];
  const rows = Array.from({ length: Math.max(before.length, after.length) }, (_, i) =>
    distanceOfRows(before[i], after[i]),
  );
  return rows.reduce((sum, row) => sum + row, 0);
}

const rowsOf = (answer: Answer): readonly (readonly Scalar[])[] =>
  Array.isArray(answer) ? answer : [[answer]];

function distanceOfRows(before: readonly Scalar[] | undefined, after: readonly Scalar[] | undefined): number {
  if (before === undefined || after === undefined) return 1;
  return before.reduce<number>((sum, one, column) => {
    const other = after[column];
    if (typeof one === 'number' && typeof other === 'number') return sum + Math.abs(other - one);
    return sum + (other === one ? 0 : 1);
  }, 0);
}
