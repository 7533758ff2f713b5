/** Daily records as a weather service would export them. */
import { dayOfIso, isoOfDay } from '../../src/workbook/serialDate';

const day = (iso: string): number => dayOfIso(iso) ?? NaN;

/** Days of 12 and 2 C, warmer in summer, and a frost on the days named. */
export function recordText(
  from: string,
  to: string,
  frosts: readonly string[],
  summer: readonly number[] = [6, 7, 8],
): string {
  const lines = ['Date,High (C),Low (C)'];
  for (let one = day(from); one <= day(to); one++) {
    const iso = isoOfDay(one);
    const isSummer = summer.includes(Number(iso.slice(5, 7)));
    lines.push(`${iso},${isSummer ? '25,14' : frosts.includes(iso) ? '9,-1' : '12,2'}`);
  }
  return lines.join('\n');
}

export const frostsOfThreeYears = [
  '2021-04-10',
  '2021-10-01',
  '2022-04-20',
  '2022-10-11',
  '2023-04-30',
  '2023-10-21',
];
export const threeYears = recordText('2021-01-01', '2023-12-31', frostsOfThreeYears);
