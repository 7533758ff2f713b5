import { checkShare } from '../limits/limits';
import type { Recorder } from '../working';

/**
 * Male flowers for each female one.
 *
 * males per female = (1 - s) / s
 *
 * @param femaleShare s, female flowers among all flowers [share], above 0 to 1
 * @returns ratio, 0 when all flowers are female
 * @throws outOfRange, percentForShare
 * Source: arithmetic.
 * @example malesPerFemale(0.0625) // 15
 */
export function malesPerFemale(femaleShare: number, record?: Recorder): number {
  checkShare('female_share', femaleShare, { above: 0 });
  const males = (1 - femaleShare) / femaleShare;
  record?.({ step: 'malesPerFemale', inputs: { female_share: femaleShare }, result: males, unit: 'none' });
  return males;
}
