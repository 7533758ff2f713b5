/** Limits in words, as the middle of a sentence. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { bounds, type Limits } from '../workbook/limits';
import type { Format } from '../workbook/template';

const { limits: words } = catalogue;

export function sayLimits(limits: Limits, format: Format): string {
  const said = bounds.flatMap((bound) => {
    const limit = limits[bound];
    if (limit === undefined) return [];
    return fill(words[bound], { limit: format === 'percent' ? `${limit * 100} %` : limit });
  });
  return said.join(words.and);
}
