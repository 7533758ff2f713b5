/** An invented market garden, for the first look. Nothing in it is anybody's. Long because it is one list. */
import type { FillRequest } from '../workbook/fillSheets';
import type { InputRow } from '../workbook/template';
import { withTyped, type TypedCells } from '../workbook/withTyped';
import { plotsTemplate } from './plots';
import { seedOrderTemplate } from './seedOrder';
import { allTemplates } from './sheets';
import type { CellValue } from '../workbook/port';

/** Serial numbers of 2 May and 10 October 2027. */
const lastFrost = 46509;
const firstFrost = 46670;

export const demoSeason: Readonly<Record<string, CellValue>> = {
  PLACE: 'Invented garden on the creek',
  SEASON_YEAR: 2027,
  LAST_FROST: lastFrost,
  FIRST_FROST: firstFrost,
  FROST_RISK: 0.5,
};

export const demoPlots: readonly InputRow[] = [
  {
    Plot: 'Creek 1',
    Crop: 'slicing cucumber',
    Layout: 'rows',
    Length: 100,
    Width: 20,
    Start: 'transplant',
    Germination: 0.92,
    'Field emergence': 0.95,
    Price: 1.1,
  },
  {
    Plot: 'Creek 2',
    Crop: 'pickling cucumber',
    Layout: 'rows',
    Length: 100,
    Width: 24,
    'Row spacing': 5,
    'Plant spacing': 12,
    Start: 'seed',
    Germination: 0.85,
    'Field emergence': 0.9,
    'Flower type': 'gynoecious',
    'Pollenizer share': 0.1,
    'Yield per 100': 120,
    Price: 0.9,
  },
  {
    Plot: 'Creek 3',
    Crop: 'bush cucumber',
    Layout: 'beds',
    Length: 60,
    Width: 16,
    'Plant spacing': 24,
    'Bed width': 4,
    'Path width': 2,
    'Rows per bed': 1,
    Germination: 0.88,
    'Yield per 100': 90,
    Price: 1,
  },
  {
    Plot: 'Tunnel',
    Crop: 'English cucumber',
    Layout: 'rows',
    Length: 48,
    Width: 12,
    'Row spacing': 4,
    'Plant spacing': 18,
    Start: 'transplant',
    Germination: 0.95,
    'Flower type': 'parthenocarpic',
    'Days to maturity': 62,
    'Harvest days': 60,
    'Yield per 100': 400,
    Price: 2,
  },
  {
    Plot: 'Hill patch',
    Crop: 'zucchini',
    Layout: 'hills',
    Length: 60,
    Width: 26,
    'Hill spacing': 6,
    'Plants per hill': 3,
    Germination: 0.8,
    'Field emergence': 0.9,
    Price: 0.8,
  },
  {
    Plot: 'Fence',
    Crop: 'summer squash',
    Layout: 'rows',
    Length: 80,
    Width: 8,
    Germination: 0.72,
    Price: 0.8,
    'Last cucurbits': 2025,
  },
  {
    Plot: 'North field',
    Crop: 'winter squash',
    Layout: 'hills',
    Length: 120,
    Width: 60,
    Start: 'seed',
    Germination: 0.85,
    'Yield per 100': 150,
    Price: 0.6,
  },
  {
    Plot: 'South field',
    Crop: 'pumpkin',
    Layout: 'hills',
    Length: 150,
    Width: 80,
    Germination: 0.9,
    'Field emergence': 0.85,
    Price: 0.3,
  },
  {
    Plot: 'Slope',
    Crop: 'cantaloupe',
    Layout: 'rows',
    Length: 100,
    Width: 24,
    Start: 'transplant',
    Germination: 0.9,
    Price: 0.7,
  },
  {
    Plot: 'Sand 1',
    Crop: 'watermelon',
    Layout: 'rows',
    Length: 100,
    Width: 32,
    Start: 'transplant',
    Germination: 0.85,
    Price: 0.35,
  },
  {
    Plot: 'Sand 2',
    Crop: 'seedless watermelon',
    Layout: 'rows',
    Length: 200,
    Width: 48,
    'Row spacing': 8,
    'Plant spacing': 36,
    Start: 'transplant',
    Germination: 0.8,
    'Pollenizer share': 0.25,
    'Days to maturity': 85,
    'Yield per 100': 180,
    Price: 0.45,
  },
  {
    Plot: 'Arbor',
    Crop: 'gourd',
    Layout: 'hills',
    Length: 32,
    Width: 16,
    'Hill spacing': 8,
    'Plants per hill': 2,
    Germination: 0.7,
    'Days to maturity': 120,
  },
];

