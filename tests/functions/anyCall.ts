/** Calls of every function with slips to name, at random: each parameter by its name, in what growers type. */
import fc from 'fast-check';
import { functionsWithoutSlips } from '../../src/calc/check/slipsOfFunctions';
import { areaUnits } from '../../src/calc/units/units';
import { explainable } from '../../src/functions/explainable';
import type { Parameter } from '../../src/functions/define';
import { cropNames } from '../../src/reference/crops';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';

export interface AnyCall {
  readonly id: string;
  readonly args: readonly unknown[];
}

/** In tenths, or whatever the step is, so that no digits are random. */
const steps = (from: number, to: number, step: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(from / step), max: Math.round(to / step) }).map((n) => n / (1 / step));
const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const share = steps(0.01, 0.99, 0.01);
const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
const spring = whole(serial('2026-04-01'), serial('2026-06-15'));
const summer = whole(serial('2026-07-01'), serial('2026-08-31'));
const fall = whole(serial('2026-09-01'), serial('2026-11-01'));

/** Three weeks of one record, and the frosts of ten seasons. */
const rows = Array.from({ length: 21 }, (_, i) => i);
const recordOf = {
  dates: rows.map((row) => [serial('2026-05-01') + row]),
  highs: rows.map((row) => [70 + ((row * 7) % 20)]),
  lows: rows.map((row) => [45 + ((row * 5) % 12)]),
};
const seasons = Array.from({ length: 10 }, (_, i) => 2016 + i);
const frostDates = (monthAndDay: (i: number) => string): (readonly [number])[] =>
  seasons.map((year, i) => [serial(`${year}-${monthAndDay(i)}`)]);

const byName: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  length: whole(20, 300),
  width: whole(10, 200),
  row_spacing: steps(2, 12, 0.5),
  plant_spacing: whole(6, 48),
  hill_spacing: steps(2, 8, 0.5),
  plants_per_hill: whole(1, 4),
  bed_width: steps(2, 6, 0.5),
  path_width: steps(0, 4, 0.5),
  rows_per_bed: whole(1, 3),
  area: whole(200, 200_000),
  wanted_yield: whole(50, 5000),
  yield_per_plant: steps(0.5, 12, 0.1),
  plants: whole(3, 2000),
  value: steps(0.1, 20, 0.1),
  unit: fc.constantFrom(...Object.keys(areaUnits)),
  wanted_per_week: whole(5, 300),
  yield_per_100: whole(40, 400),
  picking_weeks: whole(2, 10),
  plants_standing: whole(10, 300),
  row_length: whole(20, 400),
  germination: share,
  field_emergence: steps(0.5, 0.99, 0.01),
  assurance: steps(0.5, 0.99, 0.01),
  tested: whole(50, 400),
  seeds: whole(3, 3000),
  seeds_per_unit: whole(50, 1500),
  germinated: whole(10, 400),
  confidence: fc.constantFrom(0.9, 0.95, 0.99),
  mean: steps(0.7, 0.99, 0.01),
  replicates: fc.constantFrom(2, 4),
  year_packed: whole(2015, 2026),
  year: whole(2024, 2030),
  seeds_per_cell: whole(1, 3),
  culls: steps(0, 0.3, 0.01),
  cells: whole(20, 2000),
  cells_per_tray: fc.constantFrom(18, 32, 50, 72, 98, 128),
  cell_volume: steps(1, 8, 0.1),
  last_frost: spring,
  first_frost: fall,
  set_out: spring,
  start: whole(serial('2026-05-01'), serial('2026-05-08')),
  first_pick: summer,
  last_pick: fall,
  spray_date: summer,
  manure_date: spring,
  date: whole(serial('2026-04-10'), serial('2026-05-20')),
  days_after: whole(0, 30),
  weeks: whole(1, 8),
  days: whole(1, 20),
  days_to_maturity: whole(40, 120),
  harvest_days: whole(0, 60),
  fall_days: whole(0, 21),
  frost_margin: whole(0, 21),
  transplant_gain: whole(1, 20),
  flower_to_pick: whole(4, 50),
  label_days: whole(0, 21),
  days_needed: whole(40, 200),
  touches_soil: fc.boolean(),
  wilt_prone: fc.boolean(),
  last_dates: fc.constant(frostDates((i) => `04-${10 + ((i * 7) % 20)}`)),
  first_dates: fc.constant(frostDates((i) => `10-${10 + ((i * 7) % 20)}`)),
  frost_dates: fc.constant(frostDates((i) => `04-${10 + ((i * 7) % 20)}`)),
  risk: steps(0.05, 0.95, 0.05),
  dates: fc.constant(recordOf.dates),
  highs: fc.constant(recordOf.highs),
  lows: fc.constant(recordOf.lows),
  high: whole(45, 100),
  low: whole(30, 75),
  base: whole(45, 60),
  ceiling: whole(80, 95),
  target: whole(20, 150),
  crop: fc.constantFrom(...cropNames),
  trait: fc.constantFrom('row spacing', 'days to maturity', 'plant spacing'),
  soil_temperature: whole(59, 95),
  pollenizer_share: share,
  monoecious_female: share,
  gynoecious_female: share,
  female_share: share,
  pollenizers: whole(1, 10),
  others: whole(1, 20),
  share: steps(0.01, 0.5, 0.01),
  losses: steps(0, 0.5, 0.01),
  hives_per_acre: steps(0.5, 3, 0.5),
  marketable: share,
  every_days: whole(1, 7),
  fruit_per_plant: steps(0.5, 8, 0.5),
  fruit_weight: steps(0.2, 20, 0.1),
  pounds: whole(5, 3000),
  jars: whole(1, 200),
  income: whole(0, 9000),
  costs: whole(0, 9000),
  total_cost: whole(100, 9000),
  total_yield: whole(50, 5000),
  costs_not_tied_to_yield: whole(100, 9000),
  price: steps(0.5, 20, 0.05),
  harvest_cost: steps(0, 5, 0.05),
  picks: whole(1, 30),
  rate: whole(50, 400),
  hills: whole(1, 100),
  diameter: whole(12, 36),
  height: whole(3, 8),
  grade: share,
  depth: steps(0.1, 3, 0.1),
  reference_et: steps(0.05, 0.4, 0.01),
  crop_coefficient: steps(0.3, 1.2, 0.05),
  rain: steps(0, 2, 0.1),
  wetted_width: whole(12, 60),
  flow: steps(8, 60, 0.5),
  lines: whole(1, 3),
  rows: whole(1, 20),
  end_tuck: steps(0, 5, 0.5),
  post_spacing: steps(4, 12, 0.5),
  past_years: fc
    .array(whole(2010, 2023), { minLength: 1, maxLength: 4 })
    .map((all) => all.map((one) => [one])),
  units: fc.constantFrom('us', 'metric'),
};

function anyArgument({ name, optional, choices }: Parameter<unknown>): fc.Arbitrary<unknown> {
  const any = choices === undefined ? byName[name] : fc.constantFrom(...choices);
  if (any === undefined) throw new Error(`say in anyCall what a ${name} may be`);
  return optional ? fc.option(any, { nil: '', freq: 2 }) : any;
}

/** Ids of the functions with slips to name. */
export const idsWithSlips = [...explainable.keys()].filter((id) => !functionsWithoutSlips.includes(id));

export const anyCallOf = (id: string): fc.Arbitrary<AnyCall> =>
  fc.tuple(...(explainable.get(id)?.parameters ?? []).map(anyArgument)).map((args) => ({ id, args }));
