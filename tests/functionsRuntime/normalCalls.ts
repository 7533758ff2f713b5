/**
 * One call of each function with every argument given, optional ones mostly as their own default. The results are
 * those of README's examples and of the tests of calc, where each has its origin.
 */
import { expect } from 'vitest';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';

export interface NormalCall {
  readonly args: readonly unknown[];
  readonly gives: unknown;
}

const date = (iso: string): number => serialOfDay(dayOfIso(iso) ?? Number.NaN);

export const normalCalls: Readonly<Record<string, NormalCall>> = {
  'PLANTS.DENSITY': { args: [2, 36, 'us'], gives: 7260 },
  'PLANTS.INROWS': { args: [100, 20, 5, 12, 'inset', 'us'], gives: 400 },
  // 32 hills in each of 6 rows.
  'PLANTS.INHILLS': { args: [96, 48, 3, 1, 'square', 8, 'us'], gives: 192 },
  'PLANTS.INBEDS': { args: [100, 40, 4, 2, 2, 12, 'us'], gives: 1400 },
  'PLANTS.INAREA': { args: [660, 5, 12, 'us'], gives: 132 },
  'PLANTS.FORYIELD': { args: [100, 2.5], gives: 40 },
  'AREA.FORPLANTS': { args: [132, 5, 12, 'us'], gives: 660 },
  'AREA.FROM': { args: [0.5, 'acre', 'us'], gives: 21780 },
  'ROW.FORPLANTS': { args: [100, 12, 'us'], gives: 100 },
  'ROW.INAREA': { args: [43560, 8, 'us'], gives: 5445 },
  'ROW.FORDEMAND': { args: [30, 150, 4], gives: 80 },
  'STAND.COUNT': { args: [66, 100, 12, 'us'], gives: 0.66 },
  'STAND.REPLANT': { args: [0.66, date('2026-06-01'), date('2026-07-07'), 0.75], gives: 'fill gaps' },
  // R's beta-binomial, as in tests/calc/stand.
  'SEED.NEEDED': { args: [100, 0.8, 0.9, 0.95, 400], gives: 153 },
  'SEED.PERHILL': { args: [3, 0.8, 1, 0.95], gives: 6 },
  // 0.8^5 + 5 0.2 0.8^4 + 10 0.2^2 0.8^3
  'SEED.CHANCE': { args: [5, 3, 0.8, 1], gives: expect.closeTo(0.94208, 12) },
  'SEED.WEIGHT': { args: [500, 1000, 'us'], gives: 0.5 },
  'SEED.STANDARD': { args: ['cucumber'], gives: 0.8 },
  // R's beta quantile, as in tests/calc/seed.
  'SEED.TEST': {
    args: [320, 400, 0.95],
    gives: [[0.8, expect.closeTo(0.757389950257, 10), expect.closeTo(0.83810479955, 10)]],
  },
  'SEED.TOLERANCE': { args: [0.805, 4], gives: 0.15 },
  'SEED.STORAGELEFT': { args: ['cucumber', 2023, 2026], gives: 2 },
  'SEED.PACKS': {
    args: [1200, [[100], [500], [1000]], [[3.5], [12], [20]]],
    gives: [
      [100, 2, 7],
      [1000, 1, 20],
      ['total', 3, 27],
    ],
  },
  'SEED.PACKCOST': {
    args: [1200, 'melon', [['melon'], ['gourd'], ['melon']], [[100], [5], [1000]], [[3.5], [1], [20]]],
    gives: 27,
  },
  'SEED.PACKLIST': {
    args: [1200, 'melon', [['melon'], ['gourd'], ['melon']], [[100], [5], [1000]], [[3.5], [1], [20]]],
    gives: '2 of 100, 1 of 1000',
  },
  'TRAY.CELLS': { args: [100, 0.85, 1, 0.05, 0.9], gives: 131 },
  'TRAY.COUNT': { args: [131, 72], gives: 2 },
  'TRAY.MIX': { args: [72, 4.38, 'us'], gives: expect.closeTo(0.1825, 12) },
  'DATE.SETOUT': { args: [date('2026-05-02'), 14], gives: date('2026-05-16') },
  'DATE.STARTTRANSPLANTS': { args: [date('2026-05-16'), 3], gives: date('2026-04-25') },
  'DATE.HARDENOFF': { args: [date('2026-05-16'), 7], gives: date('2026-05-09') },
  'DATE.FIRSTSOWING': { args: [date('2026-05-02'), 7], gives: date('2026-05-09') },
  'DATE.LASTSOWING': { args: [date('2026-10-10'), 60, 21, 14, 0], gives: date('2026-07-07') },
  'DATE.FIRSTPICK': {
    args: [date('2026-05-16'), 60, 'transplant', 'seed', 10, 0],
    gives: date('2026-07-05'),
  },
  'DATE.LASTPICK': { args: [date('2026-07-15'), 21, date('2026-10-10')], gives: date('2026-08-05') },
  'DATE.COVEROFF': { args: [date('2026-07-15'), 'cucumber', 9, 'monoecious'], gives: date('2026-07-06') },
  'DATE.SUCCESSION': {
    args: [date('2026-05-09'), date('2026-06-08'), 14],
    gives: [[date('2026-05-09')], [date('2026-05-23')], [date('2026-06-06')]],
  },
  'SEASON.DAYS': { args: [date('2026-05-02'), date('2026-10-10')], gives: 161 },
  'SEASON.SPARE': { args: [date('2026-05-02'), date('2026-10-10'), 110], gives: 51 },
  'FLOWER.FEMALESHARE': { args: [0.1, 0.5, 1], gives: expect.closeTo(0.95, 12) },
  'FLOWER.MALESPERFEMALE': { args: [0.0625], gives: 15 },
  'FLOWER.SHARE': { args: [1, 3], gives: 0.25 },
  'FLOWER.POLLENIZERS': { args: [400, 0.25, 0.2, 'dedicated'], gives: 118 },
  'FLOWER.NOPOLLENIZER': { args: [2, 0.1], gives: expect.closeTo(0.81, 12) },
  'FLOWER.GROUPSIZE': { args: [0.1, 0.95], gives: 29 },
  'FLOWER.HIVES': { args: [100_000, 1, 'us'], gives: 3 },
  'FLOWER.CROSSES': {
    args: ['zucchini', 'pumpkin', false],
    gives: expect.stringMatching(/^They cross: both are Cucurbita pepo/),
  },
  'FLOWER.ISOLATE': {
    args: ['pumpkin', 'monoecious', [['pumpkin'], ['gourd']], [['monoecious'], ['monoecious']], false],
    gives: 'clear',
  },
  'HARVEST.YIELD': { args: [400, 138, 1], gives: 552 },
  // Solid geometry: pi 6 (3 12^2 + 6^2) / 6 = 468 pi cu in.
  'SUPPLY.HILLSOIL': { args: [1, 24, 6, 'mound', 'us'], gives: expect.closeTo((468 * Math.PI) / 1728, 12) },
  // North Carolina HIL-24; an acre-inch; Penn State's table, to its one decimal.
  'SUPPLY.FERTILIZER': { args: [43560, 50, 0.05, 'us'], gives: expect.closeTo(1000, 9) },
  'SUPPLY.WATER': { args: [43560, 1, 'us'], gives: expect.closeTo(27154.29, 2) },
  'SUPPLY.WATERNEED': { args: [0.25, 1, 7, 0.5], gives: 1.25 },
  'SUPPLY.DRIPRUNTIME': { args: [1, 30, 13.2, 1, 'us'], gives: expect.closeTo(11.8, 1) },
  'SUPPLY.COVER': { args: [4, 100, 3, 'us'], gives: 424 },
  'SUPPLY.TRELLIS': { args: [100, 8, 1, 'us'], gives: 14 },
  // 21 days: ten gaps of two, and the first pick.
  'HARVEST.PICKS': { args: [date('2026-07-05'), date('2026-07-26'), 2], gives: 11 },
  'HARVEST.FORECAST': { args: [3.5, 200, 0.5], gives: 350 },
  // USDA AIB 539: 48 lb, and 1 1/2 to 4 in for pickles.
  'HARVEST.BUSHELS': { args: [480, 'cucumber'], gives: 10 },
  'HARVEST.SIZE': { args: [3, 'cucumber', 'pickles', 'us'], gives: 'ready' },
  // USDA AIB 539: 14 lb for 7 quarts, a bushel of 48 lb for as few as 16.
  'PICKLE.JARS': { args: [14, 'quart'], gives: [[7, 4]] },
  'PICKLE.POUNDS': { args: [7, 'quart'], gives: [[14, 21]] },
  // Texas B-1241, watermelon; the others hand computed.
  'BUDGET.RETURN': { args: [1087.5, 1062.81], gives: expect.closeTo(24.69, 9) },
  'BUDGET.BREAKEVENPRICE': { args: [1209.47, 150], gives: expect.closeTo(8.063, 3) },
  'BUDGET.BREAKEVENYIELD': { args: [1144, 9.77, 4.05], gives: expect.closeTo(200, 9) },
  'BUDGET.SENSITIVITY': {
    args: [[[2, 3]], [[100], [200]], 250, 0.5],
    gives: [
      ['yield \\ price', 2, 3],
      [100, -100, 0],
      [200, 50, 250],
    ],
  },
  'BUDGET.PICKHOURS': { args: [400, 11, 200], gives: 22 },
  // Purdue: 1 a plant; 12 on 30 are 0.4.
  'BEETLE.THRESHOLD': { args: ['pumpkin', false], gives: 5 },
  'BEETLE.VERDICT': {
    args: [12, 30, 'cucumber', 'seedling', true],
    gives: 'Below the threshold: 0.4 a plant, the threshold is 1.',
  },
  'ROTATION.YEARS': { args: [2026, [[2019], [2023]]], gives: 2 },
  'DATE.AFTERSPRAY': { args: [date('2026-07-05'), 3], gives: date('2026-07-08') },
  // 7 CFR 205.203(c)(1): 120 days.
  'DATE.AFTERMANURE': { args: [date('2026-03-02'), true], gives: date('2026-06-30') },
  'CROP.VALUE': { args: ['muskmelon', 'days to maturity', 'low', 'us'], gives: 75 },
  'CROP.NAME': { args: [' Zucchini '], gives: 'summer squash' },
  'CROP.SOURCE': { args: ['gourd', 'frost margin'], gives: expect.stringMatching(/^judgement/) },
  'CROP.LIST': { args: [], gives: expect.arrayContaining([['pumpkin'], ['triploid watermelon']]) },
  'CHECK.ANSWER': { args: [145, 133, 0.005], gives: 'too high by 12 (9 %)' },
  // Its arguments are ranges in functions.json: a single cell comes as one row of one.
  'CHECK.WORKING': {
    args: ['PLANTS.DENSITY', [[2]], [[36]], [['us']], ...Array.from({ length: 6 }, () => [[null]])],
    gives: [
      [
        'area per plant',
        6,
        'sq ft',
        'row spacing × plant spacing ÷ 12',
        'row spacing 2, plant spacing 36, spacing units in one length unit 12',
        '',
      ],
      [
        'plants per acre or hectare',
        7260,
        'per acre',
        'area of an acre or hectare ÷ area per plant',
        'area of an acre or hectare 43560, area per plant 6',
        '',
      ],
      ['source', '', '', '', '', expect.stringContaining('Farm and Garden Rule-Book (1911)')],
    ],
  },
  // 100 x 0.8, hand computed; single cells as above.
  'CHECK.SLIP': {
    args: [80, 'SEED.NEEDED', [[100]], [[0.8]], ...Array.from({ length: 7 }, () => [[null]])],
    gives: 'You multiplied by the germination instead of dividing by it.',
  },
  'CROP.TRAITS': { args: [], gives: expect.arrayContaining([['row spacing'], ['days to maturity']]) },
  // Of three frosts the middle one; the rest as in tests/functions/weather.
  'FROST.LASTDATES': {
    args: [[[date('2026-04-28')], [date('2026-04-29')]], [[30], [50]], 32, 'us', 'north'],
    gives: [[2026, 'void']],
  },
  'FROST.FIRSTDATES': {
    args: [[[date('2025-07-24')], [date('2025-07-25')]], [[30], [50]], 32, 'us', 'north'],
    gives: [[2025, date('2025-07-24')]],
  },
  'FROST.YEARS': {
    args: [[[date('2025-07-24')], [date('2025-07-25')]], [[30], [50]], 32, 'us', 'north'],
    gives: [[2025, 'void', date('2025-07-24'), 'void']],
  },
  'FROST.SPRINGDATE': {
    args: [[[date('2024-04-20')], [date('2025-05-02')], [date('2026-04-28')]], 0.5, 2027, 'inc', 'north'],
    gives: date('2027-04-28'),
  },
  'FROST.FALLDATE': {
    args: [[[date('2024-10-20')], [date('2025-10-02')], [date('2026-10-10')]], 0.5, 2027, 'inc', 'north'],
    gives: date('2027-10-10'),
  },
  'FROST.CHANCE': {
    args: [date('2027-04-25'), [[date('2024-04-20')], [date('2025-05-02')]], 'spring', 'north'],
    gives: 0.5,
  },
  // Michigan State's worked example.
  'HEAT.DAY': { args: [65, 40, 50, 86, 'mean'], gives: 2.5 },
  'HEAT.SUM': { args: [[[65], [80]], [[40], [60]], 50, 86, 'mean'], gives: 22.5 },
  'HEAT.DATE': {
    args: [
      [[date('2026-05-01')], [date('2026-05-02')]],
      [[65], [80]],
      [[40], [60]],
      date('2026-05-01'),
      22.5,
      50,
      86,
      'mean',
    ],
    gives: date('2026-05-02'),
  },
  'HEAT.YEARS': {
    args: [
      [[date('2026-05-01')], [date('2026-05-02')]],
      [[65], [80]],
      [[40], [60]],
      date('2026-05-01'),
      2,
      50,
      86,
      'mean',
    ],
    gives: [[2026, 22.5]],
  },
  'HEAT.DATES': {
    args: [
      [[date('2026-05-01')], [date('2026-05-02')]],
      [[65], [80]],
      [[40], [60]],
      date('2026-05-01'),
      20,
      50,
      86,
      'mean',
    ],
    gives: [[2026, date('2026-05-02'), 1]],
  },
  'HEAT.SUCCESSION': {
    args: [
      [[date('2026-05-01')], [date('2026-05-02')]],
      [[80], [80]],
      [[60], [60]],
      date('2026-05-01'),
      date('2026-05-02'),
      20,
      50,
      86,
      'mean',
    ],
    gives: [[date('2026-05-01')], [date('2026-05-02')]],
  },
  // Harrington and Minges 1954; Oregon State and Georgia.
  'EMERGENCE.DAYS': { args: ['cucumber', 59, 'us'], gives: expect.closeTo(13, 9) },
  'EMERGENCE.PERCENT': { args: ['cucumber', 59, 'us'], gives: expect.closeTo(0.95, 9) },
  'SOIL.RANGE': { args: ['cucumber', 'us'], gives: [[60, 60, 95, 105, 64]] },
};
