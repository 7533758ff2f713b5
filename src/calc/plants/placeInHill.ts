import { practice } from '../../reference/practice';
import { inMetric } from '../units/inMetric';
import type { UnitSystem } from '../units/units';
import type { HillRows } from './hillRowsInPlot';

export interface PlacedHill {
  /** Of the hill [ft or m]. */
  readonly radius: number;
  /** Each plant of a hill, by its distance from the hill's middle [ft or m]. */
  readonly plants: readonly { readonly along: number; readonly across: number }[];
}

/**
 * Where the plants of a hill stand: a single one in its middle, others on a circle half-way to its rim.
 *
 * radius = half the usual width of a hill, or a quarter of the spacing where hills or their rows lie closer than that
 *
 * @param plantsPerHill whole, 1 or more
 * @param plot as hillRowsInPlot gives it
 * Source: a hill is about 2 ft wide: common practice, no source. The circle: judgement.
 * @example placeInHill(1, plot, unitSystems.us).plants // [{ along: 0, across: 0 }]
 */
export function placeInHill(
  plantsPerHill: number,
  { rows, inOddRow }: HillRows,
  units: UnitSystem,
): PlacedHill {
  const { low: width, unit } = practice.hillWidth;
  const usual = units.name === 'metric' ? inMetric(width, unit as 'ft').value : width;
  const radius = Math.min(usual / 2, inOddRow.apart / 4, rows.apart / 4);
  const out = plantsPerHill === 1 ? 0 : radius / 2;
  const turn = (2 * Math.PI) / plantsPerHill;
  return {
    radius,
    plants: Array.from({ length: plantsPerHill }, (_, i) => ({
      along: out * Math.sin(i * turn),
      across: -out * Math.cos(i * turn),
    })),
  };
}