const pack = (Crop: string, seeds: number, price: number, note = ''): InputRow => ({
  Crop,
  'Seeds in a pack': seeds,
  'Price of a pack': price,
  ...(note === '' ? {} : { 'Lot or note': note }),
});

/** Nobody's prices. Gourd has none. */
export const demoSeedPrices: readonly InputRow[] = [
  pack('pickling cucumber', 250, 6.5),
  pack('pickling cucumber', 1000, 19, 'treated: read the label'),
  pack('slicing cucumber', 100, 4.25),
  pack('slicing cucumber', 500, 16.5),
  pack('bush cucumber', 50, 3.75),
  pack('English cucumber', 10, 8.5),
  pack('English cucumber', 100, 68, 'two weeks’ notice'),
  pack('zucchini', 100, 9.5),
  pack('zucchini', 500, 38),
  pack('winter squash', 100, 8),
  pack('pumpkin', 100, 9),
  pack('pumpkin', 500, 36),
  pack('cantaloupe', 250, 14),
  pack('watermelon', 100, 5.5),
  pack('watermelon', 1000, 40),
  pack('seedless watermelon', 100, 42),
];

/** Nobody's prices; 0 where the garden takes none of it. What seed costs is on the Seed order sheet. */
export const demoPrices: TypedCells = {
  Prices: {
    Trays: { First: 1.5 },
    'Potting mix': { First: 4 },
    Mulch: { First: 0.04 },
    'Drip tape': { First: 0.03 },
    'Row cover': { First: 0.05 },
    'Trellis netting': { First: 0.12 },
    'Trellis posts': { First: 0.8 },
    Water: { First: 0.5 },
    'Nitrogen fertilizer': { First: 0.6 },
    Hives: { First: 80 },
    'Crop protection': { First: 120 },
    'Fuel and repairs': { First: 90 },
    'Other costs before harvest': { First: 50 },
    Wages: { First: 16, Second: 18 },
    Packages: { First: 1.8 },
    Hauling: { First: 0.03 },
    Selling: { First: 0.05 },
    Interest: { First: 0.03 },
    Machinery: { First: 150 },
    Land: { First: 100 },
    Overhead: { First: 300 },
    Yield: { Second: 0.8 },
  },
  Rates: {
    'Cells in a tray': { Value: 72 },
    'Volume of a cell': { Value: 4.38 },
    'Buried at a row end': { Value: 3 },
    'Post spacing': { Value: 8 },
    'Water of the season': { Value: 12 },
    Nitrogen: { Value: 80 },
    'Nitrogen in the bag': { Value: 0.1 },
    Hives: { Value: 1 },
    'Work before harvest': { Value: 1 },
    Picking: { Value: 250 },
  },
  CropPrices: {
    'slicing cucumber': { 'Sold by': 'bushel', Price: 38, 'Second price': 34, Mulched: 1, 'On drip': 1 },
    'pickling cucumber': { 'On drip': 1 },
    'English cucumber': {
      'Sold by': 'each',
      'Weight of one': 0.9,
      Price: 1.6,
      'On trellis': 1,
      'On drip': 1,
    },
    'summer squash': { Covered: 1 },
    muskmelon: { 'Sold by': 'carton', 'Weight of one': 30, Price: 18, Mulched: 1, 'On drip': 1 },
    watermelon: { Mulched: 1 },
    'triploid watermelon': { Mulched: 1, 'On drip': 1 },
  },
};

const demoOnHand: TypedCells = {
  SeedOrder: {
    'slicing cucumber': { 'Seed on hand': 120, 'Packed in': 2025 },
    'winter squash': { 'Seed on hand': 60, 'Packed in': 2021 },
  },
};

const demoRows: Readonly<Record<string, readonly InputRow[]>> = {
  [plotsTemplate.id]: demoPlots,
  [seedOrderTemplate.id]: demoSeedPrices,
};

/** Every sheet, filled with the invented garden. */
export const demoFilling: readonly FillRequest[] = allTemplates.map((template) => ({
  template: withTyped(template, { ...demoPrices, ...demoOnHand }),
  inputs: demoRows[template.id] ?? [],
  form: demoSeason,
}));
