/** The Plots sheet: one growing table. Longer than most files because every column is declared here. */
import type { Limits } from '../workbook/limits';
import type { Expression, Format, SheetTemplate, TableColumn, TableTemplate } from '../workbook/template';
import { columnOf } from '../workbook/columnOf';
import {
  allOf,
  call,
  column,
  given,
  givenOr,
  input,
  isBlank,
  lookUp,
  native,
  operate,
  when,
} from '../workbook/expressions';
import { crops, flowerTypes, type Trait } from '../reference/crops';
import { practice } from '../reference/practice';
import { catalogue, saidElsewhere } from '../texts/catalogue';
import { cropFigure as figureOf, cropTakenAs, highYield } from './cropLookUps';
import { fill } from '../texts/fill';
import { idInLanguage } from '../texts/language';
import type { Cause } from '../workbook/findFindings';
import { inWords } from './inWords';
import { datesInWords } from '../texts/datesInWords';
import { rateUsed } from './prices';
import { cropWidth, otherNamesOfCrops } from './sayCrop';

const words = catalogue.sheets.plots;
const headers = words.columns;
const remarks = words.remarks;
const { quantities, verdicts } = catalogue;
const { columns: priceHeaders } = catalogue.money.prices;

const cropTypes = Object.keys(otherNamesOfCrops);
/** The trade's other names for them. */
const synonyms = Object.fromEntries(
  cropTypes.flatMap((crop) => (otherNamesOfCrops[crop] ?? []).map((name) => [name, crop] as const)),
);

/** Of a cell that names a crop. */
export const namesOfCrops = {
  choices: [...cropTypes, ...Object.keys(synonyms)],
  takenAs: synonyms,
};

type ColumnKey = keyof typeof headers;
const cell = (key: ColumnKey): Expression => column(headers[key].header);

/** The crop's figure of the Crops sheet. */
const cropFigure = (trait: Trait): Expression => figureOf(cell('takenAs'), trait);

/** The crop has no figure to stand in. */
const isLacking = (trait: Trait): Expression =>
  operate(cropFigure(trait), '=', catalogue.sheets.crops.noFigure);
const mayLack = (trait: Trait): boolean => crops.some(({ figures }) => figures[trait] === undefined);

/** Where the crop has none it is not given: the words that stand there in the Crops sheet are no figure. */
const givenOrCrop = (key: ColumnKey, trait: Trait): Expression =>
  givenOr(cell(key), mayLack(trait) ? when(isLacking(trait), '', cropFigure(trait)) : cropFigure(trait));

/** Left blank, and the crop has no figure to stand in: in one comparison, for Notes is near a formula's longest. */
const isWanting = (key: ColumnKey, trait: Trait): Expression =>
  operate(operate(cell(key), '&', cropFigure(trait)), '=', catalogue.sheets.crops.noFigure);

const rowSpacing = givenOrCrop('rowSpacing', 'row spacing');
const plantSpacing = givenOrCrop('plantSpacing', 'plant spacing');
const hillSpacing = givenOrCrop('hillSpacing', 'hill spacing');
const hillRowSpacing = givenOrCrop('rowSpacing', 'hill row spacing');
const plantsPerHill = givenOrCrop('plantsPerHill', 'plants per hill');
const germination = givenOrCrop('germination', 'germination standard');
const flowerType = givenOrCrop('flowerType', 'flower type');
const daysToMaturity = givenOrCrop('daysToMaturity', 'days to maturity');
const harvestDays = givenOrCrop('harvestDays', 'harvest days');
const yieldPer100 = givenOrCrop('yieldPer100', 'yield per 100');
const frostMargin = givenOr(input('FROST_MARGIN'), cropFigure('frost margin'));

/** While the frosts are no season, the Season sheet says why, and no date here stands on them. */
const firstFrost = when(
  native('ISERROR', input('FROST_FREE_DAYS')),
  input('FROST_FREE_DAYS'),
  input('FIRST_FROST'),
);

/** On it or after it no fruit is left to pick, as DATE.LASTPICK has it. */
export const firstFrostDay = native('INT', firstFrost);
/** By the difference, which an error makes an error: in the browser's engine one counts as more than a date. */
const isTakenByFrost = operate(operate(cell('firstPick'), '-', firstFrostDay), '>=', 0);

