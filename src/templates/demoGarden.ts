/** An invented market garden, for the first look. Nothing in it is anybody's. Long because it is one list. */
import type { FillRequest } from '../workbook/fillSheets';
import type { InputRow } from '../workbook/template';
import { withTyped, type TypedCells } from '../workbook/withTyped';
import { plotsTemplate } from './plots';
import { wordOfCrop } from './sayCrop';
import { seedOrderTemplate } from './seedOrder';
import { allTemplates } from './sheets';
import type { CellValue } from '../workbook/port';
import { catalogue } from '../texts/catalogue';

const { demo } = catalogue;
const plotColumns = catalogue.sheets.plots.columns;
const orderColumns = catalogue.seedOrder.columns;
const packColumns = catalogue.seedOrder.prices.columns;
const { columns: priceColumns, prices: items, rates } = catalogue.money.prices;

type Headers<Key extends string> = Readonly<Record<Key, { readonly header: string }>>;
type PlotCells = Partial<Record<keyof typeof plotColumns, CellValue>>;

/** A row as the sheet's headers name its cells; null where it has none. */
const byHeader = <Key extends string>(
  headers: Headers<Key>,
  cells: Partial<Record<Key, CellValue>>,
): InputRow =>
  Object.fromEntries(
    (Object.keys(headers) as Key[]).flatMap((key): [string, CellValue][] =>
      cells[key] == null ? [] : [[headers[key].header, cells[key]]],
    ),
  );

/** Serial numbers of 2 May and 10 October 2027. */
const lastFrost = 46509;
const firstFrost = 46670;

export const demoSeason: Readonly<Record<string, CellValue>> = {
  PLACE: demo.place,
  SEASON_YEAR: 2027,
  LAST_FROST: lastFrost,
  FIRST_FROST: firstFrost,
  FROST_RISK: 0.5,
};

export const demoPlots: readonly InputRow[] = (
  [
    {
      plot: demo.plots.creek1,
      crop: demo.crops.slicing,
      layout: 'rows',
      length: 100,
      width: 20,
      start: 'transplant',
      germination: 0.92,
      fieldEmergence: 0.95,
      price: 1.1,
    },
    {
      plot: demo.plots.creek2,
      crop: demo.crops.pickling,
      layout: 'rows',
      length: 100,
      width: 24,
      rowSpacing: 5,
      plantSpacing: 12,
      start: 'seed',
      germination: 0.85,
      fieldEmergence: 0.9,
      flowerType: 'gynoecious',
      pollenizerShare: 0.1,
      yieldPer100: 120,
      price: 0.9,
    },
    {
      plot: demo.plots.creek3,
      crop: demo.crops.bush,
      layout: 'beds',
      length: 60,
      width: 16,
      plantSpacing: 24,
      bedWidth: 4,
      pathWidth: 2,
      rowsPerBed: 1,
      germination: 0.88,
      yieldPer100: 90,
      price: 1,
    },
    {
      plot: demo.plots.tunnel,
      crop: demo.crops.english,
      layout: 'rows',
      length: 48,
      width: 12,
      rowSpacing: 4,
      plantSpacing: 18,
      start: 'transplant',
      germination: 0.95,
      flowerType: 'parthenocarpic',
      daysToMaturity: 62,
      harvestDays: 60,
      yieldPer100: 400,
      price: 2,
    },
    {
      plot: demo.plots.hillPatch,
      crop: demo.crops.zucchini,
      layout: 'hills',
      length: 60,
      width: 26,
      hillSpacing: 6,
      plantsPerHill: 3,
      germination: 0.8,
      fieldEmergence: 0.9,
      price: 0.8,
    },
    {
      plot: demo.plots.fence,
      crop: demo.crops.summerSquash,
      layout: 'rows',
      length: 80,
      width: 8,
      germination: 0.72,
      price: 0.8,
      lastCucurbits: 2025,
    },
    {
      plot: demo.plots.northField,
      crop: demo.crops.winterSquash,
      layout: 'hills',
      length: 120,
      width: 60,
      start: 'seed',
      germination: 0.85,
      yieldPer100: 150,
      price: 0.6,
    },
    {
      plot: demo.plots.southField,
      crop: demo.crops.pumpkin,
      layout: 'hills',
      length: 150,
      width: 80,
      germination: 0.9,
      fieldEmergence: 0.85,
      price: 0.3,
    },
    {
      plot: demo.plots.slope,
      crop: demo.crops.cantaloupe,
      layout: 'rows',
      length: 100,
      width: 24,
      start: 'transplant',
      germination: 0.9,
      price: 0.7,
    },
    {
      plot: demo.plots.sand1,
      crop: demo.crops.watermelon,
      layout: 'rows',
      length: 100,
      width: 32,
      start: 'transplant',
      germination: 0.85,
      price: 0.35,
    },
    {
      plot: demo.plots.sand2,
      crop: demo.crops.seedless,
      layout: 'rows',
      length: 200,
      width: 48,
      rowSpacing: 8,
      plantSpacing: 36,
      start: 'transplant',
      germination: 0.8,
      pollenizerShare: 0.25,
      daysToMaturity: 85,
      yieldPer100: 180,
      price: 0.45,
    },
    {
      plot: demo.plots.arbor,
      crop: demo.crops.gourd,
      layout: 'hills',
      length: 32,
      width: 16,
      hillSpacing: 8,
      plantsPerHill: 2,
      germination: 0.7,
      daysToMaturity: 120,
    },
  ] satisfies readonly PlotCells[]
).map((cells) => byHeader(plotColumns, cells));

