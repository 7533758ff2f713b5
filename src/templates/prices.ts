/**
 * The Prices sheet: every price and rate of the budget, asked once. Nothing of money has a default.
 * Longer than most because every cell is declared here.
 */
import type {
  CellContent,
  ConvertsByRow,
  Expression,
  Format,
  SheetTemplate,
  TableColumn,
  TableTemplate,
} from '../workbook/template';
import type { Cause } from '../workbook/findFindings';
import { columnOf } from '../workbook/columnOf';
import { allOf, call, column, input, isBlank, lookUp, native, operate, when } from '../workbook/expressions';
import { crops } from '../reference/crops';
import { unitFactors } from '../reference/unitFactors';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';
import { inWords } from './inWords';
import { formerCropNames, wordOfCrop } from './sayCrop';

const words = catalogue.money.prices;
const { columns: headers, notes, mend, units: ownUnits } = words;
const unitNames = catalogue.units;
const { columns: sums } = catalogue.money.byCrop;

const isMetric = operate(input('UNITS'), '=', 'metric');
const inUnits = (us: string, metric: string): Expression => when(isMetric, metric, us);

/** The US unit as the converter knows it, and the unit of either system in words. */
interface Measured {
  readonly converts?: string;
  readonly unit: CellContent;
}
const same = (unit: string): Measured => ({ unit });
const measure = (converts: keyof typeof unitNames, metric: keyof typeof unitNames): Measured => ({
  converts,
  unit: { compute: inUnits(unitNames[converts], unitNames[metric]) },
});
const perWeight = measure('perLb', 'perKg');
const perLength = measure('perFt', 'perM');
const perLand = measure('perAcre', 'perHectare');
const nutrient = measure('lbPerAcre', 'kgPerHectare');
const length = measure('ft', 'm');

/** What is to mend, and is no matter of a number alone. */
const notOfFit = ['soldBy', 'weight', 'dearHarvest', 'noneSold'] as const;
type Fit = Exclude<keyof typeof mend, (typeof notOfFit)[number]>;

/** What a cell must hold to be reckoned with. */
const fits = (cell: Expression, fit: Fit): Expression => {
  const holds: Readonly<Record<Fit, Expression>> = {
    orNone: operate(cell, '>=', 0),
    size: operate(cell, '>', 0),
    count: native('AND', operate(cell, '>=', 1), operate(native('INT', cell), '=', cell)),
    share: native('AND', operate(cell, '>=', 0), operate(cell, '<=', 1)),
    // Of a good year; what is more was meant in per cent.
    shareOrMore: native('AND', operate(cell, '>=', 0), operate(cell, '<=', 2)),
    grade: native('AND', operate(cell, '>', 0), operate(cell, '<=', 1)),
  };
  return when(native('ISNUMBER', cell), holds[fit], false);
};

const sayMend = (header: string, advice: string): string => fill(words.toMend, { header, advice });
const askedToMend = (header: string, fit: Fit): Expression =>
  when(
    native('OR', isBlank(column(header)), fits(column(header), fit)),
    '',
    `${sayMend(header, mend[fit])} `,
  );
/** It fits, and turns every sum of what is sold to 0. */
const askedToSell = (header: string): Expression =>
  when(
    // A blank is 0 to some programs.
    when(native('ISNUMBER', column(header)), operate(column(header), '=', 0), false),
    `${sayMend(header, mend.noneSold)} `,
    '',
  );
const join = (parts: readonly Expression[]): Expression =>
  parts.reduce((left, right) => operate(left, '&', right));

type PriceKey = keyof typeof words.prices;
type RateKey = keyof typeof words.rates;

const priced: Readonly<Record<PriceKey, Measured & { readonly fit?: Fit; readonly blank?: number }>> = {
  tray: same(ownUnits.each),
  mix: measure('perCuFt', 'perLitre'),
  mulch: perLength,
  drip: perLength,
  cover: perLength,
  netting: perLength,
  post: same(ownUnits.each),
  water: measure('perThousandGallons', 'perCuM'),
  nitrogen: perWeight,
  phosphate: perWeight,
  potash: perWeight,
  hive: same(ownUnits.each),
  protection: perLand,
  fuel: perLand,
  other: perLand,
  wage: same(ownUnits.perHour),
  package: same(ownUnits.each),
  hauling: perWeight,
  selling: { ...same(ownUnits.share), fit: 'share' },
  interest: { ...same(ownUnits.share), fit: 'share' },
  machinery: perLand,
  land: perLand,
  overhead: same(ownUnits.perGarden),
  yield: { ...same(ownUnits.share), fit: 'shareOrMore', blank: 1 },
};

