/**
 * Slips with one argument of a call, or with two of them exchanged, whatever the function: told by the argument's name.
 * Source: common practice, no source: what teachers of the trade see.
 */
import type { UnitSystem } from '../units/units';
import { unitSystems } from '../units/units';
import type { Given, Slip, SlipName } from './slip';

/** A slip and the arguments that it reckons with. */
export interface ChangedCall {
  readonly slip: Slip;
  readonly given: Given;
  /** Only in the sum on paper: for the function itself it would be another call, not this slip. */
  readonly onPaper?: true;
}

/** What an argument left out of the sum amounts to. */
const neutral: Readonly<Record<string, number>> = {
  germination: 1,
  field_emergence: 1,
  marketable: 1,
  grade: 1,
  crop_coefficient: 1,
  plants_per_hill: 1,
  rows_per_bed: 1,
  rows: 1,
  hills: 1,
  lines: 1,
  picks: 1,
  picking_weeks: 1,
  seeds_per_cell: 1,
  fruit_per_plant: 1,
  fruit_weight: 1,
  every_days: 1,
  culls: 0,
  losses: 0,
  pollenizer_share: 0,
  path_width: 0,
  end_tuck: 0,
  harvest_cost: 0,
  rain: 0,
  days: 0,
  weeks: 0,
  days_after: 0,
  label_days: 0,
  harvest_days: 0,
  fall_days: 0,
  frost_margin: 0,
  transplant_gain: 0,
  flower_to_pick: 0,
  days_needed: 0,
};

const shares = [
  'germination',
  'field_emergence',
  'assurance',
  'marketable',
  'grade',
  'culls',
  'losses',
  'share',
  'pollenizer_share',
  'monoecious_female',
  'gynoecious_female',
  'female_share',
  'risk',
];
/** Shares that the trade tells as a ratio too. */
const ratios = ['share', 'pollenizer_share'];
/** Shares that stand: a number is divided by them. */
const standing = ['germination', 'field_emergence'];

const inLargeUnits = [
  'length',
  'width',
  'row_spacing',
  'hill_spacing',
  'bed_width',
  'path_width',
  'row_length',
  'post_spacing',
  'end_tuck',
];
/** Lengths in the small unit of the system, which a sum turns into the large one. */
export const inSmallUnits = ['plant_spacing', 'wetted_width'];

/** A length by a spacing in the small unit: not turning either comes to the same, and is told of the spacing. */
const isDividedBySmall = (about: string, given: Given): boolean =>
  ['length', 'row_length'].includes(about) && given['plant_spacing'] !== undefined;

const pairs = [
  ['length', 'width'],
  ['bed_width', 'path_width'],
  ['seeds', 'plants'],
  ['seeds', 'seeds_per_unit'],
  ['cells', 'cells_per_tray'],
  ['wanted_yield', 'yield_per_plant'],
  ['total_cost', 'total_yield'],
  ['row_length', 'post_spacing'],
] as const;

/** A parameter as far as slips need to know it. */
export interface NamedParameter {
  readonly name: string;
  readonly optional: boolean;
  readonly choices?: readonly string[];
}

/**
 * The calls that somebody may have reckoned with in place of the one meant.
 *
 * @param parameters of the function
 * @param given its arguments as they were meant, of the kinds that the function takes
 * @returns a call a slip; many of them the function refuses, and some give what the right call gives
 */
export function slipsOfArguments(parameters: readonly NamedParameter[], given: Given): ChangedCall[] {
  const calls: ChangedCall[] = [];
  const add = (slip: Slip, changed: Given): void => {
    calls.push({ slip, given: { ...given, ...changed } });
  };
  const units = given['units'] as UnitSystem | undefined;

  for (const { name: about, optional, choices } of parameters) {
    const value = given[about];
    for (const taken of choices ?? []) {
      if (taken !== value) add({ name: 'otherChoice', about, taken }, { [about]: taken });
    }
    if (about in neutral) add({ name: 'leftOut', about }, { [about]: neutral[about] });
    if (typeof value === 'boolean') add({ name: 'otherAnswer', about }, { [about]: !value });
    if (typeof value !== 'number') continue;
    const put = (name: SlipName, figure: number): void => add({ name, about }, { [about]: figure });
    const putOnPaper = (name: SlipName, figure: number): void => {
      calls.push({ slip: { name, about }, given: { ...given, [about]: figure }, onPaper: true });
    };
    if (optional) add({ name: about in neutral ? 'usual' : 'leftOut', about }, { [about]: undefined });
    if (shares.includes(about)) {
      putOnPaper('percent', value * 100);
      put('complement', 1 - value);
    }
    if (ratios.includes(about)) {
      put('ratioForShare', value / (1 - value));
      put('ratioForShare', value / (1 + value));
    }
    // Each makes a division by the share, or by what the losses leave, a sum: n / s becomes n (1 + 1 - s).
    if (standing.includes(about)) putOnPaper('failuresAdded', 1 / (2 - value));
    if (about === 'culls') putOnPaper('lossAdded', value / (1 + value));
    if (units === undefined) continue;
    if (inSmallUnits.includes(about)) put('smallUnitForLarge', value * units.spacingPerLength);
    if (inLargeUnits.includes(about) && !isDividedBySmall(about, given))
      put('largeUnitForSmall', value / units.spacingPerLength);
    if (about === 'area') put('areaForLand', value * units.areaPerLand);
  }

  for (const [about, other] of pairs) {
    if (typeof given[about] !== 'number' || typeof given[other] !== 'number') continue;
    add({ name: 'exchanged', about, taken: other }, { [about]: given[other], [other]: given[about] });
  }
  if (units !== undefined) {
    const other = units.name === 'us' ? 'metric' : 'us';
    add({ name: 'otherUnits', taken: other }, { units: unitSystems[other] });
    const { row_spacing: row, plant_spacing: plant } = given;
    if (typeof row === 'number' && typeof plant === 'number') {
      const scale = units.spacingPerLength;
      const spacings = { name: 'exchanged', about: 'row_spacing', taken: 'plant_spacing' } as const;
      add(spacings, { row_spacing: plant, plant_spacing: row });
      add(spacings, { row_spacing: plant / scale, plant_spacing: row * scale });
      add({ name: 'oneSpacingTwice', about: 'row_spacing' }, { plant_spacing: row * scale });
      add({ name: 'oneSpacingTwice', about: 'plant_spacing' }, { row_spacing: plant / scale });
      add({ name: 'areaInSmallUnits' }, { row_spacing: row * scale, plant_spacing: plant * scale });
    }
  }
  return calls;
}
