/**
 * The Budget sheet: income, costs and returns of the garden or a crop, for two scenarios, and each crop's own.
 * Longer than most because every cell is declared here.
 */
import type {
  CellContent,
  Expression,
  FormLine,
  Format,
  SheetTemplate,
  TableTemplate,
} from '../workbook/template';
import { columnOf } from '../workbook/columnOf';
import { allOf, call, column, input, lookUp, native, operate, when } from '../workbook/expressions';
import { crops } from '../reference/crops';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';
import { cropOfName } from './cropLookUps';
import { formerCropNames, wordOfCrop } from './sayCrop';
import {
  cropsToMend,
  needsNoBees,
  priceUsed,
  rateUsed,
  soldUnits,
  type CropInput,
  type Scenario,
} from './prices';

const words = catalogue.money.budget;
const { columns: headers, parts, rows: rowNames, lacks } = words;
const priceWords = catalogue.money.prices;
const { columns: sums } = catalogue.money.byCrop;
const { plots: plotWords } = catalogue.sheets;
const { units } = catalogue;

const isMetric = operate(input('UNITS'), '=', 'metric');
const inUnits = (us: string, metric: string): CellContent => ({ compute: when(isMetric, metric, us) });
const weightUnit = when(isMetric, units.kg, units.lb);
const lengths = inUnits(units.ft, units.m);
const weights: CellContent = { compute: weightUnit };

const isGiven = (figure: Expression): Expression => native('ISNUMBER', figure);
const orNone = (figure: Expression): Expression => native('MAX', 0, figure);
const isSome = (figure: Expression): Expression => operate(figure, '>', 0);
const sum = (...terms: readonly Expression[]): Expression =>
  terms.reduce((left, right) => operate(left, '+', right));
const product = (...factors: readonly Expression[]): Expression =>
  factors.reduce((left, right) => operate(left, '*', right));
const less = (from: Expression, what: Expression): Expression => operate(from, '-', what);
const divide = (what: Expression, by: Expression): Expression => operate(what, '/', by);
/** Of money for one: a lb of squash costs less than a cent is worth showing. */
const short = (figure: Expression): Expression => native('ROUND', figure, 4);

type SumKey = keyof typeof sums;
const isGarden = native(
  'OR',
  operate(operate(input('BUDGET_FOR'), '&', ''), '=', ''),
  operate(input('BUDGET_FOR'), '=', words.wholeGarden),
);
/** In a cell of its own: nearly every other asks for it. */
const chosen = input('BUDGET_CROPS');
const ofSums = (key: SumKey): Expression => allOf('CropSums', sums[key].header);
const of = (key: SumKey): Expression => native('SUMIFS', ofSums(key), ofSums('crop'), chosen);
const countOf = (key: SumKey, criterion: string, ...more: readonly (Expression | string)[]): Expression =>
  native('COUNTIFS', ofSums('crop'), chosen, ofSums(key), criterion, ...more);

const isPlanted = isSome(input('BUDGET_PLOTS'));
const land = divide(of('area'), input('LAND_AREA'));

const names: Readonly<Record<Scenario, Readonly<Record<'quantity' | 'price' | 'amount' | 'total', string>>>> =
  {
    first: {
      quantity: headers.quantity,
      price: headers.price,
      amount: headers.amount,
      total: headers.total,
    },
    second: {
      quantity: headers.secondQuantity,
      price: headers.secondPrice,
      amount: headers.secondAmount,
      total: headers.secondTotal,
    },
  };
const scenarios = ['first', 'second'] as const;

type PriceKey = Parameters<typeof priceUsed>[0];
type Figures = Partial<Record<'quantity' | 'price' | 'amount' | 'total', Expression>>;

interface Line {
  readonly name: string;
  readonly part: string;
  readonly unit: CellContent;
  readonly figures: (scenario: Scenario) => Figures;
  readonly lacks: Expression;
}

const nothing: Expression = { value: '' };
const share = (scenario: Scenario): Expression => orNone(priceUsed('yield', scenario));
const soldWeight = (scenario: Scenario): Expression => product(of('yield'), share(scenario));
const sold = (scenario: Scenario): Expression => divide(soldWeight(scenario), input('BUDGET_UNIT_WEIGHT'));
const income = (scenario: Scenario): Expression => of(scenario === 'first' ? 'income' : 'secondIncome');