const gynoeciousShare = givenOr(cell('pollenizerShare'), practice.gynoeciousPollenizers.value);

const isHills = operate(cell('layout'), '=', 'hills');
const isBeds = operate(cell('layout'), '=', 'beds');
const isRows = native('OR', isBlank(cell('layout')), operate(cell('layout'), '=', 'rows'));
const isTransplant = operate(cell('start'), '=', 'transplant');
const isSeed = native('OR', isBlank(cell('start')), operate(cell('start'), '=', 'seed'));
const isFlowerType = (type: string): Expression => operate(flowerType, '=', type);

/** Without NOT: the browser's engine stumbles over two of them in one formula. */
const isNot = (condition: Expression): Expression => when(condition, false, true);

const units = input('UNITS');
type Measured = Partial<Pick<TableColumn, 'unit' | 'converts'>>;

/** @param converts the US unit, as the converter knows it */
const measure = (converts: string, us: string, metric: string): Measured => ({
  unit: { compute: when(operate(units, '=', 'metric'), metric, us) },
  converts,
});
const days: Measured = { unit: catalogue.units.days };
const feet = measure('ft', 'ft', 'm');
const inches = measure('in', 'in', 'cm');

const plants = when(
  isHills,
  call(
    'PLANTS.INHILLS',
    cell('length'),
    cell('width'),
    hillSpacing,
    plantsPerHill,
    null,
    hillRowSpacing,
    units,
  ),
  when(
    isBeds,
    call(
      'PLANTS.INBEDS',
      cell('length'),
      cell('width'),
      cell('bedWidth'),
      cell('pathWidth'),
      cell('rowsPerBed'),
      plantSpacing,
      units,
    ),
    when(
      isRows,
      call('PLANTS.INROWS', cell('length'), cell('width'), rowSpacing, plantSpacing, null, units),
      native('NA'),
    ),
  ),
);

const hills = operate(cell('plants'), '/', plantsPerHill);

const seedToSow = when(
  isTransplant,
  operate(
    call(
      'TRAY.CELLS',
      cell('plants'),
      germination,
      input('SEEDS_PER_CELL'),
      input('TRAY_CULLS'),
      input('ASSURANCE'),
    ),
    '*',
    input('SEEDS_PER_CELL'),
  ),
  when(
    isHills,
    operate(
      hills,
      '*',
      call('SEED.PERHILL', plantsPerHill, germination, given(cell('fieldEmergence')), input('ASSURANCE')),
    ),
    call('SEED.NEEDED', cell('plants'), germination, given(cell('fieldEmergence')), input('ASSURANCE')),
  ),
);

/** While the plants do not fit, nothing of the plot is counted; typed over, they say nothing of its sides. */
const area = when(
  native('ISERROR', cell('plants')),
  cell('plants'),
  when(
    native('OR', isBlank(cell('length')), isBlank(cell('width'))),
    native('NA'),
    operate(cell('length'), '*', cell('width')),
  ),
);

/** As PLANTS.INROWS, INHILLS and INBEDS count them, by the same rule of what is a whole number (calc/whole). */
const rows = when(
  native('ISERROR', cell('area')),
  cell('area'),
  operate(
    native(
      'INT',
      operate(
        when(
          isBeds,
          operate(
            operate(cell('width'), '+', cell('pathWidth')),
            '/',
            operate(cell('bedWidth'), '+', cell('pathWidth')),
          ),
          operate(cell('width'), '/', when(isHills, hillRowSpacing, rowSpacing)),
        ),
        '*',
        1 + 1e-9,
      ),
    ),
    '*',
    when(isBeds, cell('rowsPerBed'), 1),
  ),
);

const rowLength = when(
  isHills,
  operate(hills, '*', hillSpacing),
  operate(operate(cell('plants'), '*', plantSpacing), '/', input('SPACING_PER_LENGTH')),
);

