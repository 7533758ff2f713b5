import { refuse } from '../errors';

/** In C no place is as hot, and in F no plant grows from so low a base on. */
const hotterThanC = 60;
const leastBaseInF = 20;
/** Over a year the warmest day is above any plant's base. */
const wholeYear = 365;

/**
 * The check that base and temperatures are in one scale.
 *
 * @param base [degrees of a scale]
 * @param highs of a record [degrees of the same scale]; null where it has none
 * @throws baseInOtherScale
 * Source: judgement; the hottest air measured was under 57 C (from memory, check).
 */
export function checkBase(base: number, highs: readonly (number | null)[]): void {
  let warmest = -Infinity;
  for (const high of highs) if (high !== null && high > warmest) warmest = high;
  const isBaseInC = warmest > hotterThanC && base < leastBaseInF;
  const isBaseInF = highs.length >= wholeYear && warmest <= base;
  if (isBaseInC || isBaseInF) refuse({ code: 'baseInOtherScale', warmest, base });
}
