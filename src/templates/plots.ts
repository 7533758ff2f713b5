/** The Plots sheet: one growing table. Longer than most files because every column is declared here. */
import type { Expression, Format, SheetTemplate, TableColumn } from '../workbook/template';
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
import { crops, flowerTypes } from '../reference/crops';
import { practice } from '../reference/practice';
import { english } from '../texts/english';

const words = english.sheets.plots;
const headers = words.columns;
const remarks = words.remarks;

/** The types first, then the trade's other names for them. */
const understoodNames = [...crops.map((crop) => crop.name), ...crops.flatMap((crop) => crop.synonyms)];

type ColumnKey = keyof typeof headers;
const cell = (key: ColumnKey): Expression => column(headers[key].header);

/** The crop's figure of the Crops sheet. */
const cropFigure = (trait: string): Expression => lookUp(cell('takenAs'), 'Crops', 'Crop', trait);

/** Which figure of the Crops sheet stands in where a cell is left blank. */
export interface StandIn {
  readonly header: string;
  readonly figure: string;
  /** The layouts that read it. */
  readonly layouts: readonly string[];
}

const [rows, hilled, beds] = words.layouts;
const standsIn = (
  key: ColumnKey,
  figure: string,
  layouts: readonly string[] = words.layouts,
): StandIn & { readonly value: Expression } => ({
  header: headers[key].header,
  figure,
  layouts,
  value: givenOr(cell(key), cropFigure(figure)),
});

/** Where the look-up finds nothing, our function says why and names what is near. */
const takenAs = native(
  'IFERROR',
  lookUp(cell('crop'), 'CropNames', 'Name', 'Crop'),
  call('CROP.VALUE', cell('crop'), 'species'),
);

const standIns = {
  rowSpacing: standsIn('rowSpacing', 'row spacing', [rows]),
  hillRowSpacing: standsIn('rowSpacing', 'hill row spacing', [hilled]),
  plantSpacing: standsIn('plantSpacing', 'plant spacing', [rows, beds]),
  hillSpacing: standsIn('hillSpacing', 'hill spacing', [hilled]),
  plantsPerHill: standsIn('plantsPerHill', 'plants per hill', [hilled]),
  germination: standsIn('germination', 'germination standard'),
  flowerType: standsIn('flowerType', 'flower type'),
  daysToMaturity: standsIn('daysToMaturity', 'days to maturity'),
  harvestDays: standsIn('harvestDays', 'harvest days'),
  yieldPer100: standsIn('yieldPer100', 'yield per 100'),
};
export const plotStandIns: readonly StandIn[] = Object.values(standIns);

const rowSpacing = standIns.rowSpacing.value;
const plantSpacing = standIns.plantSpacing.value;
const hillSpacing = standIns.hillSpacing.value;
const hillRowSpacing = standIns.hillRowSpacing.value;
const plantsPerHill = standIns.plantsPerHill.value;
const germination = standIns.germination.value;
const flowerType = standIns.flowerType.value;
const daysToMaturity = standIns.daysToMaturity.value;
const harvestDays = standIns.harvestDays.value;
const yieldPer100 = standIns.yieldPer100.value;
const frostMargin = givenOr(input('FROST_MARGIN'), cropFigure('frost margin'));

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
type Measured = Pick<TableColumn, 'unit' | 'converts'>;

/** @param converts the US unit, as the converter knows it */
const measure = (converts: string, us: string, metric: string): Measured => ({
  unit: { compute: when(operate(units, '=', 'metric'), metric, us) },
  converts,
});
const unmeasured: Measured = { unit: null };
const days: Measured = { unit: 'days' };
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