/** Of what is not on trellis nobody asks for posts, and none of our functions runs. */
const trellised = lookUp(cell('takenAs'), 'CropPrices', priceHeaders.crop, priceHeaders.trellised);
const posts = when(
  native(
    'AND',
    operate(trellised, '>', 0),
    operate(trellised, '<=', 1),
    native('ISNUMBER', rateUsed('postSpacing')),
  ),
  call(
    'SUPPLY.TRELLIS',
    operate(cell('rowLength'), '/', cell('rows')),
    rateUsed('postSpacing'),
    cell('rows'),
    units,
  ),
  '',
);

const earliestStart = when(
  isTransplant,
  input('SET_OUT_DATE'),
  when(isSeed, input('FIRST_SOWING_DATE'), native('NA')),
);

/** Slower growth after the longest day. */
const fallDays = when(operate(cell('setOutOrSow'), '>', input('LONGEST_DAY')), cropFigure('fall days'), 0);

/** A condition that an error elsewhere in the row must not spoil. */
const surely = (condition: Expression): Expression => native('IFERROR', condition, false);
const remark = (condition: Expression, sentence: string): Expression =>
  when(surely(condition), `${sentence} `, '');

/** A column of its own as well: it reads every plot, and Notes, which is long, is asked again only where it differs. */
const sameName = when(
  surely(
    operate(native('COUNTIF', allOf('Plots', headers.plot.header), operate('=', '&', cell('plot'))), '>', 1),
  ),
  words.isShared,
  '',
);

/** Words of the functions, the same in every language; a blank is the first. */
export const layouts = ['rows', 'hills', 'beds'] as const;
export type Layout = (typeof layouts)[number];
export const starts = ['seed', 'transplant'] as const;

interface StandInOf {
  readonly key: ColumnKey;
  readonly trait: Trait;
  /** The layouts that ask for it; all when absent. */
  readonly layouts?: readonly Layout[];
  /** The argument of our functions that cannot do without it. */
  readonly demandedAs?: keyof typeof catalogue.quantities;
}

/** Figures of the crop that stand in for blanks. */
const standIns: readonly StandInOf[] = [
  { key: 'rowSpacing', trait: 'row spacing', layouts: ['rows'] },
  { key: 'rowSpacing', trait: 'hill row spacing', layouts: ['hills'] },
  { key: 'plantSpacing', trait: 'plant spacing', layouts: ['rows', 'beds'] },
  { key: 'hillSpacing', trait: 'hill spacing', layouts: ['hills'], demandedAs: 'hill_spacing' },
  { key: 'plantsPerHill', trait: 'plants per hill', layouts: ['hills'], demandedAs: 'plants_per_hill' },
  { key: 'germination', trait: 'germination standard', demandedAs: 'germination' },
  { key: 'flowerType', trait: 'flower type' },
  { key: 'daysToMaturity', trait: 'days to maturity', demandedAs: 'days_to_maturity' },
  { key: 'harvestDays', trait: 'harvest days', demandedAs: 'harvest_days' },
  { key: 'yieldPer100', trait: 'yield per 100' },
];

const isLayout: Readonly<Record<Layout, Expression>> = { rows: isRows, hills: isHills, beds: isBeds };
/** Whether the plot asks for it, as conditions that all must hold. */
const askedFor = ({ layouts }: StandInOf): Expression[] =>
  layouts === undefined ? [] : [native('OR', ...layouts.map((layout) => isLayout[layout]))];

/** Which figure of the Crops sheet stands in where a cell is left blank. */
export interface StandIn {
  readonly header: string;
  readonly figure: string;
  /** The layouts that read it. */
  readonly layouts: readonly string[];
}
export const plotStandIns: readonly StandIn[] = standIns.map(({ key, trait, layouts: asking }) => ({
  header: headers[key].header,
  figure: catalogue.sheets.crops.traits[trait],
  layouts: asking ?? layouts,
}));

const lackable = standIns.filter(({ trait }) => mayLack(trait));

/** The plot asks for it, and neither the line nor the crop has it. */
const lacks = (standIn: StandInOf): Expression => {
  const wanting = isWanting(standIn.key, standIn.trait);
  const asked = askedFor(standIn);
  return asked.length === 0 ? wanting : native('AND', wanting, ...asked);
};

