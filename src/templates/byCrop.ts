/** The By crop sheet: what the plots of each crop take and bring. Longer than most: every column is declared here. */
import { columnOf } from '../workbook/columnOf';
import type { CellContent, Expression, Format, SheetTemplate, TableColumn } from '../workbook/template';
import { allOf, call, column, input, lookUp, native, operate, when } from '../workbook/expressions';
import { crops } from '../reference/crops';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { cropFigure } from './cropLookUps';
import { firstFrostDay, starts } from './plots';
import { formerCropNames, wordOfCrop } from './sayCrop';
import { hiveArea, needsNoBees, priceUsed, rateUsed, whatComesTo } from './prices';

const words = catalogue.money.byCrop;
const headers = words.columns;
const prices = catalogue.money.prices.columns;
const { plots: plotWords } = catalogue.sheets;
const { units } = catalogue;

type ColumnKey = keyof typeof headers;
const cell = (key: ColumnKey): Expression => column(headers[key].header);

const sum = (...terms: readonly Expression[]): Expression =>
  terms.reduce((left, right) => operate(left, '+', right));
const product = (...factors: readonly Expression[]): Expression =>
  factors.reduce((left, right) => operate(left, '*', right));
/** A figure that is not there is none: what lacks is said on the Budget sheet. */
const orNone = (figure: Expression): Expression => native('MAX', 0, figure);

const ofPlots = (key: keyof typeof plotWords.columns): Expression =>
  allOf('Plots', plotWords.columns[key].header);
/** A number: an error in a plot meets no comparison, and spoils no sum. */
const isNumber = (key: keyof typeof plotWords.columns): readonly [Expression, string] => [
  ofPlots(key),
  '>=0',
];
const counted = [
  ofPlots('takenAs'),
  cell('crop'),
  ...isNumber('rows'),
  ...isNumber('rowLength'),
  ...isNumber('seedToSow'),
] as const;
const sumOf = (
  key: keyof typeof plotWords.columns,
  ...criteria: readonly (Expression | string)[]
): Expression => native('SUMIFS', ofPlots(key), ...counted, ...criteria);
const countOf = (...criteria: readonly (Expression | string)[]): Expression =>
  native('COUNTIFS', ...counted, ...criteria);

const ofCrop = (header: string): Expression => lookUp(cell('crop'), 'CropPrices', prices.crop, header);
const orderWords = catalogue.seedOrder.columns;
const ofOrder = (key: keyof typeof orderWords): Expression =>
  lookUp(cell('crop'), 'SeedOrder', orderWords.crop.header, orderWords[key].header);
/** A share that is none is as blank. */
const shareOf = (header: string): Expression =>
  when(operate(ofCrop(header), '<=', 1), orNone(ofCrop(header)), 0);
const rate = (key: Parameters<typeof rateUsed>[0]): Expression => orNone(rateUsed(key));
const price = (key: Parameters<typeof priceUsed>[0]): Expression => orNone(priceUsed(key, 'first'));
const isGiven = (figure: Expression): Expression => native('ISNUMBER', figure);

const [, transplant] = starts;
const land = operate(cell('area'), '/', input('LAND_AREA'));
const perLand = (key: Parameters<typeof whatComesTo>[0]): Expression =>
  product(land, orNone(whatComesTo(key)));
const withEnds = (share: string): Expression =>
  product(shareOf(share), sum(cell('rowLength'), product({ value: 2 }, cell('rows'), rate('endTuck'))));

/** Later than every date: while there is no season, no plot is taken. */
const never = 2958466;
/** Frost comes before there is fruit. Of a plot whose first pick is an error that is not known, and not said. */
const takenByFrost = [
  ofPlots('firstPick'),
  operate('>=', '&', when(native('ISERROR', firstFrostDay), never, firstFrostDay)),
] as const;
const tooLong = [ofPlots('daysToSpare'), '<0'] as const;
/** The sum over plots that frost leaves something of. */
const leftOf = (
  key: keyof typeof plotWords.columns,
  ...criteria: readonly (Expression | string)[]
): Expression => operate(sumOf(key, ...criteria), '-', sumOf(key, ...criteria, ...takenByFrost));

const soldPlots = (...criteria: readonly (Expression | string)[]): Expression =>
  operate(
    countOf(ofPlots('yield'), '>0', ...criteria),
    '-',
    countOf(ofPlots('yield'), '>0', ...criteria, ...takenByFrost),
  );