const rowLength = when(
  isHills,
  operate(hills, '*', hillSpacing),
  operate(operate(cell('plants'), '*', plantSpacing), '/', input('SPACING_PER_LENGTH')),
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

const assumable: readonly [Expression, string][] = [
  [native('AND', isBlank(cell('rowSpacing')), isNot(isBeds)), headers.rowSpacing.header],
  [native('AND', isBlank(cell('plantSpacing')), isNot(isHills)), headers.plantSpacing.header],
  [native('AND', isBlank(cell('hillSpacing')), isHills), headers.hillSpacing.header],
  [native('AND', isBlank(cell('plantsPerHill')), isHills), headers.plantsPerHill.header],
  [isBlank(cell('germination')), headers.germination.header],
  [isBlank(cell('flowerType')), headers.flowerType.header],
  [isBlank(cell('daysToMaturity')), headers.daysToMaturity.header],
  [isBlank(cell('harvestDays')), headers.harvestDays.header],
  [isBlank(cell('yieldPer100')), headers.yieldPer100.header],
];

/** A column of its own: it reads every plot, and a new frost date need not ask it again. */
const keepApart = call(
  'FLOWER.ISOLATE',
  cell('crop'),
  given(cell('flowerType')),
  allOf('Plots', headers.crop.header),
  allOf('Plots', headers.flowerType.header),
);

const join = (parts: readonly Expression[]): Expression =>
  parts.reduce((left, right) => operate(left, '&', right));

const assumed = join([
  ...assumable.map(([blank, header]) => when(blank, `${header}. `, '')),
  when(native('AND', isBlank(cell('fieldEmergence')), isSeed), `${words.noFieldLoss}. `, ''),
]);

/** Left blank, and the crop has no figure to stand in. */
const isWanting = (key: ColumnKey, trait: string): Expression =>
  native(
    'AND',
    isBlank(cell(key)),
    isNot(native('ISNUMBER', cropFigure(trait))),
    isNot(native('ISERROR', cell('takenAs'))),
  );

const notes = join([
  remark(native('ISERROR', cell('takenAs')), remarks.cropUnknown),
  remark(
    operate(native('COUNTIF', allOf('Plots', headers.plot.header), operate('=', '&', cell('plot'))), '>', 1),
    remarks.sameName,
  ),
  remark(isNot(native('OR', isHills, isBeds, isRows)), remarks.layoutUnknown),
  remark(isNot(native('OR', isTransplant, isSeed)), remarks.startUnknown),
  remark(
    native('AND', isNot(isBlank(cell('startsOn'))), operate(cell('startsOn'), '<', earliestStart)),
    remarks.startsEarly,
  ),
  remark(operate(cell('daysToSpare'), '<', 0), remarks.shortSeason),
  remark(native('AND', isSeed, operate(cell('setOutOrSow'), '>', cell('lastSowing'))), remarks.sowsTooLate),
  native(
    'IFERROR',
    when(operate(cell('keepApart'), '=', 'clear'), '', operate(cell('keepApart'), '&', ' ')),
    '',
  ),
  remark(
    native(
      'AND',
      native('ISNUMBER', cropFigure('germination standard')),
      // Under 0 it is a slip, and Seed to sow says so.
      operate(germination, '>=', 0),
      operate(germination, '<', cropFigure('germination standard')),
    ),
    remarks.belowStandard,
  ),
  remark(isFlowerType('triploid'), remarks.pollenizerSeed),
  remark(isWanting('germination', 'germination standard'), remarks.noStandard),
  remark(
    native(
      'AND',
      isBlank(cell('yieldPer100')),
      operate(
        cropFigure(english.sheets.crops.columns.yieldHigh),
        '>',
        operate(3, '*', cropFigure('yield per 100')),
      ),
    ),
    remarks.wideYield,
  ),
  remark(isWanting('yieldPer100', 'yield per 100'), remarks.noYield),
]);

const asked = (
  key: ColumnKey,
  format: Format,
  width: number,
  choices: readonly string[] = [],
  measured: Measured = unmeasured,
): TableColumn => ({
  ...headers[key],
  kind: 'input',
  compute: null,
  format,
  width,
  choices,
  ...measured,
});

/** A row without a crop stays empty. */
const computed = (
  key: ColumnKey,
  compute: Expression,
  format: Format,
  width: number,
  measured: Measured = unmeasured,
): TableColumn => ({
  ...headers[key],
  kind: 'computed',
  compute: when(isBlank(cell('crop')), '', compute),
  format,
  width,
  choices: [],
  ...measured,
});

/** Beyond it the grid's engine is slow: an edit among 3,000 rows took it seconds. */
export const manyPlots = 1500;

export const plotsTemplate: SheetTemplate = {
  id: 'plots',
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
        asked('crop', 'text', 20, understoodNames),
        asked('layout', 'text', 9, words.layouts),
        asked('length', 'general', 9, [], feet),
        asked('width', 'general', 9, [], feet),
        asked('start', 'text', 11, words.starts),
        asked('germination', 'percent', 12),
        computed('plants', plants, 'whole', 9),
        computed('seedToSow', seedToSow, 'whole', 10, { unit: 'seeds' }),
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
          12,
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
        computed(
          'lastPick',
          call('DATE.LASTPICK', cell('firstPick'), harvestDays, input('FIRST_FROST')),
          'date',
          12,
        ),
        computed(
          'lastSowing',
          call(
            'DATE.LASTSOWING',
            input('FIRST_FROST'),
            daysToMaturity,
            harvestDays,
            cropFigure('fall days'),
            frostMargin,
          ),
          'date',
          12,
        ),
        computed(
          'daysToSpare',
          call(
            'SEASON.SPARE',
            input('LAST_FROST'),
            input('FIRST_FROST'),
            operate(operate(cell('firstPick'), '-', input('LAST_FROST')), '+', harvestDays),
          ),
          'whole',
          9,
          days,
        ),
        computed(
          'yield',
          when(
            native(
              'AND',
              isBlank(cell('yieldPer100')),
              isNot(native('ISNUMBER', cropFigure('yield per 100'))),
            ),
            '',
            call('HARVEST.YIELD', rowLength, yieldPer100),
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
            operate(cell('yield'), '*', cell('price')),
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
          { unit: 'plants' },
        ),
        // Figures of the grower's own, each in place of the crop's.
        asked('rowSpacing', 'general', 9, [], feet),
        asked('plantSpacing', 'general', 9, [], inches),
        asked('hillSpacing', 'general', 9, [], feet),
        asked('plantsPerHill', 'general', 9),
        asked('bedWidth', 'general', 9, [], feet),
        asked('pathWidth', 'general', 9, [], feet),
        asked('rowsPerBed', 'general', 9),
        asked('fieldEmergence', 'percent', 11),
        asked('flowerType', 'text', 15, flowerTypes),
        asked('pollenizerShare', 'percent', 11),
        asked('daysToMaturity', 'general', 10, [], days),
        asked('harvestDays', 'general', 9, [], days),
        asked('yieldPer100', 'general', 10, [], measure('lbPer100Ft', 'lb/100 ft', 'kg/100 m')),
        asked('price', 'money', 9, [], measure('perLb', 'per lb', 'per kg')),
        asked('startsOn', 'date', 12),
        // Sentences come last: the grid loses sight of what stands beyond a wide column.
        computed('takenAs', takenAs, 'general', 20),
        computed('keepApart', keepApart, 'general', 30),
        computed('assumed', assumed, 'general', 44),
        {
          ...computed('notes', notes, 'general', 80),
          compute: when(isBlank(cell('crop')), when(isBlank(cell('plot')), '', remarks.noCrop), notes),
        },
      ],
    },
  ],
  page: { landscape: true, pagesWide: 3, repeatFirstColumn: true },
};
