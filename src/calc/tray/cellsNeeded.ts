import { roundingOf } from '../whole/roundingOf';
import { checkCount, checkShare } from '../limits/limits';
import { checkAssurance } from '../stand/checkAssurance';
import { chancesAround } from '../stand/chancesAround';
import { leastSeeds } from '../stand/leastSeeds';
import { ceilWhole } from '../whole/wholeNumbers';
import { orAssume, type Recorder } from '../working';

/**
 * Tray cells to sow for a number of transplants. Two seeds in a cell are thinned to one plant.
 *
 * cell stands: p = (1 - (1 - germination)^seeds per cell) (1 - culls)
 * no assurance: plants / p, rounded up; assurance: least n with P(Binomial(n, p) >= plants) >= assurance
 *
 * @param plants fit to set out, whole, 1 or more
 * @param germination above 0, at most 1
 * @param seedsPerCell whole, 1 or more; 1 when left out
 * @param culls share of the cells with a plant that are discarded, 0 or more, below 1; 0 when left out
 * @param assurance chance that there are enough, above 0, below 1; left out, the sum is an average
 * @returns whole cells, not seeds
 * @throws outOfRange, percentForShare, notWhole, assuranceOfOne, tooManyForAssurance, tooLarge
 * Source: arithmetic of independent seeds; the assurance as in leastSeeds.
 * @example cellsNeeded(100, 0.85, 1, 0.05) // 124
 */
export function cellsNeeded(
  plants: number,
  germination: number,
  seedsPerCell?: number,
  culls?: number,
  assurance?: number,
  record?: Recorder,
): number {
  const wanted = checkCount('plants', plants, 'plants', { atLeast: 1 });
  checkShare('germination', germination, { above: 0 });
  const given =
    seedsPerCell === undefined
      ? undefined
      : checkCount('seeds_per_cell', seedsPerCell, 'seeds', { atLeast: 1 });
  if (culls !== undefined) checkShare('culls', culls, { below: 1 });
  if (assurance !== undefined) checkAssurance(assurance);

  const inCell = orAssume(given, 1, 'seeds_per_cell', 'seeds', 'judgement', record);
  const lost = orAssume(culls, 0, 'culls', 'share', 'judgement', record);
  // 1 - (1 - g)^s without its loss of digits at a small g.
  const cellSprouts = -Math.expm1(inCell * Math.log1p(-germination));
  record?.({
    step: 'cellSprouts',
    inputs: { germination, seeds_per_cell: inCell },
    result: cellSprouts,
    unit: 'share',
  });
  const cellStands = cellSprouts * (1 - lost);
  record?.({ step: 'cellStands', inputs: { cellSprouts, culls: lost }, result: cellStands, unit: 'share' });

  const average = wanted / cellStands;
  const cells = assurance === undefined ? ceilWhole(average) : leastSeeds(wanted, cellStands, assurance);
  record?.({
    step: assurance === undefined ? 'cellsOnAverage' : 'cellsForAssurance',
    inputs: {
      plants: wanted,
      cellStands,
      ...(assurance === undefined ? {} : { assurance, ...chancesAround(wanted, cells, cellStands) }),
    },
    result: cells,
    unit: 'cells',
    ...(assurance === undefined ? roundingOf(average, cells) : {}),
  });
  if (assurance === undefined) record?.({ remark: 'averageFallsShort' });
  return cells;
}
