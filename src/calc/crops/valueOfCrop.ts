import { traits, type TextTrait, type Trait } from '../../reference/crops';
import type { UnitSystem } from '../units/units';
import { orAssume, type Recorder } from '../working';
import { cropFigure, type FigureBound } from './cropFigure';
import { cropText } from './cropText';
import { findCrop } from './findCrop';
import { findTrait } from './findTrait';

const isText = (trait: Trait): trait is TextTrait => traits[trait].kind === 'text';

/**
 * What the reference has on a crop, by the names of crop and trait.
 *
 * @param cropName a crop's name or synonym
 * @param traitName a trait's name
 * @param bound "low", "mid" or "high" of a range, "mid" when undefined; words have none
 * @returns a number [see cropFigure] or words
 * @throws unknownName, noFigure
 * Source: reference/crops.
 * @example valueOfCrop('zucchini', 'row spacing', 'low', unitSystems.us) // 3
 */
export function valueOfCrop(
  cropName: string,
  traitName: string,
  bound: FigureBound | undefined,
  units: UnitSystem,
  record?: Recorder,
): number | string {
  const crop = findCrop(cropName);
  const trait = findTrait(traitName);
  if (isText(trait)) return cropText(crop, trait, record);
  const asked = orAssume(bound, 'mid', 'bound', 'none', 'judgement', record);
  return cropFigure(crop, trait, asked, units, record);
}