const soldUnit: CellContent = { compute: input('BUDGET_UNIT') };

/** A figure of the line in the same row. */
const own = (scenario: Scenario, figure: keyof Figures): Expression => column(names[scenario][figure]);

interface PricedParts {
  readonly unit?: CellContent;
  readonly name?: string;
  /** Whether the plan has use for it; where absent, while there is some quantity of it. A price of 0 says that none is. */
  readonly isMeant?: Expression;
  /** Those that the quantity is made with. */
  readonly rates?: readonly RateKey[];
  /** Those that may be blank. */
  readonly freeRates?: readonly RateKey[];
  /** The share of each crop that the quantity is made with. */
  readonly share?: CropInput;
}
type RateKey = Parameters<typeof rateUsed>[0];

const isLackingRate = (rate: RateKey): Expression => operate(isGiven(rateUsed(rate)), '=', false);
/** A figure of some crop among those of the budget that does not fit. */
const sayCropInput = (header: CropInput): Expression =>
  when(
    isSome(cropsToMend(header, chosen)),
    fill(lacks.cropToMend, { header: priceWords.columns[header] }),
    '',
  );
/** Typed, and not fit to count with. */
const isSpoiled = (rate: RateKey): Expression =>
  operate(
    operate(
      lookUp(
        { value: priceWords.rates[rate][0] },
        'Rates',
        priceWords.columns.rate,
        priceWords.columns.toMend,
      ),
      '&',
      '',
    ),
    '<>',
    '',
  );

/** First or Second is typed, and not fit to count with, or sells nothing. */
const isPriceToMend = (key: PriceKey): Expression =>
  operate(
    operate(
      lookUp(
        { value: priceWords.prices[key][0] },
        'Prices',
        priceWords.columns.item,
        priceWords.columns.toMend,
      ),
      '&',
      '',
    ),
    '<>',
    '',
  );

/** What a line asks of the Prices sheet: a price, rates, or both. */
const sayPrices = (
  key: PriceKey,
  isMeant: Expression,
  isRateMissing: Expression,
  otherwise: Expression | string,
): Expression => {
  const cost = own('first', 'price');
  const isRateAsked = native('AND', isMeant, isRateMissing);
  return when(
    isGiven(cost),
    when(
      native('AND', isSome(cost), isRateAsked),
      lacks.rate,
      when(isPriceToMend(key), lacks.priceToMend, otherwise),
    ),
    when(
      native('OR', isMeant, isPriceToMend(key)),
      when(isRateAsked, lacks.priceAndRate, lacks.price),
      otherwise,
    ),
  );
};

/** So much of what has its price on the Prices sheet. */
const priced = (
  key: PriceKey,
  part: string,
  quantity: (scenario: Scenario) => Expression,
  {
    unit = null,
    name = priceWords.prices[key][0],
    isMeant = isSome(own('first', 'quantity')),
    rates = [],
    freeRates = [],
    share: shareOfCrop,
  }: PricedParts = {},
): Line => ({
  name,
  part,
  unit,
  figures: (scenario) => ({
    quantity: quantity(scenario),
    price: priceUsed(key, scenario),
    amount: when(
      isGiven(own(scenario, 'price')),
      product(own(scenario, 'quantity'), own(scenario, 'price')),
      '',
    ),
  }),
  lacks: sayPrices(
    key,
    isMeant,
    native('OR', ...rates.map(isLackingRate), ...freeRates.map(isSpoiled), false),
    shareOfCrop === undefined ? '' : sayCropInput(shareOfCrop),
  ),
});

const before = (key: PriceKey, sumKey: SumKey, more: PricedParts = {}): Line =>
  priced(key, parts.before, () => of(sumKey), more);
const perLand = (key: PriceKey, part: string): Line =>
  priced(key, part, () => land, { unit: inUnits(units.acre, units.hectare) });

/** An amount that is summed over the crops; its price is their mean. */
const summed = (
  name: string,
  part: string,
  unit: CellContent,
  quantity: (scenario: Scenario) => Expression,
  amount: (scenario: Scenario) => Expression,
  lacking: Expression,
): Line => ({
  name,
  part,
  unit,
  figures: (scenario) => ({
    quantity: quantity(scenario),
    price: when(
      isSome(own(scenario, 'quantity')),
      short(divide(own(scenario, 'amount'), own(scenario, 'quantity'))),
      '',
    ),
    amount: amount(scenario),
  }),
  lacks: lacking,
});