const rated: Readonly<Record<RateKey, Measured & { readonly fit: Fit }>> = {
  cellsPerTray: { ...same(ownUnits.cells), fit: 'count' },
  cellVolume: { ...measure('cuIn', 'ml'), fit: 'size' },
  endTuck: { ...length, fit: 'orNone' },
  postSpacing: { ...length, fit: 'size' },
  waterDepth: { ...measure('inOfWater', 'mm'), fit: 'orNone' },
  nitrogenRate: { ...nutrient, fit: 'orNone' },
  nitrogenGrade: { ...same(ownUnits.share), fit: 'grade' },
  phosphateRate: { ...nutrient, fit: 'orNone' },
  phosphateGrade: { ...same(ownUnits.share), fit: 'grade' },
  potashRate: { ...nutrient, fit: 'orNone' },
  potashGrade: { ...same(ownUnits.share), fit: 'grade' },
  hivesPerLand: { ...perLand, fit: 'orNone' },
  work: {
    converts: 'perFt',
    unit: { compute: inUnits(ownUnits.hoursOfRow.us, ownUnits.hoursOfRow.metric) },
    fit: 'orNone',
  },
  pickingRate: {
    converts: 'ft',
    unit: { compute: inUnits(ownUnits.rowAnHour.us, ownUnits.rowAnHour.metric) },
    fit: 'size',
  },
};

/** By the label of a row, which stands in the column `by`. */
const convertsBy = <Key extends string>(
  by: string,
  labels: Readonly<Record<Key, readonly [string, string]>>,
  measured: Readonly<Record<Key, Measured>>,
): ConvertsByRow => ({
  by,
  units: Object.fromEntries(
    (Object.keys(measured) as Key[]).flatMap((key) => {
      const { converts } = measured[key];
      return converts === undefined ? [] : [[labels[key][0], converts] as const];
    }),
  ),
});

/** Rates of interest and the like have decimals. */
const formatsOf = <Key extends string>(
  labels: Readonly<Record<Key, readonly [string, string]>>,
  measured: Readonly<Record<Key, Measured>>,
): Readonly<Record<string, Format>> =>
  Object.fromEntries(
    (Object.keys(measured) as Key[])
      .filter((key) => measured[key].unit === ownUnits.share)
      .map((key) => [labels[key][0], 'percentTenth']),
  );
const inMoney: Partial<TableColumn> = { format: 'price' };

const typed = (header: string, width: number, more: Partial<TableColumn> = {}): TableColumn =>
  columnOf(header, width, { kind: 'input', ...more });

const nameWidth = 26;
const textWidth = 62;
const numberWidth = 10;
/** Texts run on from it over what is free to its right. */
const toMend = columnOf(headers.toMend, numberWidth, { format: 'words', note: notes.toMend, runsOn: true });

const first = column(headers.first);
const second = column(headers.second);

const priceFormats = { ...inMoney, formats: formatsOf(words.prices, priced) };
const pricesTable: TableTemplate = {
  name: 'Prices',
  heading: words.tables.prices,
  grows: false,
  columns: [
    columnOf(headers.item, nameWidth, { format: 'words' }),
    columnOf(headers.what, textWidth, { format: 'words' }),
    columnOf(headers.unit, 15, { format: 'words' }),
    ...[headers.first, headers.second].map((header) =>
      typed(header, numberWidth, {
        ...priceFormats,
        converts: convertsBy(headers.item, words.prices, priced),
      }),
    ),
    columnOf(headers.firstUsed, numberWidth, { ...priceFormats, note: notes.firstUsed }),
    columnOf(headers.secondUsed, numberWidth, { ...priceFormats, note: notes.secondUsed }),
    toMend,
  ],
  rows: (Object.keys(priced) as PriceKey[]).map((key) => {
    const { unit, fit = 'orNone', blank = '' } = priced[key];
    return [
      ...words.prices[key],
      unit,
      null,
      null,
      { compute: when(fits(first, fit), first, blank) },
      { compute: when(fits(second, fit), second, column(headers.firstUsed)) },
      {
        compute: join(
          [headers.first, headers.second].flatMap((header) => [
            askedToMend(header, fit),
            ...(key === 'yield' ? [askedToSell(header)] : []),
          ]),
        ),
      },
    ];
  }),
};

