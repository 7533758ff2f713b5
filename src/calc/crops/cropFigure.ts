import { traits, type Crop, type NumberTrait } from '../../reference/crops';
import { refuse } from '../errors';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import { ceilWhole } from '../whole/wholeNumbers';
import type { Recorder } from '../working';
import { recordGrounds } from './recordGrounds';

export const figureBounds = ['low', 'mid', 'high'] as const;
export type FigureBound = (typeof figureBounds)[number];

/** Kinds whose middle is a whole number: nobody thins to two and a half plants. */
const wholeKinds: ReadonlySet<string> = new Set(['days', 'count']);

/**
 * A figure of a crop: an end of its published range, or the middle.
 *
 * mid = (low + high) / 2, days and counts rounded up; then in the unit system's own unit
 *
 * @param crop a record of reference/crops
 * @param trait a trait in numbers
 * @param bound "low", "mid" or "high"
 * @returns the figure [the trait's unit: ft, in, F, seeds/oz, lb per 100 ft, or m, cm, C, seeds/g, kg per 100 m;
 *   days, weeks, counts and shares as they are]
 * @throws noFigure
 * Source: reference/crops, which names the ground of each; the middle of a range: project convention.
 * @example cropFigure(findCrop('cucumber'), 'days to maturity', 'mid', unitSystems.us) // 60
 */
export function cropFigure(
  crop: Crop,
  trait: NumberTrait,
  bound: FigureBound,
  units: UnitSystem,
  record?: Recorder,
): number {
  const figure = crop.figures[trait] ?? refuse({ code: 'noFigure', crop: crop.name, trait });
  const { kind, unit } = traits[trait];
  const middle = (figure.low + figure.high) / 2;
  const isWhole = wholeKinds.has(kind);
  const published = bound === 'mid' ? (isWhole ? ceilWhole(middle) : middle) : figure[bound];
  const step = { low: 'cropFigureLow', mid: 'cropFigureMid', high: 'cropFigureHigh' }[bound];
  record?.({
    step,
    inputs: { crop: crop.name, trait, low: figure.low, high: figure.high },
    result: published,
    unit,
    ...(bound === 'mid' && published > middle ? { rounded: 'up' } : {}),
  });
  const shown = units.name === 'metric' ? inMetric(published, unit) : { value: published, unit };
  if (shown.unit !== unit) {
    record?.({
      step: 'figureInMetric',
      inputs: { figure: published },
      result: shown.value,
      unit: shown.unit,
    });
  }
  recordGrounds(figure.grounds, shown.value, shown.unit, trait, record);
  return shown.value;
}