const sayWanting = ({ key, trait }: StandInOf): string =>
  fill(remarks.noFigure, { figure: catalogue.sheets.crops.traits[trait], header: headers[key].header });

/** Remarks that want a cell filled in or mended, each with the refusal that follows from it. */
export const causesInPlots: readonly Cause[] = [
  { remark: remarks.noCrop, header: headers.crop.header, follows: null },
  { remark: remarks.layoutUnknown, header: headers.layout.header, follows: null },
  { remark: remarks.startUnknown, header: headers.start.header, follows: null },
  { remark: remarks.lastCucurbitsUnfit, header: headers.lastCucurbits.header, follows: null },
  { remark: remarks.priceUnfit, header: headers.price.header, follows: null },
  ...lackable.flatMap((standIn) =>
    standIn.demandedAs === undefined
      ? []
      : {
          remark: sayWanting(standIn),
          header: headers[standIn.key].header,
          follows: fill(catalogue.errors.missing, { name: catalogue.quantities[standIn.demandedAs] }),
        },
  ),
];

const isolation = call(
  'FLOWER.ISOLATE',
  cell('crop'),
  given(cell('flowerType')),
  allOf('Plots', headers.crop.header),
  allOf('Plots', headers.flowerType.header),
);

/**
 * A column of its own: it reads every plot, and a new frost date need not ask it again. The function's word for nothing
 * to do is said in the sheet's language.
 */
const keepApart =
  words.isClear === verdicts.clear
    ? isolation
    : when(operate(isolation, '=', verdicts.clear), words.isClear, isolation);

const join = (parts: readonly Expression[]): Expression =>
  parts.reduce((left, right) => operate(left, '&', right));

/** Nothing is assumed of a crop that is not known, nor where the crop has no figure. */
const assumed = when(
  native('ISERROR', cell('takenAs')),
  '',
  join([
    ...standIns.map((standIn) => {
      const { key, trait } = standIn;
      const isThere = mayLack(trait) ? [isNot(isLacking(trait))] : [];
      return when(
        native('AND', isBlank(cell(key)), ...askedFor(standIn), ...isThere),
        `${headers[key].header}. `,
        '',
      );
    }),
    when(native('AND', isBlank(cell('fieldEmergence')), isSeed), `${words.noFieldLoss}. `, ''),
  ]),
);

/** As the functions that read it, so that what is refused in a cell is refused where it is asked for. */
const limits = {
  side: { above: 0, atMost: 1_000_000 },
  size: { above: 0 },
  count: { atLeast: 1, isWhole: true },
  orNone: { atLeast: 0 },
  share: { above: 0, atMost: 1, isNeverOnePercent: true },
  shareOrNone: { atLeast: 0, atMost: 1, isNeverOnePercent: true },
  daysToMaturity: { above: 0, atMost: 365 },
  harvestDays: { atLeast: 0, atMost: 365 },
  pastYear: { atLeast: 1900, atMost: 9999, isWhole: true },
} satisfies Record<string, Limits>;

/** Native, as ROTATION.YEARS counts. Whatever stands in the cell spoils no other remark. */
const lastCucurbits = cell('lastCucurbits');
const plantingYear = native('YEAR', cell('setOutOrSow'));
const seasonsBetween = operate(operate(plantingYear, '-', lastCucurbits), '-', 1);
const rotation = native(
  'IFERROR',
  when(
    isBlank(lastCucurbits),
    '',
    when(
      when(
        native('ISNUMBER', lastCucurbits),
        native(
          'OR',
          operate(lastCucurbits, '<', limits.pastYear.atLeast),
          operate(seasonsBetween, '<', 0),
          operate(native('INT', lastCucurbits), '<>', lastCucurbits),
        ),
        true,
      ),
      `${remarks.lastCucurbitsUnfit} `,
      when(
        operate(seasonsBetween, '<', practice.seasonsFree.high),
        join([
          { value: fill(remarks.seasonsBetween, practice.seasonsFree) },
          seasonsBetween,
          { value: '. ' },
        ]),
        '',
      ),
    ),
  ),
  '',
);

