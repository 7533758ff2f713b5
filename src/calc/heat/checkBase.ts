import { refuse } from '../errors';
import { airLimits } from '../limits/airLimits';

/** In F no plant grows from so low a base on. */
const leastBaseInF = 20;
/** Over a year the warmest day is above any plant's base. */
const wholeYear = 365;

/**
 * The check that base and temperatures are in one scale.
 *
 * @param base [degrees of a scale]
 * @param highs of a record [degrees of the same scale]; null where it has none
 * @throws baseInOtherScale
 * Source: judgement, over limits/airLimits.
 */
export function checkBase(base: number, highs: readonly (number | null)[]): void {
  let warmest = -Infinity;
  for (const high of highs) if (high !== null && high > warmest) warmest = high;
  const isBaseInC = warmest > airLimits.hottestC && base < leastBaseInF;
  const isBaseInF = highs.length >= wholeYear && warmest <= base;
  if (isBaseInC || isBaseInF) refuse({ code: 'baseInOtherScale', warmest, base });
}