const join = (parts: readonly Expression[]): Expression =>
  parts.reduce((left, right) => operate(left, '&', right));

const cropTypes = crops.map(({ name }) => wordOfCrop(name));
/** A plot's name cannot be found by a formula that every program has; its crop can. */
const namesOfCrops = (isMeant: (name: string) => Expression): Expression =>
  join(cropTypes.map((name) => when(isMeant(name), `, ${name}`, '')));
const ofOne = (key: SumKey, name: string): Expression =>
  native('SUMIFS', ofSums(key), ofSums('crop'), chosen, ofSums('crop'), name);

/** How many, and of which crops. */
const sayCount = (what: string, count: Expression, isMeant: (name: string) => Expression): Expression =>
  when(isSome(count), join([{ value: what }, count, namesOfCrops(isMeant), { value: '. ' }]), '');
const sayPlots = (what: string, key: SumKey): Expression =>
  sayCount(what, of(key), (name) => isSome(ofOne(key, name)));
/** Crops that have some of the one and no number of the other. */
const sayCropsWithout = (what: string, some: SumKey, figure: SumKey): Expression => {
  const without = (...more: readonly (Expression | string)[]): Expression =>
    less(countOf(some, '>0', ...more), countOf(figure, '>=0', ...more));
  return sayCount(what, without(), (name) => isSome(without(ofSums('crop'), name)));
};

const amounts = (scenario: Scenario): Expression => allOf('BudgetLines', names[scenario].amount);
const partSum = (part: string, scenario: Scenario): Expression =>
  native('SUMIFS', amounts(scenario), allOf('BudgetLines', headers.part), part);
/** Of another line. */
const figureOf = (name: string, figure: keyof Figures, scenario: Scenario): Expression =>
  orNone(lookUp({ value: name }, 'BudgetLines', headers.line, names[scenario][figure]));

const interest = (scenario: Scenario): Expression =>
  product(partSum(parts.before, scenario), orNone(priceUsed('interest', scenario)));
const variable = (scenario: Scenario): Expression =>
  sum(partSum(parts.before, scenario), partSum(parts.harvest, scenario), interest(scenario));
const fixed = (scenario: Scenario): Expression => partSum(parts.fixed, scenario);
const allCosts = (scenario: Scenario): Expression => sum(variable(scenario), fixed(scenario));

const total = (name: string, compute: (scenario: Scenario) => Expression): Line => ({
  name,
  part: parts.none,
  unit: null,
  figures: (scenario) => ({ total: compute(scenario) }),
  lacks: nothing,
});

const totalOf = (name: string, scenario: Scenario): Expression => figureOf(name, 'total', scenario);
const selling = (scenario: Scenario): Expression => orNone(priceUsed('selling', scenario));

const breakEven = (
  name: string,
  figure: 'price' | 'quantity',
  compute: (scenario: Scenario) => Expression,
  lacking: Expression,
): Line => ({
  name,
  part: parts.none,
  unit: soldUnit,
  figures: (scenario) => ({ [figure]: compute(scenario) }),
  lacks: when(isSome(sold('first')), lacking, lacks.noYield),
});

/** The share for selling falls with the price: what is left of the price must pay the rest. */
const breakEvenPrice = (name: string, costs: string): Line =>
  breakEven(
    name,
    'price',
    (scenario) =>
      when(
        native(
          'AND',
          isSome(sold(scenario)),
          operate(selling(scenario), '<', 1),
          isSome(totalOf(costs, scenario)),
        ),
        short(
          call(
            'BUDGET.BREAKEVENPRICE',
            divide(
              less(totalOf(costs, scenario), figureOf(priceWords.prices.selling[0], 'amount', scenario)),
              less({ value: 1 }, selling(scenario)),
            ),
            sold(scenario),
          ),
        ),
        '',
      ),
    when(
      operate(selling('first'), '>=', 1),
      lacks.sellingTakesAll,
      when(isSome(totalOf(costs, 'first')), '', lacks.noCosts),
    ),
  );

/** Picking by the hour follows the row and its picks, not the yield. */
const tiedToYield = (scenario: Scenario): Expression =>
  less(totalOf(rowNames.harvestTotal, scenario), figureOf(rowNames.picking, 'amount', scenario));