const value = column(headers.value);

export const needsNoBees = crops
  .filter(({ figures }) => figures['flower type']?.text === 'parthenocarpic')
  .map(({ name }) => wordOfCrop(name));

/** Of all crops that need bees. */
export const hiveArea = needsNoBees.reduce(
  (area, name) =>
    operate(
      area,
      '-',
      native('SUMIFS', allOf('CropSums', sums.area.header), allOf('CropSums', sums.crop.header), name),
    ),
  native('SUM', allOf('CropSums', sums.area.header)),
);

/** "" where there is none. */
export const rateUsed = (key: RateKey): Expression =>
  lookUp({ value: words.rates[key][0] }, 'Rates', headers.rate, headers.used);

const landArea = input('LAND_AREA');
const units = input('UNITS');
/** Nothing, until every rate that it takes is given. */
const whenGiven = (rates: readonly RateKey[], compute: Expression): CellContent => ({
  compute: when(native('AND', ...rates.map((key) => native('ISNUMBER', rateUsed(key)))), compute, ''),
});
const fertilizer = (rate: RateKey, grade: RateKey): readonly [CellContent, CellContent] => [
  whenGiven([rate, grade], call('SUPPLY.FERTILIZER', landArea, rateUsed(rate), rateUsed(grade), units)),
  nutrient.unit,
];

/** What a rate makes, by our functions, and its unit. */
const comesTo: Readonly<Partial<Record<RateKey, readonly [CellContent, CellContent]>>> = {
  cellVolume: [
    whenGiven(
      ['cellsPerTray', 'cellVolume'],
      call('TRAY.MIX', rateUsed('cellsPerTray'), rateUsed('cellVolume'), units),
    ),
    { compute: inUnits(ownUnits.mixOfTray.us, ownUnits.mixOfTray.metric) },
  ],
  waterDepth: [
    whenGiven(['waterDepth'], call('SUPPLY.WATER', landArea, rateUsed('waterDepth'), units)),
    { compute: inUnits(ownUnits.waterOfLand.us, ownUnits.waterOfLand.metric) },
  ],
  nitrogenGrade: fertilizer('nitrogenRate', 'nitrogenGrade'),
  phosphateGrade: fertilizer('phosphateRate', 'phosphateGrade'),
  potashGrade: fertilizer('potashRate', 'potashGrade'),
  hivesPerLand: [
    {
      compute: when(
        native('AND', native('ISNUMBER', rateUsed('hivesPerLand')), operate(hiveArea, '>', 0)),
        call('FLOWER.HIVES', hiveArea, rateUsed('hivesPerLand'), units),
        '',
      ),
    },
    ownUnits.hivesOfGarden,
  ],
};

const rateFormats = { formats: formatsOf(words.rates, rated) };
const ratesTable: TableTemplate = {
  name: 'Rates',
  heading: words.tables.rates,
  grows: false,
  columns: [
    columnOf(headers.rate, nameWidth, { format: 'words' }),
    columnOf(headers.what, textWidth, { format: 'words' }),
    columnOf(headers.unit, 15, { format: 'words' }),
    typed(headers.value, numberWidth, {
      ...rateFormats,
      converts: convertsBy(headers.rate, words.rates, rated),
    }),
    columnOf(headers.used, numberWidth, rateFormats),
    columnOf(headers.comesTo, numberWidth, { formats: { [words.rates.waterDepth[0]]: 'whole' } }),
    columnOf(headers.of, numberWidth, { format: 'words' }),
    toMend,
  ],
  rows: (Object.keys(rated) as RateKey[]).map((key) => {
    const { unit, fit } = rated[key];
    return [
      ...words.rates[key],
      unit,
      null,
      { compute: when(fits(value, fit), value, '') },
      ...(comesTo[key] ?? [null, null]),
      { compute: askedToMend(headers.value, fit) },
    ];
  }),
};

