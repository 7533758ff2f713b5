import {
  germinationTolerances,
  germinationToleranceSource,
  replicateCounts,
} from '../../reference/germinationTolerances';
import { refuse } from '../errors';
import { checkShare } from '../limits/limits';
import { roundingOf } from '../whole/roundingOf';
import { floorWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';

/**
 * The widest range between replicates of 100 seeds before a germination test is to be done again.
 *
 * tolerance = table(average rounded to a whole per cent, a half up; number of replicates)
 *
 * @param mean average germination of the replicates [share], 0 to 1
 * @param replicates of 100 seeds, 4 or 2
 * @returns largest less smallest germination [share]
 * @throws outOfRange, percentForShare, notAChoice, noTolerance (outside the table)
 * Source: 7 CFR 201.55, table of paragraph (a). How the average is rounded: project convention, the regulation's
 * text that was read does not say.
 * @example replicateTolerance(0.805, 4) // 0.15: counts as 81 %; at 80 % it would be 0.16
 */
export function replicateTolerance(mean: number, replicates: number, record?: Recorder): number {
  checkShare('mean', mean);
  const count =
    replicateCounts.find((one) => Number(one) === replicates) ??
    refuse({ code: 'notAChoice', name: 'replicates', given: String(replicates), choices: replicateCounts });
  const percent = floorWhole(mean * 100 + 0.5);
  record?.({
    step: 'meanInPercent',
    inputs: { mean },
    result: percent,
    unit: 'none',
    ...roundingOf(mean * 100, percent),
  });
  const table = germinationTolerances[count];
  const known = Object.keys(table).map(Number);
  const tolerated =
    table[percent] ??
    refuse({
      code: 'noTolerance',
      percent,
      replicates,
      from: Math.min(...known),
      to: Math.max(...known),
    });
  const tolerance = tolerated / 100;
  record?.({
    step: 'replicateTolerance',
    inputs: { meanInPercent: percent, replicates },
    result: tolerance,
    unit: 'share',
  });
  record?.({ source: germinationToleranceSource });
  return tolerance;
}
