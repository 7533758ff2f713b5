import type { Crop, TextTrait } from '../../reference/crops';
import { refuse } from '../errors';
import type { Recorder } from '../working';
import { recordGrounds } from './recordGrounds';

/**
 * What the reference says of a crop in words: its flower type, its species, how its size is measured.
 *
 * @param crop a record of reference/crops
 * @param trait a trait in words
 * @returns the words
 * @throws noFigure
 * Source: reference/crops, which names the ground of each.
 * @example cropText(findCrop('English cucumber'), 'flower type') // 'parthenocarpic'
 */
export function cropText(crop: Crop, trait: TextTrait, record?: Recorder): string {
  const figure = crop.figures[trait] ?? refuse({ code: 'noFigure', crop: crop.name, trait });
  record?.({ step: 'cropText', inputs: { crop: crop.name, trait }, result: figure.text, unit: 'none' });
  recordGrounds(figure.grounds, figure.text, 'none', trait, record);
  return figure.text;
}
