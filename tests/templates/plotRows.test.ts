/**
 * Whole rows of Plots and the lines of Season that they stand on, worked out by hand: the arithmetic stands beside each
 * number. Counts of seed are quantiles of the negative binomial, lib-r-math.js 2.0.3. The rows give their figures
 * themselves; those that come from the reference are named with their source.
 */
import { qnbinom } from 'lib-r-math.js';
import { describe, expect, it, test } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { plotsTemplate } from '../../src/templates/plots';
import { seasonTemplate } from '../../src/templates/season';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue } from '../../src/workbook/port';
import { readForm } from '../../src/workbook/readForm';
import type { InputRow } from '../../src/workbook/template';

const { remarks } = english.sheets.plots;

/** Serial 25569 is 1970-01-01 in the 1900 date system. */
const day = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86400000 + 25569;

/** The least number of which `wanted` succeed with that assurance. */
const least = (wanted: number, chance: number, assurance: number): number =>
  wanted + Number(qnbinom(assurance, wanted, chance));

type Values = Readonly<Record<string, CellValue>>;
interface Case {
  readonly form: Values;
  readonly plot: InputRow;
  readonly season?: Values;
  readonly row: Values;
}

/** Mean dates, 161 days apart: 29 + 30 + 31 + 31 + 30 + 10. */
const northern: Values = {
  SEASON_YEAR: 2026,
  LAST_FROST: day('2026-05-02'),
  FIRST_FROST: day('2026-10-10'),
  FROST_RISK: 0.5,
  UNITS: 'us',
  ASSURANCE: 0.9,
  TRAY_CULLS: 0.05,
  SEEDS_PER_CELL: 1,
  MONOECIOUS_FEMALE: 0.5,
  POLLENIZER_LOSSES: 0.1,
};

