import { checkShare } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

export interface StandChance {
  /** Share of germinable seeds that stand. */
  readonly emergence: number;
  /** Chance that a seed stands. */
  readonly chance: number;
}

/**
 * The chance that a sown seed becomes a standing plant.
 *
 * chance = germination x field emergence
 *
 * @param germination [share], above 0 to 1
 * @param fieldEmergence [share], above 0 to 1; left out, no field loss is assumed
 * @throws outOfRange, percentForShare
 * Source: IRRI Knowledge Bank's seed rate calculation for germination; project convention for the field: losses
 * are independent of one another.
 */
export function standChance(germination: number, fieldEmergence?: number, record?: Recorder): StandChance {
  checkShare('germination', germination, { above: 0 });
  if (fieldEmergence !== undefined) checkShare('field_emergence', fieldEmergence, { above: 0 });
  if (fieldEmergence === undefined) record?.({ remark: 'noFieldLossAssumed' });
  const emergence = orAssume(fieldEmergence, 1, 'field_emergence', 'share', 'judgement', record);
  const chance = germination * emergence;
  record?.({
    step: 'standChance',
    inputs: { germination, field_emergence: emergence },
    result: chance,
    unit: 'share',
  });
  return { emergence, chance };
}
