import { asWhole } from '../whole/wholeNumbers';
import type { WrongFigure } from './findSlips';
import type { Slip } from './slip';

/**
 * The slip that gives a wrong answer: the one, or that none or several do. Several are named by none of them, so that
 * nobody is told of a slip that was not made.
 *
 * @param answer that is not right
 * @param figures as findSlips has them
 * Source: project convention.
 */
export function likelySlip(answer: number, figures: readonly WrongFigure[]): Slip | 'none' | 'several' {
  const slips = new Map(
    figures
      .filter((one) => isAnswerOf(one, answer))
      .map(({ slip }) => [`${slip.name} ${slip.about} ${slip.taken}`, slip]),
  );
  const [first] = slips.values();
  if (first === undefined) return 'none';
  return slips.size === 1 ? first : 'several';
}

/** As in judgeAnswer: room for binary fractions. */
const nearness = 1e-9;

/**
 * Whether an answer is what a slip gives: equal, or the slip's figure rounded to the decimals that the answer shows,
 * two digits or more. An answer that is whole is no rounding of ours where the function gives whole numbers.
 */
function isAnswerOf({ figure, isOfWhole }: WrongFigure, answer: number): boolean {
  if (Math.abs(answer - figure) <= nearness * Math.max(1, Math.abs(figure))) return true;
  if (isOfWhole && asWhole(answer) !== null) return false;
  const shown = String(answer);
  if (shown.includes('e')) return false;
  const unit = 10 ** -(shown.split('.')[1] ?? '').length;
  return Math.abs(answer) >= 10 * unit && Math.abs(answer - figure) <= (unit / 2) * (1 + nearness);
}