const pack = (
  crop: keyof typeof demo.crops,
  size: number,
  price: number,
  lot: string | null = null,
): InputRow => byHeader(packColumns, { crop: demo.crops[crop], size, price, lot });

/** Nobody's prices. Gourd has none. */
export const demoSeedPrices: readonly InputRow[] = [
  pack('pickling', 250, 6.5),
  pack('pickling', 1000, 19, demo.lots.treated),
  pack('slicing', 100, 4.25),
  pack('slicing', 500, 16.5),
  pack('bush', 50, 3.75),
  pack('english', 10, 8.5),
  pack('english', 100, 68, demo.lots.notice),
  pack('zucchini', 100, 9.5),
  pack('zucchini', 500, 38),
  pack('winterSquash', 100, 8),
  pack('pumpkin', 100, 9),
  pack('pumpkin', 500, 36),
  pack('cantaloupe', 250, 14),
  pack('watermelon', 100, 5.5),
  pack('watermelon', 1000, 40),
  pack('seedless', 100, 42),
];

const byCropWord = (cells: TypedCells[string]): TypedCells[string] =>
  Object.fromEntries(Object.entries(cells).map(([crop, typed]) => [wordOfCrop(crop), typed]));

/** Nobody's prices; 0 where the garden takes none of it. What seed costs is on the Seed order sheet. */
export const demoPrices: TypedCells = {
  Prices: {
    [items.tray[0]]: { [priceColumns.first]: 1.5 },
    [items.mix[0]]: { [priceColumns.first]: 4 },
    [items.mulch[0]]: { [priceColumns.first]: 0.04 },
    [items.drip[0]]: { [priceColumns.first]: 0.03 },
    [items.cover[0]]: { [priceColumns.first]: 0.05 },
    [items.netting[0]]: { [priceColumns.first]: 0.12 },
    [items.post[0]]: { [priceColumns.first]: 0.8 },
    [items.water[0]]: { [priceColumns.first]: 0.5 },
    [items.nitrogen[0]]: { [priceColumns.first]: 0.6 },
    [items.hive[0]]: { [priceColumns.first]: 80 },
    [items.protection[0]]: { [priceColumns.first]: 120 },
    [items.fuel[0]]: { [priceColumns.first]: 90 },
    [items.other[0]]: { [priceColumns.first]: 50 },
    [items.wage[0]]: { [priceColumns.first]: 16, [priceColumns.second]: 18 },
    [items.package[0]]: { [priceColumns.first]: 1.8 },
    [items.hauling[0]]: { [priceColumns.first]: 0.03 },
    [items.selling[0]]: { [priceColumns.first]: 0.05 },
    [items.interest[0]]: { [priceColumns.first]: 0.03 },
    [items.machinery[0]]: { [priceColumns.first]: 150 },
    [items.land[0]]: { [priceColumns.first]: 100 },
    [items.overhead[0]]: { [priceColumns.first]: 300 },
    [items.yield[0]]: { [priceColumns.second]: 0.8 },
  },
  Rates: {
    [rates.cellsPerTray[0]]: { [priceColumns.value]: 72 },
    [rates.cellVolume[0]]: { [priceColumns.value]: 4.38 },
    [rates.endTuck[0]]: { [priceColumns.value]: 3 },
    [rates.postSpacing[0]]: { [priceColumns.value]: 8 },
    [rates.waterDepth[0]]: { [priceColumns.value]: 12 },
    [rates.nitrogenRate[0]]: { [priceColumns.value]: 80 },
    [rates.nitrogenGrade[0]]: { [priceColumns.value]: 0.1 },
    [rates.hivesPerLand[0]]: { [priceColumns.value]: 1 },
    [rates.work[0]]: { [priceColumns.value]: 1 },
    [rates.pickingRate[0]]: { [priceColumns.value]: 250 },
  },
  CropPrices: byCropWord({
    'slicing cucumber': {
      [priceColumns.soldBy]: 'bushel',
      [priceColumns.price]: 38,
      [priceColumns.secondPrice]: 34,
      [priceColumns.mulched]: 1,
      [priceColumns.dripped]: 1,
    },
    'pickling cucumber': { [priceColumns.dripped]: 1 },
    'English cucumber': {
      [priceColumns.soldBy]: 'each',
      [priceColumns.weight]: 0.9,
      [priceColumns.price]: 1.6,
      [priceColumns.trellised]: 1,
      [priceColumns.dripped]: 1,
    },
    'summer squash': { [priceColumns.covered]: 1 },
    muskmelon: {
      [priceColumns.soldBy]: 'carton',
      [priceColumns.weight]: 30,
      [priceColumns.price]: 18,
      [priceColumns.mulched]: 1,
      [priceColumns.dripped]: 1,
    },
    watermelon: { [priceColumns.mulched]: 1 },
    'triploid watermelon': { [priceColumns.mulched]: 1, [priceColumns.dripped]: 1 },
  }),
};

const demoOnHand: TypedCells = {
  SeedOrder: byCropWord({
    'slicing cucumber': { [orderColumns.onHand.header]: 120, [orderColumns.packedIn.header]: 2025 },
    'winter squash': { [orderColumns.onHand.header]: 60, [orderColumns.packedIn.header]: 2021 },
  }),
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