const pickedPlots = [...isNumber('firstPick'), ...isNumber('lastPick')] as const;
const meanDay = (key: 'firstPick' | 'lastPick'): Expression =>
  native('ROUND', operate(sumOf(key, ...pickedPlots), '/', countOf(...pickedPlots)), 0);
const pickingInterval = cropFigure(cell('crop'), 'picking interval');

const weight = ofCrop(prices.weightUsed);
/** By weight, and fruit by fruit, nothing is packed. */
const isPacked = native(
  'AND',
  native('OR', ...catalogue.money.prices.packed.map((unit) => operate(ofCrop(prices.soldAs), '=', unit))),
  isGiven(weight),
);

const incomeAt = (byWeight: string, scenario: 'first' | 'second'): Expression =>
  product(
    when(
      isGiven(ofCrop(byWeight)),
      product(cell('yield'), ofCrop(byWeight)),
      sumOf('income', ...isNumber('income')),
    ),
    orNone(priceUsed('yield', scenario)),
  );

const isMetric = operate(input('UNITS'), '=', 'metric');
const inUnits = (us: string, metric: string): CellContent => ({ compute: when(isMetric, metric, us) });
const lengths = inUnits(units.ft, units.m);
const weights = inUnits(units.lb, units.kg);

/** Of a crop that nobody plants nothing stands there. */
const computed = (key: ColumnKey, compute: Expression, format: Format, unit: CellContent = null) => ({
  key,
  compute: key === 'plots' ? compute : when(operate(native('SUM', cell('plots')), '>', 0), compute, ''),
  format,
  unit,
});