/** What the numbers of a crop must hold. */
const ofCrop: Readonly<Record<string, Fit>> = {
  [headers.weight]: 'size',
  [headers.price]: 'orNone',
  [headers.secondPrice]: 'orNone',
  [headers.harvestCost]: 'orNone',
  [headers.seedPrice]: 'orNone',
  [headers.mulched]: 'share',
  [headers.dripped]: 'share',
  [headers.covered]: 'share',
  [headers.trellised]: 'share',
};

const soldBy = column(headers.soldBy);
/** The same in every language; a blank is the first. */
export const soldUnits = ['weight', 'bushel', 'carton', 'each'] as const;
const [byWeight, bushel] = soldUnits;
const { lb, kg, ...others } = words.alsoSoldBy;
const isTyped = (names: readonly string[]): Expression =>
  native('OR', ...names.map((name) => operate(soldBy, '=', name)));
const namesOf = (choice: string): readonly string[] => [
  choice,
  ...Object.entries(others).flatMap(([of, names]) => (of === choice ? names : [])),
];
/** "" for a word that is none, and for a kg where prices are for a lb. */
const takenAs = when(
  native('OR', isBlank(soldBy), isTyped([byWeight]), when(isMetric, isTyped(kg), isTyped(lb))),
  byWeight,
  soldUnits
    .filter((choice) => choice !== byWeight)
    .reduceRight<Expression>((otherwise, choice) => when(isTyped(namesOf(choice)), choice, otherwise), {
      value: '',
    }),
);

const isSoldAs = (choice: string): Expression => operate(column(headers.soldAs), '=', choice);
const isByWeight = isSoldAs(byWeight);
const isKnownSale = operate(column(headers.soldAs), '<>', '');

const weightUsed = when(
  isByWeight,
  1,
  when(
    fits(column(headers.weight), 'size'),
    column(headers.weight),
    when(
      native('AND', isSoldAs(bushel), isBlank(column(headers.weight))),
      native(
        'IFERROR',
        // A bushel weighs the same in either system.
        operate(
          when(isMetric, unitFactors.kgPerPound, 1),
          '/',
          call('HARVEST.BUSHELS', 1, column(headers.crop)),
        ),
        '',
      ),
      '',
    ),
  ),
);

/** Both are for one of what is sold. */
const isHarvestDear = native(
  'AND',
  fits(column(headers.price), 'size'),
  fits(column(headers.harvestCost), 'orNone'),
  operate(column(headers.harvestCost), '>=', column(headers.price)),
);

const isWeightWanting = native(
  'AND',
  isKnownSale,
  isBlank(column(headers.weight)),
  isBlank(column(headers.weightUsed)),
);

/** A price of one sold, as a price of a lb or kg. */
const priceByWeight = (header: string, otherwise: Expression | string): Expression =>
  when(
    native('AND', fits(column(header), 'orNone'), native('ISNUMBER', column(headers.weightUsed))),
    operate(column(header), '/', column(headers.weightUsed)),
    otherwise,
  );

const perSold: Partial<TableColumn> = {
  ...inMoney,
  unit: words.perSold,
  converts: {
    by: headers.soldBy,
    units: Object.fromEntries(['', byWeight, ...lb, ...kg].map((name) => [name, 'perLb'])),
  },
};
const lbOrKg: CellContent = { compute: inUnits(unitNames.lb, unitNames.kg) };
const share: Partial<TableColumn> = { format: 'percent', note: notes.share };