const breakEvenYield = (name: string, costs: string): Line => {
  const notTied = (scenario: Scenario): Expression => less(totalOf(costs, scenario), tiedToYield(scenario));
  const left = (scenario: Scenario): Expression => less(income(scenario), tiedToYield(scenario));
  return breakEven(
    name,
    'quantity',
    (scenario) =>
      when(
        native('AND', isSome(sold(scenario)), isSome(left(scenario)), isSome(notTied(scenario))),
        call(
          'BUDGET.BREAKEVENYIELD',
          notTied(scenario),
          divide(income(scenario), sold(scenario)),
          divide(tiedToYield(scenario), sold(scenario)),
        ),
        '',
      ),
    when(
      isSome(notTied('first')),
      when(
        isSome(income('first')),
        when(isSome(left('first')), when(isSome(of('noPrice')), lacks.givenAway, ''), lacks.noneBreaksEven),
        lacks.noIncome,
      ),
      lacks.allTied,
    ),
  );
};

const sayDearHarvest = join(
  cropTypes.map((name) =>
    when(
      native(
        'AND',
        isSome(ofOne('income', name)),
        operate(ofOne('harvest', name), '>=', ofOne('income', name)),
      ),
      fill(lacks.dearHarvest, { crop: name }),
      '',
    ),
  ),
);

/** Of the crops in the budget. */
const areaWithBees = needsNoBees.reduce((area, name) => less(area, ofOne('area', name)), of('area'));

const lines: readonly Line[] = [
  summed(
    rowNames.income,
    parts.income,
    soldUnit,
    sold,
    income,
    join([
      when(
        native('OR', ...scenarios.map((scenario) => operate(priceUsed('yield', scenario), '=', 0))),
        lacks.noShare,
        when(isPriceToMend('yield'), lacks.shareToMend, ''),
      ),
      sayCropInput('price'),
      sayPlots(lacks.plotsWithoutYield, 'noYield'),
      sayPlots(lacks.plotsWithoutPrice, 'noPrice'),
      sayPlots(lacks.takenByFrost, 'takenByFrost'),
      sayPlots(lacks.cutShort, 'cutShort'),
    ]),
  ),
  summed(
    rowNames.seed,
    parts.before,
    words.seeds,
    () => of('seeds'),
    () => of('seedCost'),
    join([sayCropInput('seedPrice'), sayCropsWithout(lacks.cropsWithoutSeedPrice, 'seeds', 'seedCost')]),
  ),
  before('tray', 'trays', { unit: units.trays, isMeant: isSome(of('cells')), rates: ['cellsPerTray'] }),
  before('mix', 'mix', {
    unit: inUnits(units.cuFt, units.litre),
    isMeant: isSome(of('cells')),
    rates: ['cellsPerTray', 'cellVolume'],
  }),
  before('mulch', 'mulch', { unit: lengths, isMeant: isPlanted, freeRates: ['endTuck'], share: 'mulched' }),
  before('drip', 'drip', { unit: lengths, isMeant: isPlanted, share: 'dripped' }),
  before('cover', 'cover', { unit: lengths, isMeant: isPlanted, freeRates: ['endTuck'], share: 'covered' }),
  before('netting', 'netting', { unit: lengths, isMeant: isPlanted, share: 'trellised' }),
  before('post', 'posts', { unit: units.posts, isMeant: isSome(of('netting')), rates: ['postSpacing'] }),
  before('water', 'water', {
    unit: inUnits(catalogue.money.byCrop.perMany.us, catalogue.money.byCrop.perMany.metric),
    isMeant: isPlanted,
    rates: ['waterDepth'],
  }),
  ...(['nitrogen', 'phosphate', 'potash'] as const).map((nutrient) =>
    before(nutrient, nutrient, {
      unit: weights,
      isMeant: isPlanted,
      rates: [`${nutrient}Rate`, `${nutrient}Grade`],
    }),
  ),
  before('hive', 'hives', { unit: units.hives, isMeant: isSome(areaWithBees), rates: ['hivesPerLand'] }),
  perLand('protection', parts.before),
  perLand('fuel', parts.before),
  perLand('other', parts.before),
  before('wage', 'work', { unit: units.hours, name: rowNames.work, isMeant: isPlanted, rates: ['work'] }),
  total(rowNames.beforeTotal, (scenario) => partSum(parts.before, scenario)),
  {
    ...priced('wage', parts.harvest, () => of('picking'), { unit: units.hours, name: rowNames.picking }),
    // Without a rate the picking is paid by what is sold.
    lacks: when(
      native('OR', isGiven(rateUsed('pickingRate')), isSpoiled('pickingRate')),
      sayPrices(
        'wage',
        isPlanted,
        isSpoiled('pickingRate'),
        sayCropsWithout(lacks.cropsWithoutInterval, 'plots', 'picks'),
      ),
      '',
    ),
  },
  summed(
    rowNames.picked,
    parts.harvest,
    soldUnit,
    sold,
    (scenario) => product(of('picked'), share(scenario)),
    sayCropInput('harvestCost'),
  ),
  priced('package', parts.harvest, (scenario) => product(of('sold'), share(scenario)), {
    unit: priceWords.units.each,
  }),
  priced('hauling', parts.harvest, soldWeight, { unit: weights }),
  priced('selling', parts.harvest, income, { unit: words.ofIncome }),
  {
    ...total(rowNames.harvestTotal, (scenario) => partSum(parts.harvest, scenario)),
    lacks: sayDearHarvest,
  },
  {
    ...total(priceWords.prices.interest[0], interest),
    unit: priceWords.units.share,
    figures: (scenario) => ({
      price: priceUsed('interest', scenario),
      total: interest(scenario),
    }),
    lacks: sayPrices('interest', isPlanted, { value: false }, ''),
  },
  total(rowNames.variable, variable),
  total(rowNames.aboveVariable, (scenario) => less(income(scenario), variable(scenario))),
  perLand('machinery', parts.fixed),
  perLand('land', parts.fixed),
  priced('overhead', parts.fixed, () => divide(of('area'), native('SUM', ofSums('area'))), {
    unit: priceWords.units.perGarden,
  }),
  total(rowNames.fixedTotal, fixed),
  total(rowNames.all, allCosts),
  total(rowNames.aboveAll, (scenario) => less(income(scenario), allCosts(scenario))),
  breakEvenPrice(rowNames.priceVariable, rowNames.variable),
  breakEvenPrice(rowNames.priceAll, rowNames.all),
  breakEvenYield(rowNames.yieldVariable, rowNames.variable),
  breakEvenYield(rowNames.yieldAll, rowNames.all),
];