const computedColumns = [
  computed(
    'plots',
    when(operate(native('COUNTIF', ofPlots('takenAs'), cell('crop')), '>', 0), countOf(), ''),
    'whole',
  ),
  {
    ...computed('notCounted', { value: 0 }, 'whole'),
    compute: when(
      operate(operate(cell('plots'), '&', ''), '=', ''),
      '',
      operate(native('COUNTIF', ofPlots('takenAs'), cell('crop')), '-', cell('plots')),
    ),
  },
  computed('area', sumOf('area'), 'whole', inUnits(units.sqFt, units.sqM)),
  computed('rowLength', sumOf('rowLength'), 'whole', lengths),
  computed('rows', sumOf('rows'), 'whole'),
  computed('seeds', sumOf('seedToSow'), 'whole', units.seeds),
  computed(
    'cells',
    operate(sumOf('seedToSow', ofPlots('start'), transplant ?? ''), '/', input('SEEDS_PER_CELL')),
    'whole',
    units.cells,
  ),
  computed(
    'trays',
    when(
      native('AND', operate(cell('cells'), '>', 0), operate(rate('cellsPerTray'), '>', 0)),
      call('TRAY.COUNT', cell('cells'), rateUsed('cellsPerTray')),
      0,
    ),
    'whole',
  ),
  computed(
    'mix',
    when(
      operate(rate('cellsPerTray'), '>', 0),
      operate(product(cell('cells'), orNone(whatComesTo('cellVolume'))), '/', rateUsed('cellsPerTray')),
      0,
    ),
    'tenth',
    inUnits(units.cuFt, units.litre),
  ),
  computed('mulch', withEnds(prices.mulched), 'whole', lengths),
  computed('drip', product(shareOf(prices.dripped), cell('rowLength')), 'whole', lengths),
  computed('cover', withEnds(prices.covered), 'whole', lengths),
  computed('netting', product(shareOf(prices.trellised), cell('rowLength')), 'whole', lengths),
  computed(
    'posts',
    when(
      native('AND', operate(cell('netting'), '>', 0), operate(rate('postSpacing'), '>', 0)),
      native('ROUNDUP', product(shareOf(prices.trellised), sumOf('posts', ...isNumber('posts'))), 0),
      0,
    ),
    'whole',
  ),
  computed(
    'water',
    operate(perLand('waterDepth'), '/', 1000),
    'tenth',
    inUnits(words.perMany.us, words.perMany.metric),
  ),
  computed('nitrogen', perLand('nitrogenGrade'), 'tenth', weights),
  computed('phosphate', perLand('phosphateGrade'), 'tenth', weights),
  computed('potash', perLand('potashGrade'), 'tenth', weights),
  computed(
    'hives',
    when(
      native('OR', ...needsNoBees.map((name) => operate(cell('crop'), '=', name))),
      0,
      operate(product(orNone(whatComesTo('hivesPerLand')), cell('area')), '/', hiveArea),
    ),
    'hundredth',
  ),
  computed('work', product(operate(cell('rowLength'), '/', 100), rate('work')), 'tenth', units.hours),
  computed(
    'picks',
    when(
      operate(countOf(...pickedPlots), '=', 0),
      // Nothing is picked of what frost takes; of all else without dates nobody knows.
      when(operate(countOf(...takenByFrost), '=', cell('plots')), 0, ''),
      when(
        isGiven(pickingInterval),
        call('HARVEST.PICKS', meanDay('firstPick'), meanDay('lastPick'), pickingInterval),
        when(operate(meanDay('firstPick'), '=', meanDay('lastPick')), 1, ''),
      ),
    ),
    'whole',
  ),
  computed(
    'picking',
    when(
      native(
        'AND',
        isGiven(cell('picks')),
        operate(orNone(cell('picks')), '>', 0),
        isGiven(rateUsed('pickingRate')),
      ),
      call('BUDGET.PICKHOURS', leftOf('rowLength'), cell('picks'), rateUsed('pickingRate')),
      0,
    ),
    'tenth',
    units.hours,
  ),
  computed('yield', leftOf('yield', ...isNumber('yield')), 'whole', weights),
  computed('takenByFrost', countOf(...takenByFrost), 'whole'),
  computed('cutShort', operate(countOf(...tooLong), '-', countOf(...tooLong, ...takenByFrost)), 'whole'),
  computed('noYield', operate(cell('plots'), '-', countOf(ofPlots('yield'), '>0')), 'whole'),
  computed(
    'noPrice',
    when(
      isGiven(ofCrop(prices.firstByWeight)),
      0,
      operate(soldPlots(), '-', soldPlots(...isNumber('income'))),
    ),
    'whole',
  ),
  computed('sold', when(isPacked, operate(cell('yield'), '/', weight), 0), 'whole'),
  computed('shareSold', price('yield'), 'percent'),
  computed('income', incomeAt(prices.firstByWeight, 'first'), 'money'),
  computed('secondIncome', incomeAt(prices.secondByWeight, 'second'), 'money'),
  computed(
    'seedCost',
    when(
      isGiven(ofCrop(prices.seedPrice)),
      operate(product(cell('seeds'), orNone(ofCrop(prices.seedPrice))), '/', 1000),
      when(isGiven(ofOrder('cost')), ofOrder('cost'), when(operate(ofOrder('toBuy'), '=', 0), 0, '')),
    ),
    'money',
  ),
  computed(
    'picked',
    when(
      isGiven(weight),
      operate(product(cell('yield'), orNone(ofCrop(prices.harvestCost))), '/', weight),
      0,
    ),
    'money',
  ),
  computed(
    'before',
    sum(
      orNone(cell('seedCost')),
      ...(
        ['mix', 'mulch', 'drip', 'cover', 'netting', 'water', 'nitrogen', 'phosphate', 'potash'] as const
      ).map((key) => product(cell(key), price(key))),
      product(cell('trays'), price('tray')),
      product(cell('posts'), price('post')),
      product(cell('hives'), price('hive')),
      product(land, sum(price('protection'), price('fuel'), price('other'))),
      product(cell('work'), price('wage')),
    ),
    'money',
  ),
  computed(
    'harvest',
    sum(
      product(cell('picking'), price('wage')),
      product(
        sum(
          cell('picked'),
          product(cell('sold'), price('package')),
          product(cell('yield'), price('hauling')),
        ),
        price('yield'),
      ),
      product(cell('income'), price('selling')),
    ),
    'money',
  ),
];

const headed = (key: ColumnKey, width: number, more: Partial<TableColumn> = {}): TableColumn =>
  columnOf(headers[key].header, width, { note: headers[key].note, ...more });

export const byCropTemplate: SheetTemplate = {
  id: idInLanguage('bycrop'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [],
  tables: [
    {
      name: 'CropSums',
      heading: '',
      grows: false,
      columns: [
        headed('crop', 24, { format: 'words', formerly: formerCropNames }),
        ...computedColumns.map(({ key, format, unit }) => headed(key, 10, { format, unit })),
      ],
      rows: crops.map(({ name }) => [
        wordOfCrop(name),
        ...computedColumns.map(({ compute }) => ({ compute })),
      ]),
    },
  ],
  page: { landscape: true, pagesWide: 2, repeatFirstColumn: true },
};
