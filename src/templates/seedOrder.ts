/**
 * The Seed order sheet: the seed of all plots by crop, and under it the price list that it is bought from. Long because
 * every column is declared here.
 */
import type {
  CellContent,
  Expression,
  FormLine,
  Format,
  SheetTemplate,
  TableColumn,
  TableTemplate,
} from '../workbook/template';
import { columnOf } from '../workbook/columnOf';
import { allOf, call, column, input, isBlank, native, operate, when } from '../workbook/expressions';
import { crops, type Crop } from '../reference/crops';
import { seedLife } from '../reference/seedLife';
import { seedKinds } from '../reference/seedStandards';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { cropFigure } from './cropLookUps';
import { cropWidth, formerCropNames, wordOfCrop } from './sayCrop';
import { ofPrices, seedPricesTable } from './seedPrices';

const words = catalogue.seedOrder;
const { remarks, units } = words;
const { columns: headers } = words;
const { columns: plotHeaders, remarks: plotRemarks } = catalogue.sheets.plots;
const { quantities } = catalogue;

type OrderKey = keyof typeof headers;
const cell = (key: OrderKey): Expression => column(headers[key].header);
const ofPlots = (key: keyof typeof plotHeaders): Expression => allOf('Plots', plotHeaders[key].header);
const ofOrder = (key: OrderKey): Expression => allOf('SeedOrder', headers[key].header);

const isNumber = (of: Expression): Expression => native('ISNUMBER', of);
const ofCrop = [ofPlots('takenAs'), cell('crop')];
/** An error meets no comparison: a plot without seed is left out of the sum and told of. */
const withSeed = [...ofCrop, ofPlots('seedToSow'), '>=0'];
const counted = native('COUNTIFS', ...withSeed);
const withGermination = [...ofCrop, ofPlots('germination'), '>0', ofPlots('germination'), '<=1'];

/** A crop that nobody plants shows blanks. */
const ifPlanted = (compute: Expression): Expression => when(isBlank(cell('plots')), '', compute);
const join = (parts: readonly Expression[]): Expression =>
  parts.reduce((left, right) => operate(left, '&', right));
const sentence = (text: string): string => `${text} `;

const plots = native('COUNTIF', ...ofCrop);
const seedsNeeded = when(operate(counted, '=', 0), '', native('SUMIFS', ofPlots('seedToSow'), ...withSeed));
const perWeight = cropFigure(cell('crop'), 'seeds per weight');
const weight = when(
  native('AND', isNumber(cell('seedsNeeded')), isNumber(perWeight)),
  operate(cell('seedsNeeded'), '/', perWeight),
  '',
);
const germination = when(
  operate(native('COUNTIFS', ...withGermination), '=', 0),
  '',
  native('MINIFS', ofPlots('germination'), ...withGermination),
);

const isCountOnHand = when(
  isNumber(cell('onHand')),
  native(
    'AND',
    operate(cell('onHand'), '>=', 0),
    operate(native('INT', cell('onHand')), '=', cell('onHand')),
  ),
  false,
);
const onHandThatKeeps = when(
  native('AND', isCountOnHand, isNumber(cell('yearsLeft'))),
  when(operate(cell('yearsLeft'), '>', 0), cell('onHand'), 0),
  0,
);
const toBuy = when(
  isBlank(cell('seedsNeeded')),
  '',
  native('ROUNDUP', native('MAX', 0, operate(cell('seedsNeeded'), '-', onHandThatKeeps)), 0),
);

const packs = native('COUNTIF', ofPrices('takenAs'), cell('crop'));
const isListed = operate(packs, '>', 0);
/** Where there is seed to buy. */
const ifToBuy = (listed: Expression | string, unlisted: string): Expression =>
  when(
    isBlank(cell('toBuy')),
    '',
    when(operate(cell('toBuy'), '>', 0), when(isListed, listed, unlisted), ''),
  );