const money: { readonly format: Format } = { format: 'money' };

/** Their price is a share. */
const sharesOfMoney: Readonly<Record<string, Format>> = {
  [priceWords.prices.selling[0]]: 'percentTenth',
  [priceWords.prices.interest[0]]: 'percentTenth',
};

const figureNames = ['quantity', 'price', 'amount', 'total'] as const;
const linesTable: TableTemplate = {
  name: 'BudgetLines',
  heading: words.tables.lines,
  grows: false,
  columns: [
    columnOf(headers.line, 30, { format: 'words' }),
    columnOf(headers.part, 16, { format: 'words' }),
    columnOf(headers.unit, 10, { format: 'words' }),
    ...scenarios.flatMap((scenario) => [
      columnOf(names[scenario].quantity, 10, { format: 'hundredth' }),
      columnOf(names[scenario].price, 10, { format: 'price', formats: sharesOfMoney }),
      columnOf(names[scenario].amount, 10, money),
      columnOf(names[scenario].total, 10, money),
    ]),
    columnOf(headers.lacks, 60, { format: 'words' }),
  ],
  rows: lines.map(({ name, part, unit, figures, lacks: lacking }) => [
    name,
    part,
    unit,
    ...scenarios.flatMap((scenario) => {
      const made = figures(scenario);
      return figureNames.map((figure): CellContent => {
        const compute = made[figure];
        return compute === undefined ? null : { compute: when(isPlanted, compute, '') };
      });
    }),
    { compute: when(isPlanted, lacking, '') },
  ]),
};

const crop = column(words.byCrop.crop);
const ofCrop = (key: SumKey): Expression => lookUp(crop, 'CropSums', sums.crop.header, sums[key].header);
const ownCell = (key: keyof typeof words.byCrop): Expression => column(words.byCrop[key]);
const price = (key: PriceKey): Expression => orNone(priceUsed(key, 'first'));
const cropCosts = sum(ownCell('before'), ownCell('harvest'), ownCell('interest'), ownCell('fixed'));
const cropSelling = product(ownCell('income'), price('selling'));
/** What the harvest costs without what is paid by the hour. */
const cropTied = less(ownCell('harvest'), product(ofCrop('picking'), price('wage')));