const isPriceFit = when(
  native('ISNUMBER', cell('price')),
  operate(cell('price'), '>=', 0),
  surely(isBlank(cell('price'))),
);
const priceInPrices = lookUp(cell('takenAs'), 'CropPrices', priceHeaders.crop, priceHeaders.firstByWeight);

/**
 * Each other result that an input can spoil stands on one of these. #N/A is no misfit: what has none, or stands on a
 * word that is not known, has a remark of its own. So has what the crop has no figure for.
 */
const misfit = when(
  native(
    'ISERR',
    join([cell('seedToSow'), cell('yield'), cell('pollenizers'), cell('coverOff'), cell('lastPick')]),
  ),
  when(
    surely(native('OR', ...lackable.filter(({ demandedAs }) => demandedAs !== undefined).map(lacks))),
    '',
    `${remarks.misfit} `,
  ),
  '',
);

/** Days; what keeps longer wants a room of its own. Judgement. */
const longStorage = 30;

const notes = join([
  remark(native('ISERROR', cell('takenAs')), remarks.cropUnknown),
  remark(operate(cell('sameName'), '=', words.isShared), remarks.sameName),
  remark(isNot(native('OR', isHills, isBeds, isRows)), remarks.layoutUnknown),
  remark(isNot(native('OR', isTransplant, isSeed)), remarks.startUnknown),
  ...lackable.map((standIn) => remark(lacks(standIn), sayWanting(standIn))),
  misfit,
  remark(
    native('AND', isNot(isBlank(cell('startsOn'))), operate(cell('startsOn'), '<', earliestStart)),
    remarks.startsEarly,
  ),
  remark(operate(cell('daysToSpare'), '<', 0), remarks.shortSeason),
  remark(isTakenByFrost, remarks.takenByFrost),
  remark(
    native('AND', operate(cell('daysToSpare'), '<', 0), operate(cell('firstPick'), '<', firstFrostDay)),
    remarks.cutShort,
  ),
  remark(
    native(
      'AND',
      isSeed,
      // A text counts as more than any date.
      native('ISNUMBER', cell('setOutOrSow')),
      operate(cell('setOutOrSow'), '>', cell('lastSowing')),
    ),
    remarks.sowsTooLate,
  ),
  native(
    'IFERROR',
    when(operate(cell('keepApart'), '=', words.isClear), '', operate(cell('keepApart'), '&', ' ')),
    '',
  ),
  remark(
    native(
      'AND',
      native('ISNUMBER', cell('germination')),
      // Under 0 it is a slip, and Seed to sow says so.
      operate(cell('germination'), '>=', 0),
      // Of a crop that has none the sum is an error.
      operate(cell('germination'), '<', operate(cropFigure('germination standard'), '+', 0)),
    ),
    remarks.belowStandard,
  ),
  remark(isFlowerType('triploid'), `${remarks.pollenizerSeed} ${remarks.pollenizerYield}`),
  remark(
    native(
      'AND',
      isBlank(cell('yieldPer100')),
      operate(highYield(cell('takenAs')), '>', operate(3, '*', cropFigure('yield per 100'))),
    ),
    remarks.wideYield,
  ),
  remark(
    native('AND', native('ISNUMBER', cell('yieldPer100')), operate(cell('yieldPer100'), '=', 0)),
    remarks.noYield,
  ),
  when(isPriceFit, '', `${remarks.priceUnfit} `),
  remark(
    native(
      'AND',
      native('ISNUMBER', cell('price')),
      // In the browser's engine a number differs from an error, too.
      native('ISNUMBER', priceInPrices),
      operate(cell('price'), '<>', priceInPrices),
    ),
    remarks.priceElsewhere,
  ),
  rotation,
  remark(operate(operate(cropFigure('storage days'), '+', 0), '>=', longStorage), remarks.storesLong),
]);

const asked = (key: ColumnKey, format: Format, width: number, more: Partial<TableColumn> = {}): TableColumn =>
  columnOf(headers[key].header, width, { ...headers[key], kind: 'input', format, ...more });

/** A row without a crop stays empty. */
const computed = (
  key: ColumnKey,
  compute: Expression,
  format: Format,
  width: number,
  measured: Measured = {},
): TableColumn =>
  asked(key, format, width, {
    kind: 'computed',
    compute: when(isBlank(cell('crop')), '', compute),
    ...measured,
  });