const bought = (id: 'SEED.PACKLIST' | 'SEED.PACKCOST'): Expression =>
  ifToBuy(call(id, cell('toBuy'), cell('crop'), ofPrices('crop'), ofPrices('size'), ofPrices('price')), '');

/** How many packs of the crop do not meet it: neither an error nor a text meets any comparison. */
const packsBut = (key: Parameters<typeof ofPrices>[0], comparison: string): Expression =>
  operate(packs, '-', native('COUNTIFS', ofPrices('takenAs'), cell('crop'), ofPrices(key), comparison));
const withoutSize = packsBut('size', '>=1');
const withoutPrice = packsBut('price', '>0');
/** On paper an error says nothing. */
const remarkOnCost = ifToBuy(
  when(
    isNumber(cell('cost')),
    '',
    when(
      operate(packsBut('perThousand', '>0'), '=', 0),
      sentence(remarks.beyondReach),
      join([
        when(operate(withoutSize, '>', 0), sentence(remarks.packSize), ''),
        when(operate(withoutPrice, '>', 0), sentence(remarks.packPrice), ''),
        when(operate(operate(withoutSize, '+', withoutPrice), '=', 0), sentence(remarks.packOther), ''),
      ]),
    ),
  ),
  sentence(remarks.noPack),
);

const lifeOf = ({ name }: Crop): unknown => seedLife[seedKinds[name] ?? ''];
const yearsLeft = (crop: Crop): Expression =>
  when(
    isBlank(cell('packedIn')),
    '',
    lifeOf(crop) === undefined
      ? { value: words.noLife }
      : when(
          isBlank(input('SEASON_YEAR')),
          '',
          call('SEED.STORAGELEFT', cell('crop'), cell('packedIn'), input('SEASON_YEAR')),
        ),
  );

const remarkOnKeeping = (crop: Crop): Expression =>
  when(
    isBlank(cell('packedIn')),
    sentence(remarks.noYear),
    lifeOf(crop) === undefined
      ? when(isNumber(cell('yearsLeft')), '', sentence(remarks.noLife))
      : when(
          isBlank(cell('yearsLeft')),
          sentence(remarks.noSeasonYear),
          when(
            isNumber(cell('yearsLeft')),
            when(operate(cell('yearsLeft'), '>', 0), '', sentence(remarks.outlived)),
            '',
          ),
        ),
  );

const remarkOnHand = (crop: Crop): Expression =>
  join([
    when(native('ISERROR', cell('yearsLeft')), sentence(remarks.packedUnfit), ''),
    when(
      isBlank(cell('onHand')),
      '',
      when(isCountOnHand, native('IFERROR', remarkOnKeeping(crop), ''), sentence(remarks.onHandNotNumber)),
    ),
  ]);

const pollenizers = native('SUMIFS', ofPlots('pollenizers'), ...ofCrop, ofPlots('pollenizers'), '>0');
const uncounted = operate(cell('plots'), '-', counted);

const remark = (crop: Crop): Expression =>
  join([
    when(
      operate(uncounted, '>', 0),
      join([{ value: remarks.uncounted }, uncounted, { value: sentence(remarks.uncountedEnd) }]),
      '',
    ),
    remarkOnCost,
    remarkOnHand(crop),
    when(
      native('AND', isNumber(cell('germination')), isNumber(cell('standard'))),
      when(operate(cell('germination'), '<', cell('standard')), sentence(plotRemarks.belowStandard), ''),
      '',
    ),
    when(
      operate(pollenizers, '>', 0),
      join([
        pollenizers,
        { value: remarks.ofPlants },
        {
          value:
            crop.figures.species?.text === 'Citrullus lanatus'
              ? remarks.pollenizersApart
              : remarks.pollenizersMixed,
        },
      ]),
      '',
    ),
  ]);

const orderColumn = (
  key: OrderKey,
  format: Format,
  width: number,
  more: Partial<TableColumn> = {},
): TableColumn => columnOf(headers[key].header, width, { ...headers[key], format, ...more });

