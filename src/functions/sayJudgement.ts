/** The judgement on an answer in the language of the catalogue. */
import { usualTolerance, type Judgement } from '../calc/check/judgeAnswer';
import type { Quantity } from '../calc/working';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { dayOfIso, serialOfDay } from '../workbook/serialDate';
import { sayNumber } from './wording';

const texts = catalogue.judgements;

/**
 * A share under the usual tolerance says nothing: of a date that is some days off it is next to none.
 *
 * @param correct what the judgement is on: a sheet keeps a date as a number, which alone does not say what it is
 */
export function sayJudgement(judgement: Judgement, correct: Quantity): string {
  if (!('difference' in judgement)) return texts[judgement.verdict];
  const { verdict, difference, share = 0 } = judgement;
  const said = fill(texts[verdict], { difference: sayNumber(difference) });
  if (share >= usualTolerance) return said + fill(texts.share, { percent: sayPercent(share * 100) });
  if (!mayBeDate(correct) || !Number.isInteger(difference)) return said;
  return said + fill(verdict === 'tooHigh' ? texts.late : texts.early, { difference });
}

/** Whole, and a day of this century. */
export function mayBeDate(value: Quantity): boolean {
  const [first, end] = ['2000-01-01', '2100-01-01'].map((iso) => serialOfDay(dayOfIso(iso) ?? NaN));
  return Number.isInteger(value) && Number(value) >= Number(first) && Number(value) < Number(end);
}

/** Two digits are enough. */
function sayPercent(percent: number): string {
  return sayNumber(percent < 10 ? Number(percent.toPrecision(2)) : Math.round(percent));
}
