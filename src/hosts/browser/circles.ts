/**
 * Formulas that read themselves. The engine calculates them in some order and lets whatever number comes out stand; a
 * grower is to see an error, as in the file.
 */
import type { Formula } from './runList';

const circleError = '=#CYCLE!';

/**
 * The list with an error in place of each formula in a circle, for the calculation at hand; those come first.
 *
 * @param formulas the engine's last comes first, and before what reads it
 * @param readersOf numbers of the formulas that read its cell
 */
export function breakCircles(
  formulas: readonly Formula[],
  readersOf: (formula: Formula) => Iterable<number>,
): Formula[] {
  const circles = inCircles(formulas, readersOf);
  for (const formula of circles) {
    // Some share theirs with other cells: it is hidden, not changed.
    Object.defineProperty(formula, 'formula', { value: circleError, configurable: true });
  }
  return [...formulas.filter((formula) => !circles.has(formula)), ...circles];
}

/** With what lies between two circles: whatever none of the rest reads, or reads none, goes until nothing more goes. */
function inCircles(
  formulas: readonly Formula[],
  readersOf: (formula: Formula) => Iterable<number>,
): ReadonlySet<Formula> {
  const left = new Map(formulas.map((formula) => [formula.treeId, formula]));
  const readers = new Map<number, number[]>();
  const readings = new Map<number, number[]>(formulas.map(({ treeId }) => [treeId, []]));
  for (const formula of formulas) {
    const ofIt = [...readersOf(formula)].filter((reader) => left.has(reader));
    readers.set(formula.treeId, ofIt);
    for (const reader of ofIt) readings.get(reader)?.push(formula.treeId);
  }
  for (const [ahead, behind] of [
    [readers, readings],
    [readings, readers],
  ] as const) {
    const isThere = (id: number): boolean => left.has(id);
    const counts = new Map([...left.keys()].map((id) => [id, (ahead.get(id) ?? []).filter(isThere).length]));
    const ends = [...left.keys()].filter((id) => counts.get(id) === 0);
    for (let id = ends.pop(); id !== undefined; id = ends.pop()) {
      left.delete(id);
      for (const next of (behind.get(id) ?? []).filter(isThere)) {
        const count = (counts.get(next) ?? 0) - 1;
        counts.set(next, count);
        if (count === 0) ends.push(next);
      }
    }
  }
  return new Set(left.values());
}