const inSeeds = { unit: units.seeds };

export const seedOrderTable: TableTemplate = {
  name: 'SeedOrder',
  heading: '',
  grows: false,
  columns: [
    orderColumn('crop', 'text', cropWidth, { formerly: formerCropNames }),
    orderColumn('plots', 'whole', 9),
    orderColumn('seedsNeeded', 'whole', 10, inSeeds),
    orderColumn('weight', 'hundredth', 9, {
      unit: { compute: when(operate(input('UNITS'), '=', 'metric'), units.g, units.oz) },
      converts: 'oz',
    }),
    orderColumn('germination', 'percent', 12),
    orderColumn('standard', 'percent', 10),
    orderColumn('onHand', 'whole', 9, { ...inSeeds, kind: 'input', limits: { atLeast: 0, isWhole: true } }),
    orderColumn('packedIn', 'general', 9, {
      kind: 'input',
      limits: { atLeast: 1900, atMost: 9999, isWhole: true },
      quantity: quantities.year_packed,
    }),
    orderColumn('yearsLeft', 'general', 11, { unit: units.years }),
    orderColumn('toBuy', 'whole', 9, inSeeds),
    orderColumn('packs', 'words', 24, { unit: units.packs }),
    orderColumn('cost', 'money', 11),
    orderColumn('remark', 'words', 62),
  ],
  rows: crops.map((crop): CellContent[] => [
    wordOfCrop(crop.name),
    { compute: when(operate(plots, '>', 0), plots, '') },
    { compute: ifPlanted(seedsNeeded) },
    { compute: ifPlanted(weight) },
    { compute: ifPlanted(germination) },
    {
      compute: ifPlanted(
        seedKinds[crop.name] === undefined
          ? { value: words.noStandard }
          : call('SEED.STANDARD', cell('crop')),
      ),
    },
    null,
    null,
    { compute: yearsLeft(crop) },
    { compute: toBuy },
    { compute: bought('SEED.PACKLIST') },
    { compute: bought('SEED.PACKCOST') },
    { compute: ifPlanted(remark(crop)) },
  ]),
};

const total = (
  key: keyof typeof words.lines,
  name: string,
  compute: Expression,
  format: Format,
): FormLine => ({
  ...words.lines[key],
  name,
  kind: 'computed',
  content: { compute },
  format,
  choices: [],
});

const isNoneCounted = operate(native('COUNT', ofOrder('seedsNeeded')), '=', 0);
const cropsToBuy = native('COUNTIF', ofOrder('toBuy'), '>0');
const cropsPriced = native('COUNT', ofOrder('cost'));

export const seedOrderTemplate: SheetTemplate = {
  id: idInLanguage('seedorder'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: words.cautions,
  form: [
    total(
      'seeds',
      'SEED_ORDER_SEEDS',
      when(isNoneCounted, words.noneYet, native('SUM', ofOrder('seedsNeeded'))),
      'whole',
    ),
    total(
      'cost',
      'SEED_ORDER_COST',
      when(
        native('AND', operate(cropsPriced, '=', 0), native('OR', isNoneCounted, operate(cropsToBuy, '>', 0))),
        words.noPriceYet,
        native('SUMIFS', ofOrder('cost'), ofOrder('cost'), '>0'),
      ),
      'money',
    ),
    total('unpriced', 'SEED_ORDER_UNPRICED', operate(cropsToBuy, '-', cropsPriced), 'whole'),
    total(
      'uncounted',
      'SEED_ORDER_UNCOUNTED',
      operate(
        operate(
          native('COUNTIF', ofPlots('crop'), '<>'),
          '+',
          native('COUNTIF', ofPlots('notes'), plotRemarks.noCrop),
        ),
        '-',
        native('COUNT', ofPlots('seedToSow')),
      ),
      'whole',
    ),
  ],
  tables: [seedOrderTable, seedPricesTable],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