/** Beyond it the grid's engine is slow: an edit among 3,000 rows took it seconds. */
export const manyPlots = 1500;

export const plotsTemplate: SheetTemplate = {
  id: idInLanguage('plots'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: words.cautions,
  form: [],
  tables: [
    {
      name: 'Plots',
      heading: '',
      rows: null,
      grows: true,
      columns: [
        // What every plot is asked first, so that its results stand in sight beside it.
        asked('plot', 'text', 16),
        asked('crop', 'text', cropWidth, namesOfCrops),
        asked('layout', 'text', 9, inWords(layouts)),
        asked('length', 'general', 9, { ...feet, limits: limits.side, quantity: quantities.length }),
        asked('width', 'general', 9, { ...feet, limits: limits.side, quantity: quantities.width }),
        asked('start', 'text', 11, inWords(starts)),
        asked('germination', 'percent', 12, { limits: limits.share, quantity: quantities.germination }),
        computed('plants', plants, 'whole', 9),
        computed('seedToSow', seedToSow, 'whole', 10, { unit: catalogue.units.seeds }),
        computed(
          'seedWeight',
          when(
            native('ISNUMBER', cropFigure('seeds per weight')),
            operate(cell('seedToSow'), '/', cropFigure('seeds per weight')),
            '',
          ),
          'hundredth',
          9,
          measure('oz', 'oz', 'g'),
        ),
        computed(
          'startTransplants',
          when(
            isTransplant,
            call('DATE.STARTTRANSPLANTS', cell('setOutOrSow'), cropFigure('transplant weeks')),
            '',
          ),
          'date',
          12,
        ),
        computed('setOutOrSow', givenOr(cell('startsOn'), earliestStart), 'date', 12),
        computed('soilAtLeast', cropFigure('soil at planting'), 'whole', 9, measure('F', '°F', '°C')),
        computed(
          'coverOff',
          when(
            isFlowerType('parthenocarpic'),
            words.mayStay,
            call('DATE.COVEROFF', cell('firstPick'), cell('crop'), null, given(cell('flowerType'))),
          ),
          'date',
          14,
        ),
        computed(
          'firstPick',
          call(
            'DATE.FIRSTPICK',
            cell('setOutOrSow'),
            daysToMaturity,
            when(isTransplant, 'transplant', 'seed'),
            cropFigure('days counted from'),
            null,
            fallDays,
          ),
          'date',
          12,
        ),
        computed('lastPick', call('DATE.LASTPICK', cell('firstPick'), harvestDays, firstFrost), 'date', 12),
        computed(
          'lastSowing',
          // Without harvest days the function would take a number of its own.
          when(
            isWanting('harvestDays', 'harvest days'),
            native('NA'),
            call(
              'DATE.LASTSOWING',
              firstFrost,
              daysToMaturity,
              harvestDays,
              cropFigure('fall days'),
              frostMargin,
            ),
          ),
          'date',
          12,
        ),
        computed(
          'daysToSpare',
          // The days until the pick stand outside the call: of an early sowing they can be under 0.
          operate(
            call(
              'SEASON.SPARE',
              input('LAST_FROST'),
              firstFrost,
              // Under 0 or a text: Last pick says what is wrong with it.
              native('MAX', 0, operate(harvestDays, '+', 0)),
            ),
            '-',
            operate(cell('firstPick'), '-', input('LAST_FROST')),
          ),
          'whole',
          9,
          days,
        ),
        computed(
          'yield',
          when(
            isWanting('yieldPer100', 'yield per 100'),
            '',
            call('HARVEST.YIELD', cell('rowLength'), yieldPer100),
          ),
          'whole',
          10,
          measure('lb', 'lb', 'kg'),
        ),
        computed(
          'income',
          when(
            native('OR', isBlank(cell('price')), isBlank(cell('yield'))),
            '',
            when(surely(isTakenByFrost), 0, operate(cell('yield'), '*', cell('price'))),
          ),
          'money',
          11,
        ),
        computed(
          'femaleShare',
          when(
            isFlowerType('gynoecious'),
            call('FLOWER.FEMALESHARE', gynoeciousShare, input('MONOECIOUS_FEMALE')),
            when(isFlowerType('monoecious'), call('FLOWER.FEMALESHARE', 1, input('MONOECIOUS_FEMALE')), ''),
          ),
          'percent',
          9,
        ),
        computed(
          'pollenizers',
          when(
            isFlowerType('gynoecious'),
            call('FLOWER.POLLENIZERS', cell('plants'), gynoeciousShare, input('POLLENIZER_LOSSES')),
            when(
              isFlowerType('triploid'),
              call(
                'FLOWER.POLLENIZERS',
                cell('plants'),
                givenOr(cell('pollenizerShare'), practice.triploidPollenizers.value),
                input('POLLENIZER_LOSSES'),
              ),
              '',
            ),
          ),
          'whole',
          11,
          { unit: catalogue.units.plants },
        ),
        computed('area', area, 'whole', 9, measure('sqFt', catalogue.units.sqFt, catalogue.units.sqM)),
        computed('rows', rows, 'whole', 8),
        computed('rowLength', rowLength, 'whole', 9, feet),
        computed('posts', posts, 'whole', 8),
        // Figures of the grower's own, each in place of the crop's.
        asked('rowSpacing', 'general', 9, { ...feet, limits: limits.size, quantity: quantities.row_spacing }),
        asked('plantSpacing', 'general', 9, {
          ...inches,
          limits: limits.size,
          quantity: quantities.plant_spacing,
        }),
        asked('hillSpacing', 'general', 9, {
          ...feet,
          limits: limits.size,
          quantity: quantities.hill_spacing,
        }),
        asked('plantsPerHill', 'general', 9, { limits: limits.count, quantity: quantities.plants_per_hill }),
        asked('bedWidth', 'general', 9, { ...feet, limits: limits.size, quantity: quantities.bed_width }),
        asked('pathWidth', 'general', 9, { ...feet, limits: limits.orNone, quantity: quantities.path_width }),
        asked('rowsPerBed', 'general', 9, { limits: limits.count, quantity: quantities.rows_per_bed }),
        asked('fieldEmergence', 'percent', 11, {
          limits: limits.share,
          quantity: quantities.field_emergence,
        }),
        asked('flowerType', 'text', 15, inWords(flowerTypes)),
        asked('pollenizerShare', 'percent', 11, { limits: limits.shareOrNone, quantity: quantities.share }),
        asked('daysToMaturity', 'general', 10, {
          ...days,
          limits: limits.daysToMaturity,
          quantity: quantities.days_to_maturity,
        }),
        asked('harvestDays', 'general', 9, {
          ...days,
          limits: limits.harvestDays,
          quantity: quantities.harvest_days,
        }),
        asked('yieldPer100', 'general', 10, {
          ...measure('lbPer100Ft', 'lb/100 ft', 'kg/100 m'),
          limits: limits.orNone,
          quantity: quantities.yield_per_100,
        }),
        asked('price', 'price', 9, {
          ...measure('perLb', catalogue.units.perLb, catalogue.units.perKg),
          limits: limits.orNone,
        }),
        asked('startsOn', 'date', 12, { dates: datesInWords }),
        asked('lastCucurbits', 'general', 11, { limits: limits.pastYear }),
        // Sentences come last: the grid loses sight of what stands beyond a wide column.
        computed('takenAs', cropTakenAs(cell('crop')), 'words', cropWidth),
        computed('sameName', sameName, 'words', 9),
        computed('keepApart', keepApart, 'words', 30),
        computed('assumed', assumed, 'words', 44),
        {
          ...computed('notes', notes, 'words', 80),
          compute: when(isBlank(cell('crop')), when(isBlank(cell('plot')), '', remarks.noCrop), notes),
        },
      ],
    },
  ],
  page: { landscape: true, pagesWide: 3, repeatFirstColumn: true },
};

export const plotsTable = plotsTemplate.tables[0] as TableTemplate;

/** What a list of plots may have in its first line. */
export const plotHeaders = {
  headers: plotsTable.columns.map(({ header }) => header),
  elsewhere: saidElsewhere(({ sheets }) => sheets.plots.columns),
};
