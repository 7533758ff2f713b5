import { checkNumber } from '../limits/limits';
import { orAssume, type Recorder } from '../working';

/** Published coefficients of cucurbits end at 1.05; one far above was typed as per cent. Judgement. */
const highestCoefficient = 2;
/** A growing season: more is a date. */
const mostDays = 366;

/**
 * The depth of water that a crop uses beyond the rain.
 *
 * need = reference evapotranspiration x crop coefficient x days - rain, not under 0
 *
 * @param referenceEt of a day [in or mm, or any depth], 0 or more
 * @param cropCoefficient Kc of the crop's stage, above 0, at most 2
 * @param days above 0, at most 366; 1 when undefined
 * @param rain that fell in those days [the same depth], 0 or more; 0 when undefined
 * @returns depth of water [the same depth]
 * @throws outOfRange
 * Source: FAO Irrigation and Drainage Paper 56, equation 58: ETc = Kc ETo. Days and rain left out: judgement.
 * @example waterNeed(0.25, 1, 7, 0.5) // 1.25
 */
export function waterNeed(
  referenceEt: number,
  cropCoefficient: number,
  days: number | undefined,
  rain: number | undefined,
  record?: Recorder,
): number {
  checkNumber('reference_et', referenceEt, 'none', { atLeast: 0 });
  checkNumber('crop_coefficient', cropCoefficient, 'none', { above: 0, atMost: highestCoefficient });
  const span = orAssume(days, 1, 'days', 'days', 'judgement', record);
  checkNumber('days', span, 'days', { above: 0, atMost: mostDays });
  const fallen = orAssume(rain, 0, 'rain', 'none', 'judgement', record);
  checkNumber('rain', fallen, 'none', { atLeast: 0 });
  const used = referenceEt * cropCoefficient * span;
  record?.({
    step: 'waterUsed',
    inputs: { reference_et: referenceEt, crop_coefficient: cropCoefficient, days: span },
    result: used,
    unit: 'none',
  });
  record?.({ source: 'fao-56' });
  const need = Math.max(0, used - fallen);
  record?.({ step: 'waterNeed', inputs: { waterUsed: used, rain: fallen }, result: need, unit: 'none' });
  record?.({ remark: 'coefficientsByStage' });
  record?.({ source: 'fao-56-2025' });
  record?.({ remark: 'plasticShedsRain' });
  record?.({ source: 'psu-drip' });
  return need;
}
