/** The judgement on an answer in the language of the catalogue. */
import { usualTolerance, type Judgement } from '../calc/check/judgeAnswer';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { sayNumber } from './wording';

const texts = catalogue.judgements;

/** A share under the usual tolerance says nothing: of a date that is some days off it is next to none. */
export function sayJudgement(judgement: Judgement): string {
  if (!('difference' in judgement)) return texts[judgement.verdict];
  const { verdict, difference, share = 0 } = judgement;
  const said = fill(texts[verdict], { difference: sayNumber(difference) });
  return share < usualTolerance ? said : said + fill(texts.share, { percent: sayPercent(share * 100) });
}

/** Two digits are enough. */
function sayPercent(percent: number): string {
  return sayNumber(percent < 10 ? Number(percent.toPrecision(2)) : Math.round(percent));
}