const cases: Readonly<Record<string, Case>> = {
  'rows of a gynoecious cucumber, sown': {
    form: northern,
    plot: {
      Plot: 'A',
      Crop: 'slicing cucumber',
      Layout: 'rows',
      Length: 100,
      Width: 20,
      Start: 'seed',
      Germination: 0.8,
      'Row spacing': 5,
      'Plant spacing': 12,
      'Field emergence': 0.9,
      'Flower type': 'gynoecious',
      'Pollenizer share': 0.1,
      'Days to maturity': 50,
      'Harvest days': 20,
      'Yield per 100': 150,
      Price: 2,
    },
    season: {
      YEAR_CHECK: 'yes',
      FROST_FREE_DAYS: 161,
      // The whole wait at a mean date (common practice, no source): 14 and 7 days.
      SET_OUT_WAIT: 14,
      SOWING_WAIT: 7,
      SET_OUT_DATE: day('2026-05-16'),
      // A week before (common practice, no source).
      HARDEN_OFF_DATE: day('2026-05-09'),
      FIRST_SOWING_DATE: day('2026-05-09'),
      LONGEST_DAY: day('2026-06-21'),
      SPACING_PER_LENGTH: 12,
    },
    row: {
      'Taken as': 'slicing cucumber',
      // 20 / 5 = 4 rows of 100 x 12 / 12 = 100.
      Plants: 400,
      'Seed to sow': least(400, 0.8 * 0.9, 0.9),
      // 1,000 seeds an ounce: North Carolina AG-552.
      'Seed weight': least(400, 0.8 * 0.9, 0.9) / 1000,
      'Start transplants': '',
      'Set out or sow': day('2026-05-09'),
      // °F: University of Georgia, soil temperatures for planting.
      'Soil at least': 64,
      // May 9 + 50, before the longest day: no fall days.
      'First pick': day('2026-06-28'),
      // Less 9, the middle of 8 to 10 days: North Carolina AG-552.
      'Cover off': day('2026-06-19'),
      // June 28 + 20.
      'Last pick': day('2026-07-18'),
      // October 10 less 50 + 20 + 14 fall days + 14 days clear of frost (Virginia Cooperative Extension) = 98.
      'Last sowing': day('2026-07-04'),
      // 161 less the 57 from May 2 to June 28, less 20.
      'Days to spare': 84,
      // 100 x 20.
      Area: 2000,
      Rows: 4,
      // 400 plants x 12 / 12.
      'Row length': 400,
      // 400 ft at 150 lb per 100 ft.
      Yield: 600,
      // 600 x 2.
      Income: 1200,
      // 0.9 all female + 0.1 half female.
      'Female share': 0.95,
      // p of 400 with 0.9 p alive, a tenth of all alive: 0.9 p >= 0.1 (400 - 0.1 p), so p >= 40 / 0.91 = 43.96.
      Pollenizers: 44,
      // Alone in its sheet.
      'Same name': '',
      'Keep apart': 'clear',
      Assumed: '',
      Notes: '',
    },
  },
  'hills of zucchini, sown': {
    form: northern,
    plot: {
      Plot: 'B',
      Crop: 'zucchini',
      Layout: 'hills',
      Length: 60,
      Width: 26,
      Germination: 0.8,
      'Row spacing': 8,
      'Plant spacing': 24,
      'Hill spacing': 6,
      'Plants per hill': 3,
      'Field emergence': 0.9,
      'Flower type': 'monoecious',
      'Days to maturity': 45,
      'Harvest days': 30,
      'Yield per 100': 100,
      Price: 0.5,
    },
    row: {
      'Taken as': 'summer squash',
      // 26 / 8 = 3 rows of 60 / 6 = 10 hills of 3 plants.
      Plants: 90,
      // In each of the 30 hills as many as 3 plants want: 6. At 0.8 without the field's loss it would be 5.
      'Seed to sow': 30 * least(3, 0.8 * 0.9, 0.9),
      // 250, the middle of 200 to 300 seeds an ounce: common practice, no source.
      'Seed weight': (30 * least(3, 0.8 * 0.9, 0.9)) / 250,
      // °F: University of Georgia, soil temperatures for planting.
      'Soil at least': 70,
      // May 9 + 45.
      'First pick': day('2026-06-23'),
      // Less 6, the middle of 4 to 8 days: common practice, no source.
      'Cover off': day('2026-06-17'),
      // June 23 + 30.
      'Last pick': day('2026-07-23'),
      // October 10 less 45 + 30 + 14 + 14 = 103.
      'Last sowing': day('2026-06-29'),
      // 161 less the 52 from May 2 to June 23, less 30.
      'Days to spare': 79,
      // 60 x 26.
      Area: 1560,
      Rows: 3,
      // 30 hills x 6 ft.
      'Row length': 180,
      // 180 ft at 100 lb per 100 ft.
      Yield: 180,
      Income: 90,
      'Female share': 0.5,
      Pollenizers: '',
      Assumed: '',
      Notes: '',
    },
  },
  'beds of muskmelon in metres, transplanted, south of the equator': {
    form: {
      ...northern,
      LAST_FROST: day('2026-10-05'),
      FIRST_FROST: day('2027-04-10'),
      FROST_RISK: 0.3,
      UNITS: 'metric',
      SEEDS_PER_CELL: 2,
    },
    plot: {
      Plot: 'C',
      Crop: 'muskmelon',
      Layout: 'beds',
      Length: 30,
      Width: 10.5,
      Start: 'transplant',
      Germination: 0.9,
      'Plant spacing': 50,
      'Bed width': 1.2,
      'Path width': 0.6,
      'Rows per bed': 2,
      'Flower type': 'andromonoecious',
      'Days to maturity': 80,
      'Harvest days': 14,
      'Yield per 100': 300,
      Price: 0.5,
    },
    season: {
      YEAR_CHECK: 'yes',
      // 26 + 30 + 31 + 31 + 28 + 31 + 10.
      FROST_FREE_DAYS: 187,
      // Half way from 10 % to 50 %: 14 / 2, and 7 / 2 rounded up.
      SET_OUT_WAIT: 7,
      SOWING_WAIT: 4,
      SET_OUT_DATE: day('2026-10-12'),
      HARDEN_OFF_DATE: day('2026-10-05'),
      FIRST_SOWING_DATE: day('2026-10-09'),
      LONGEST_DAY: day('2026-12-21'),
      SPACING_PER_LENGTH: 100,
    },
    row: {
      // (10.5 + 0.6) / 1.8 = 6 beds of 2 rows of 30 x 100 / 50 = 60.
      Plants: 720,
      // A cell stands unless both seeds fail, and then unless it is culled: (1 - 0.1²) x 0.95. 2 seeds a cell.
      'Seed to sow': 2 * least(720, (1 - 0.1 ** 2) * 0.95, 0.9),
      // 1,100 an ounce of 28.349523125 g, the middle of 1,000 to 1,200: common practice, no source.
      'Seed weight': (2 * least(720, (1 - 0.1 ** 2) * 0.95, 0.9) * 28.349523125) / 1100,
      // 3 weeks, the middle of 2 to 4: University of Delaware.
      'Start transplants': day('2026-09-21'),
      'Set out or sow': day('2026-10-12'),
      // 68 °F, University of Georgia: (68 - 32) / 1.8.
      'Soil at least': 20,
      // October 12 + 80 - 10 that transplants are ahead (common practice, no source); before the longest day.
      'First pick': day('2026-12-21'),
      // Less 40, the middle of 35 to 45 days: common practice, no source.
      'Cover off': day('2026-11-11'),
      // December 21 + 14.
      'Last pick': day('2027-01-04'),
      // April 10 less 80 + 14 + 14 + 14 = 122.
      'Last sowing': day('2026-12-09'),
      // 187 less the 77 from October 5 to December 21, less 14.
      'Days to spare': 96,
      // 30 x 10.5.
      Area: 315,
      // 6 beds of 2.
      Rows: 12,
      // 720 x 50 / 100.
      'Row length': 360,
      // 360 m at 300 kg per 100 m.
      Yield: 1080,
      Income: 540,
      'Female share': '',
      Pollenizers: '',
      Assumed: '',
      Notes: '',
    },
  },
  'rows of triploid watermelon, transplanted': {
    form: northern,
    plot: {
      Plot: 'D',
      Crop: 'seedless watermelon',
      Layout: 'rows',
      Length: 200,
      Width: 48,
      Start: 'transplant',
      Germination: 0.8,
      'Row spacing': 8,
      'Plant spacing': 36,
      'Flower type': 'triploid',
      'Pollenizer share': 0.25,
      'Days to maturity': 85,
      'Harvest days': 14,
      'Yield per 100': 180,
      Price: 0.5,
    },
    row: {
      'Taken as': 'triploid watermelon',
      // 48 / 8 = 6 rows of 200 x 12 / 36 = 66.
      Plants: 396,
      'Seed to sow': least(396, 0.8 * 0.95, 0.9),
      // The reference has no count for its seed.
      'Seed weight': '',
      // 5 weeks, the middle of 4 to 6, before May 16: University of Delaware.
      'Start transplants': day('2026-04-11'),
      'Set out or sow': day('2026-05-16'),
      // °F: University of Georgia.
      'Soil at least': 72,
      // May 16 + 85 - 10.
      'First pick': day('2026-07-30'),
      // Less 40, the middle of 35 to 45.
      'Cover off': day('2026-06-20'),
      'Last pick': day('2026-08-13'),
      // October 10 less 85 + 14 + 14 + 14 = 127.
      'Last sowing': day('2026-06-05'),
      // 161 less the 89 from May 2 to July 30, less 14.
      'Days to spare': 58,
      // 396 x 36 / 12 = 1,188 ft at 180 lb per 100 ft, the pollenizers' share of the row counted in.
      Yield: 2138.4,
      Income: 1069.2,
      'Female share': '',
      // 0.9 p >= 0.25 (396 - 0.1 p), so p >= 99 / 0.925 = 107.03.
      Pollenizers: 108,
      'Keep apart': english.verdicts['no pollenizer'],
      Assumed: '',
      Notes: `${english.verdicts['no pollenizer']} ${remarks.pollenizerSeed} ${remarks.pollenizerYield} `,
    },
  },
  'a late season too short, with blanks': {
    form: { ...northern, LAST_FROST: day('2026-06-20'), FIRST_FROST: day('2026-09-10'), FROST_MARGIN: 10 },
    plot: {
      Plot: 'E',
      Crop: 'slicing cucumber',
      Length: 100,
      Width: 20,
      Germination: 0.9,
      'Row spacing': 5,
      'Plant spacing': 12,
      'Days to maturity': 50,
      'Harvest days': 20,
      'Yield per 100': 150,
    },
    row: {
      // Blank: rows.
      Plants: 400,
      'Seed to sow': least(400, 0.9, 0.9),
      // June 20 + 7.
      'Set out or sow': day('2026-06-27'),
      // After June 21: 50 + 14 fall days (Virginia Cooperative Extension).
      'First pick': day('2026-08-30'),
      // The day before frost; 20 days would end on September 19.
      'Last pick': day('2026-09-09'),
      // September 10 less 50 + 20 + 14 + 10 = 94.
      'Last sowing': day('2026-06-08'),
      // 82 between the frosts (10 + 31 + 31 + 10) less the 71 from June 20 to August 30, less 20.
      'Days to spare': -9,
      Income: '',
      // Monoecious by judgement of the reference: half female.
      'Female share': 0.5,
      Assumed: 'Flower type. No field loss. ',
      // Its crop is on no trellis.
      Posts: '',
      Notes: `${remarks.shortSeason} ${remarks.cutShort} ${remarks.sowsTooLate} `,
    },
  },
  'a parthenocarpic cucumber under cover': {
    form: { ...northern, SEASON_YEAR: 2025 },
    plot: {
      Plot: 'F',
      Crop: 'English cucumber',
      Layout: 'rows',
      Length: 48,
      Width: 12,
      Start: 'transplant',
      Germination: 0.95,
      'Row spacing': 4,
      'Plant spacing': 18,
      'Flower type': 'parthenocarpic',
      'Days to maturity': 62,
      'Harvest days': 60,
      'Yield per 100': 400,
    },
    season: { YEAR_CHECK: english.sheets.season.yearDiffers },
    row: {
      // 12 / 4 = 3 rows of 48 x 12 / 18 = 32.
      Plants: 96,
      'Cover off': english.sheets.plots.mayStay,
      'Female share': '',
      'Keep apart': english.verdicts['pollen next door'],
    },
  },
  'a cucumber sown so early that its harvest ends before the last frost': {
    form: northern,
    plot: {
      Plot: 'G',
      Crop: 'pickling cucumber',
      Length: 100,
      Width: 20,
      'Sow or set out on': day('2026-01-10'),
      'Days to maturity': 50,
      // Half a day stands for what a grower may type: the days to spare are rounded down.
      'Harvest days': 21.5,
    },
    row: {
      // January 10 + 50.
      'First pick': day('2026-03-01'),
      // From March 1 to October 10 are 30 + 30 + 31 + 30 + 31 + 31 + 30 + 10 = 223, less 21.5, rounded down.
      'Days to spare': 201,
    },
  },
  'the same sown in the year before': {
    form: northern,
    plot: {
      Plot: 'H',
      Crop: 'pickling cucumber',
      Length: 100,
      Width: 20,
      'Sow or set out on': day('2025-01-10'),
      'Days to maturity': 50,
      'Harvest days': 21,
    },
    // March 1 is 365 days earlier: 223 + 365 less 21.
    row: { 'Days to spare': 567 },
  },
  'the same sown before the last frost and picked after it': {
    form: northern,
    plot: {
      Plot: 'I',
      Crop: 'pickling cucumber',
      Length: 100,
      Width: 20,
      'Sow or set out on': day('2026-04-10'),
      'Days to maturity': 50,
      'Harvest days': 21,
    },
    // April 10 + 50 is May 30, 133 days before October 10 (1 + 30 + 31 + 31 + 30 + 10), less 21.
    row: { 'First pick': day('2026-05-30'), 'Days to spare': 112 },
  },
};

