/** The verdict on beetles in the language of the catalogue. */
import type { BeetleVerdict } from '../calc/beetles/beetleVerdict';
import { floorWhole } from '../calc/whole/wholeNumbers';
import { practice } from '../reference/practice';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { sayNumber } from './wording';

const texts = catalogue.beetles;

export function sayBeetles({ isAtThreshold, mean, threshold, isOlder, isTooFew }: BeetleVerdict): string {
  // Rounded down, or 0.999 would read as a threshold of 1 that is not reached.
  const numbers = { mean: sayNumber(floorWhole(mean * 100) / 100), threshold: sayNumber(threshold) };
  return [
    fill(isAtThreshold ? texts.atThreshold : texts.below, numbers),
    ...(isOlder ? [texts.older] : []),
    ...(isTooFew ? [fill(texts.tooFew, { least: practice.plantsScouted.value })] : []),
    ...(isAtThreshold ? [catalogue.cautions.pesticides] : []),
  ].join(' ');
}