interface CropColumn {
  readonly key: keyof typeof words.byCrop;
  readonly compute: Expression;
  readonly format: Format;
  readonly note?: string;
  readonly unit?: CellContent;
}
const cropColumns: readonly CropColumn[] = [
  { key: 'yield', compute: product(ofCrop('yield'), price('yield')), format: 'whole', unit: weights },
  { key: 'income', compute: ofCrop('income'), format: 'money' },
  { key: 'before', compute: ofCrop('before'), format: 'money' },
  { key: 'harvest', compute: ofCrop('harvest'), format: 'money' },
  { key: 'interest', compute: product(ownCell('before'), price('interest')), format: 'money' },
  {
    key: 'aboveVariable',
    compute: less(ownCell('income'), sum(ownCell('before'), ownCell('harvest'), ownCell('interest'))),
    format: 'money',
  },
  {
    key: 'fixed',
    compute: sum(
      product(divide(ofCrop('area'), input('LAND_AREA')), sum(price('machinery'), price('land'))),
      divide(product(price('overhead'), ofCrop('area')), native('SUM', ofSums('area'))),
    ),
    format: 'money',
    note: words.notes.byArea,
  },
  { key: 'aboveAll', compute: less(ownCell('aboveVariable'), ownCell('fixed')), format: 'money' },
  {
    key: 'price',
    compute: when(
      native('AND', isSome(ownCell('yield')), operate(price('selling'), '<', 1), isSome(cropCosts)),
      short(
        call(
          'BUDGET.BREAKEVENPRICE',
          divide(less(cropCosts, cropSelling), less({ value: 1 }, price('selling'))),
          ownCell('yield'),
        ),
      ),
      '',
    ),
    format: 'price',
    note: words.notes.price,
    unit: { compute: when(isMetric, units.perKg, units.perLb) },
  },
  {
    key: 'breakEvenYield',
    compute: when(
      native(
        'AND',
        isSome(ownCell('yield')),
        isSome(less(ownCell('income'), cropTied)),
        isSome(less(cropCosts, cropTied)),
      ),
      call(
        'BUDGET.BREAKEVENYIELD',
        less(cropCosts, cropTied),
        divide(ownCell('income'), ownCell('yield')),
        divide(cropTied, ownCell('yield')),
      ),
      '',
    ),
    format: 'whole',
    note: words.notes.yield,
    unit: weights,
  },
];

const byCropTable: TableTemplate = {
  name: 'BudgetByCrop',
  heading: words.tables.byCrop,
  grows: false,
  columns: [
    columnOf(words.byCrop.crop, 30, { format: 'words', formerly: formerCropNames }),
    ...cropColumns.map(({ key, format, note = '', unit = null }) =>
      columnOf(words.byCrop[key], 10, { format, note, unit }),
    ),
  ],
  rows: cropTypes.map((name) => [
    name,
    ...cropColumns.map(({ compute }) => ({
      compute: when(isSome(native('SUM', ofCrop('plots'))), compute, ''),
    })),
  ]),
};

/** Under the crops, and made of them: what the lines say of the whole garden comes another way. */
const totalTable: TableTemplate = {
  name: 'BudgetTotal',
  heading: words.tables.total,
  grows: false,
  columns: byCropTable.columns.filter(
    ({ header }) => header !== words.byCrop.price && header !== words.byCrop.breakEvenYield,
  ),
  rows: [
    [
      words.wholeGarden,
      ...cropColumns
        .filter(({ key }) => key !== 'price' && key !== 'breakEvenYield')
        .map(({ key }) => ({ compute: native('SUM', allOf('BudgetByCrop', words.byCrop[key])) })),
    ],
  ],
};

const steps = [0.6, 0.8, 1, 1.2, 1.4] as const;
const { priceByYield } = words;
const stepNames = priceByYield.steps;
const meanPrice = divide(income('first'), sold('first'));
const sellingAmount = figureOf(priceWords.prices.selling[0], 'amount', 'first');
/** Where nothing is sold there is no price to start from. */
const whereSold = (figure: Expression): Expression =>
  when(native('AND', isPlanted, isSome(sold('first')), isSome(income('first'))), figure, '');

