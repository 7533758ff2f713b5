/**
 * Striped cucumber beetles on a plant at which to act, and which crops take bacterial wilt from them. Squash and
 * pumpkin are taken for prone unless the grower knows better: Purdue says that most are not, Ontario acts at one.
 */
import data from './data.json';

Object.values(data.thresholds).forEach(Object.freeze);
Object.values(data.wiltProne).forEach(Object.freeze);

export const beetleThresholds = Object.freeze(data.thresholds);

/** Gourd is missing: nothing on it was read. */
export const wiltProneCrops = Object.freeze(data.wiltProne) as Readonly<
  Partial<Record<string, { readonly prone: boolean; readonly ground: string }>>
>;
