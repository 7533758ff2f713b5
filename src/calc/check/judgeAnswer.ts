import { checkShare } from '../limits/limits';
import { asWhole } from '../whole/wholeNumbers';
import { orAssume, type Quantity, type Recorder } from '../working';

/** `share` is the difference as a share of the correct number, absent where that is 0. */
export type Judgement =
  | { readonly verdict: 'right' | 'blank' | 'numberWanted' | 'wordWanted' | 'otherWord' }
  | { readonly verdict: 'tooHigh' | 'tooLow'; readonly difference: number; readonly share?: number };

/** Room for a figure that was rounded on the way. */
export const usualTolerance = 0.005;
/** Room for binary fractions, as in wholeNumbers. */
const nearness = 1e-9;

/**
 * Whether an answer is right, and how far off it is.
 *
 * right: |answer - correct| <= tolerance x |correct|; words: the same but for capitals and outer spaces; nothing but
 * spaces is blank
 *
 * @param answer a number, a date as any whole number of days, or a word
 * @param correct what it should be, of the same kind
 * @param tolerance share of the correct number, 0 to 1; when undefined 0 for a whole number, which is a count or a
 * date, and 0.005 for any other
 * @returns the judgement
 * @throws outOfRange, percentForShare
 * Source: judgement: 0.005 forgives a step rounded to three digits.
 * @example judgeAnswer(145, 133, undefined) // { verdict: 'tooHigh', difference: 12, share: 0.0902… }
 */
export function judgeAnswer(
  answer: Quantity,
  correct: Quantity,
  tolerance: number | undefined,
  record?: Recorder,
): Judgement {
  if (tolerance !== undefined) checkShare('tolerance', tolerance);
  if (typeof answer === 'string' && answer.trim() === '') return { verdict: 'blank' };
  if (typeof correct !== 'number') {
    if (typeof answer === 'number') return { verdict: 'wordWanted' };
    return { verdict: inOneForm(answer) === inOneForm(correct) ? 'right' : 'otherWord' };
  }
  if (typeof answer !== 'number') return { verdict: 'numberWanted' };

  const usual = isCount(correct) ? 0 : usualTolerance;
  const allowed = orAssume(tolerance, usual, 'tolerance', 'share', 'judgement', record);
  const size = Math.abs(correct);
  const difference = answer - correct;
  record?.({ step: 'answerOff', inputs: { answer, correct }, result: difference, unit: 'none' });
  const slack = nearness * Math.max(size, isCount(correct) ? 1 : 0);
  if (Math.abs(difference) <= allowed * size + slack) return { verdict: 'right' };
  return {
    verdict: difference > 0 ? 'tooHigh' : 'tooLow',
    difference: Math.abs(difference),
    ...(size > 0 ? { share: Math.abs(difference) / size } : {}),
  };
}

const inOneForm = (word: string | boolean): string => String(word).trim().toLowerCase();

/** A fraction too small to tell from 0 is no count. */
function isCount(value: number): boolean {
  const whole = asWhole(value);
  return whole !== null && (whole !== 0 || value === 0);
}
