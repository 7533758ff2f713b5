import { refuse } from '../errors';
import { checkCount, checkPositive } from '../limits/limits';
import type { UnitSystem } from '../units/units';
import { orAssume, type Recorder } from '../working';

export const hillShapes = ['mound', 'disc'] as const;
export type HillShape = (typeof hillShapes)[number];

/**
 * Soil that stands in hills; it is drawn up from around them, not bought.
 *
 * mound, the cap of a ball: pi height (3 radius^2 + height^2) / 6; disc: pi radius^2 height; times hills
 *
 * @param hills whole, 1 or more
 * @param diameter of a hill at its foot [in or cm], above 0
 * @param height [in or cm], above 0, at most half the diameter
 * @param shape "mound" when undefined
 * @returns soil [cu ft or litres], unrounded
 * @throws outOfRange, notWhole, hillTooSteep
 * Source: solid geometry. A height of at most half the diameter: judgement, soil does not stand steeper.
 * @example hillSoil(1, 24, 6, 'mound', unitSystems.us) // 0.851
 */
export function hillSoil(
  hills: number,
  diameter: number,
  height: number,
  shape: HillShape | undefined,
  units: UnitSystem,
  record?: Recorder,
): number {
  const count = checkCount('hills', hills, 'hills', { atLeast: 1 });
  checkPositive('diameter', diameter, units.spacing);
  checkPositive('height', height, units.spacing);
  const radius = diameter / 2;
  if (height > radius) refuse({ code: 'hillTooSteep', height, diameter, unit: units.spacing });
  const shaped = orAssume(shape, 'mound', 'shape', 'none', 'judgement', record);
  const volume =
    shaped === 'mound'
      ? (Math.PI * height * (3 * radius ** 2 + height ** 2)) / 6
      : Math.PI * radius ** 2 * height;
  record?.({
    step: shaped === 'mound' ? 'hillAsMound' : 'hillAsDisc',
    inputs: { diameter, height },
    result: volume,
    unit: units.cellVolume,
  });
  const { cellVolumePerMixVolume } = units;
  const soil = (count * volume) / cellVolumePerMixVolume;
  record?.({
    step: 'hillSoil',
    inputs: { hills: count, hillVolume: volume, cellVolumePerMixVolume },
    result: soil,
    unit: units.mixVolume,
  });
  record?.({ remark: 'soilDrawnUp' });
  return soil;
}