async function compute({ form, plot }: Case): Promise<{ season: Values; row: Values }> {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({ template, inputs: template === plotsTemplate ? [plot] : [], form })),
    'test',
  );
  const season = (await readForm(workbook, seasonTemplate))?.values as Values;
  const table = await workbook.readTable('Plots');
  const cells = table?.headers.map((header, column) => [header, table.rows[0]?.[column]]) ?? [];
  return { season, row: Object.fromEntries(cells) as Values };
}

/** Sums may differ in the last digits. */
const rounded = (value: CellValue | undefined): CellValue | undefined =>
  typeof value === 'number' ? Number(value.toPrecision(12)) : value;

describe.each(Object.entries(cases))('%s', (_, one) => {
  it('comes to what is worked out by hand', async () => {
    const { season, row } = await compute(one);
    const pick = (from: Values, like: Values) =>
      Object.fromEntries(Object.keys(like).map((key) => [key, rounded(from[key])]));
    const round = (values: Values) =>
      Object.fromEntries(Object.entries(values).map(([key, value]) => [key, rounded(value)]));
    expect(pick(row, one.row)).toEqual(round(one.row));
    expect(pick(season, one.season ?? {})).toEqual(round(one.season ?? {}));
  });
});

describe('no computed cell is left out', () => {
  const expected = (part: 'row' | 'season') =>
    new Set(Object.values(cases).flatMap((one) => Object.keys(one[part] ?? {})));

  test('every computed column of Plots', () => {
    const computed = plotsTemplate.tables.flatMap(({ columns }) =>
      columns.filter(({ kind }) => kind === 'computed').map(({ header }) => header),
    );
    expect(computed.filter((header) => !expected('row').has(header))).toEqual([]);
  });

  test('every computed line of Season', () => {
    const computed = seasonTemplate.form.filter(({ kind }) => kind === 'computed').map(({ name }) => name);
    expect(computed.filter((name) => !expected('season').has(name))).toEqual([]);
  });
});