const cropPricesTable: TableTemplate = {
  name: 'CropPrices',
  heading: words.tables.crops,
  grows: false,
  columns: [
    columnOf(headers.crop, nameWidth, { format: 'words', formerly: formerCropNames }),
    columnOf(headers.toMend, textWidth, { format: 'words', note: notes.cropToMend }),
    typed(headers.soldBy, 15, {
      format: 'text',
      choices: [...soldUnits, ...Object.values(words.alsoSoldBy).flat()],
      words: inWords(soldUnits).words,
      note: notes.soldBy,
    }),
    typed(headers.weight, numberWidth, { unit: lbOrKg, converts: 'lb', note: notes.weight }),
    typed(headers.price, numberWidth, { ...perSold, note: notes.price }),
    typed(headers.secondPrice, numberWidth, { ...perSold, note: notes.secondPrice }),
    typed(headers.harvestCost, numberWidth, { ...perSold, note: notes.harvestCost }),
    typed(headers.seedPrice, numberWidth, {
      ...inMoney,
      unit: words.perThousandSeeds,
      note: notes.seedPrice,
    }),
    typed(headers.mulched, numberWidth, share),
    typed(headers.dripped, numberWidth, share),
    typed(headers.covered, numberWidth, share),
    typed(headers.trellised, numberWidth, share),
    columnOf(headers.soldAs, numberWidth, { format: 'words', note: notes.soldAs }),
    columnOf(headers.weightUsed, numberWidth, { unit: lbOrKg, note: notes.weightUsed }),
    columnOf(headers.firstByWeight, numberWidth, {
      ...inMoney,
      unit: perWeight.unit,
      note: notes.byWeight,
    }),
    columnOf(headers.secondByWeight, numberWidth, {
      ...inMoney,
      unit: perWeight.unit,
      note: notes.byWeight,
    }),
  ],
  rows: crops.map(({ name }) => [
    wordOfCrop(name),
    {
      compute: join([
        when(isKnownSale, '', `${sayMend(headers.soldBy, mend.soldBy)} `),
        when(isWeightWanting, `${sayMend(headers.weight, mend.weight)} `, ''),
        ...Object.entries(ofCrop).map(([header, fit]) => askedToMend(header, fit)),
        when(isHarvestDear, `${sayMend(headers.harvestCost, mend.dearHarvest)} `, ''),
      ]),
    },
    ...Array.from({ length: 10 }, () => null),
    { compute: takenAs },
    { compute: weightUsed },
    { compute: priceByWeight(headers.price, '') },
    { compute: priceByWeight(headers.secondPrice, column(headers.firstByWeight)) },
  ]),
};

const causeOf = (header: string, advice: string): Cause => ({
  remark: sayMend(header, advice),
  header,
  says: advice,
  follows: null,
});
const causesOf = (header: string, fitsOf: readonly Fit[]): Cause[] =>
  fitsOf.map((fit) => causeOf(header, mend[fit]));
const fitNames = Object.keys(mend).filter((name): name is Fit => !notOfFit.some((other) => other === name));

/** The tables whose last word on a row is what does not fit in it, and the cell that each sentence is about. */
export const priceFaults: readonly (readonly [TableTemplate, readonly Cause[]])[] = [
  [
    pricesTable,
    [headers.first, headers.second].flatMap((header) => [
      ...causesOf(header, fitNames),
      causeOf(header, mend.noneSold),
    ]),
  ],
  [ratesTable, causesOf(headers.value, fitNames)],
  [
    cropPricesTable,
    [
      causeOf(headers.soldBy, mend.soldBy),
      causeOf(headers.weight, mend.weight),
      causeOf(headers.harvestCost, mend.dearHarvest),
      ...Object.entries(ofCrop).flatMap(([header, fit]) => causesOf(header, [fit])),
    ],
  ],
];

/** What is typed for a crop, and goes into a sum. */
export type CropInput =
  'price' | 'harvestCost' | 'seedPrice' | 'mulched' | 'dripped' | 'covered' | 'trellised';

/** How many of the crops have that figure wrong; a dear harvest is not. The second price counts with the first. */
export const cropsToMend = (key: CropInput, isOfThem: Expression): Expression => {
  const fit = ofCrop[headers[key]] ?? 'orNone';
  return native(
    'COUNTIFS',
    allOf('CropPrices', headers.crop),
    isOfThem,
    allOf('CropPrices', headers.toMend),
    `*${sayMend(headers[key], mend[fit])}*`,
  );
};

export type Scenario = 'first' | 'second';

/** The price that is reckoned with; "" where there is none. */
export const priceUsed = (key: PriceKey, scenario: Scenario): Expression =>
  lookUp(
    { value: words.prices[key][0] },
    'Prices',
    headers.item,
    scenario === 'first' ? headers.firstUsed : headers.secondUsed,
  );
/** What a rate comes to; "" where there is none. */
export const whatComesTo = (key: RateKey): Expression =>
  lookUp({ value: words.rates[key][0] }, 'Rates', headers.rate, headers.comesTo);

export const pricesTemplate: SheetTemplate = {
  id: idInLanguage('prices'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [],
  tables: [pricesTable, ratesTable, cropPricesTable],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