/** The share for selling moves with the price, so it stands with the income. */
const byPriceTable: TableTemplate = {
  name: 'PriceByYield',
  heading: words.tables.priceByYield,
  grows: false,
  columns: [
    columnOf(priceByYield.row, 30, { format: 'words', note: priceByYield.note }),
    columnOf(priceByYield.yield, 13, { format: 'whole', unit: soldUnit }),
    columnOf(priceByYield.costs, 10, {
      ...money,
      note: priceByYield.costsNote,
    }),
    ...steps.map((step) =>
      columnOf(stepNames[step].price, 10, {
        ...money,
        unit: { compute: whereSold(short(product(meanPrice, { value: step }))) },
      }),
    ),
  ],
  rows: steps.map((rowStep) => [
    stepNames[rowStep].yield,
    { compute: whereSold(product(sold('first'), { value: rowStep })) },
    {
      compute: whereSold(
        sum(
          less(totalOf(rowNames.all, 'first'), tiedToYield('first')),
          product(less(tiedToYield('first'), sellingAmount), { value: rowStep }),
        ),
      ),
    },
    ...steps.map((step) => ({
      compute: whereSold(
        less(
          product(income('first'), { value: rowStep }, { value: step }, less({ value: 1 }, selling('first'))),
          column(priceByYield.costs),
        ),
      ),
    })),
  ]),
};

const soldAsChosen = lookUp(chosen, 'CropPrices', priceWords.columns.crop, priceWords.columns.soldAs);
const weightOfChosen = lookUp(chosen, 'CropPrices', priceWords.columns.crop, priceWords.columns.weightUsed);
/** All crops, as they are asked for, would be taken for the first one. */
const isPacked = when(
  isGarden,
  false,
  native(
    'IFERROR',
    native(
      'AND',
      isGiven(weightOfChosen),
      operate(operate(soldAsChosen, '&', ''), '<>', ''),
      operate(soldAsChosen, '<>', soldUnits[0]),
    ),
    false,
  ),
);

const plotCells = allOf('Plots', plotWords.columns.plot.header);
const cropCells = allOf('Plots', plotWords.columns.crop.header);
const takenAs = allOf('Plots', plotWords.columns.takenAs.header);
const notCounted = when(
  isGarden,
  less(
    sum(native('COUNTIFS', cropCells, '<>'), native('COUNTIFS', plotCells, '<>', cropCells, '')),
    input('BUDGET_PLOTS'),
  ),
  less(native('COUNTIFS', takenAs, chosen), input('BUDGET_PLOTS')),
);

const computed = (
  key: keyof typeof words.lines,
  name: string,
  compute: Expression,
  format: Format,
): FormLine => ({ ...words.lines[key], name, kind: 'computed', content: { compute }, format, choices: [] });

export const budgetTemplate: SheetTemplate = {
  id: idInLanguage('budget'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: words.cautions,
  form: [
    {
      ...words.lines.for,
      name: 'BUDGET_FOR',
      kind: 'input',
      content: words.wholeGarden,
      format: 'text',
      choices: [words.wholeGarden, ...cropTypes],
    },
    computed(
      'crops',
      'BUDGET_CROPS',
      when(isGarden, '*', native('IFERROR', cropOfName(input('BUDGET_FOR')), words.noSuchCrop)),
      'general',
    ),
    computed('unit', 'BUDGET_UNIT', when(isPacked, soldAsChosen, weightUnit), 'general'),
    computed('unitWeight', 'BUDGET_UNIT_WEIGHT', when(isPacked, weightOfChosen, 1), 'general'),
    computed('plots', 'BUDGET_PLOTS', of('plots'), 'whole'),
    computed('notCounted', 'BUDGET_NOT_COUNTED', notCounted, 'whole'),
    computed(
      'lacking',
      'BUDGET_LACKING',
      native('COUNTIFS', allOf('BudgetLines', headers.lacks), '?*'),
      'whole',
    ),
    computed(
      'landArea',
      'LAND_AREA',
      call('AREA.FROM', 1, when(isMetric, 'hectare', 'acre'), input('UNITS')),
      'whole',
    ),
  ],
  tables: [linesTable, byCropTable, totalTable, byPriceTable],
  // No table of it is longer than a page; LibreOffice 7.4 leaves out rows where a page ends at rows that it repeats.
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false, repeatHeader: false },
};
