/**
 * The Weather sheets: what a daily record says of frost and heat, and the record itself. Formulas, so that a day mended
 * by hand counts; each reads the whole record once. Longer than most files because every cell is declared here.
 */
import type {
  CellContent,
  Expression,
  FormLine,
  Format,
  InputRow,
  ListColumn,
  SheetTemplate,
  SpillingList,
  TableColumn,
  TableTemplate,
} from '../workbook/template';
import { allOf, call, column, givenOr, input, lookUp, native, operate, when } from '../workbook/expressions';
import type { FillRequest } from '../workbook/fillSheets';
import { cropNames, type Trait } from '../reference/crops';
import { emergence } from '../reference/emergence';
import { heatBases, type InBothScales } from '../reference/heatBases';
import { seedKinds } from '../reference/seedStandards';
import { sources, type SourceId } from '../reference/sources';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { cropFigure } from './cropLookUps';
import { inWords } from './inWords';
import { datesInWords } from '../texts/datesInWords';
import { formerCropNames, otherNamesOfCrops, wordOfCrop } from './sayCrop';
import { seasonTemplate, unitSystems } from './season';
import { sayCitation } from '../texts/sayCitation';

const words = catalogue.weather;
const { lines: labels, record: recordWords } = words;

/** One day of a record as the Weather record sheet keeps it. */
export interface WeatherDay {
  readonly serial: number;
  /** null where it is missing. */
  readonly high: number | null;
  readonly low: number | null;
}

export interface WeatherRecord {
  readonly place: string;
  readonly units: 'us' | 'metric';
  /** Rising dates, each once. */
  readonly days: readonly WeatherDay[];
}

/** With fewer one more year can move a frost date by a week: judgement. */
export const enoughSeasons = 20;

type LineKey = keyof typeof labels;

const typed = (
  key: LineKey,
  name: string,
  content: CellContent,
  format: Format,
  more: Partial<FormLine> = {},
): FormLine => ({ ...labels[key], name, kind: 'input', content, format, choices: [], ...more });

const computed = (key: LineKey, name: string, compute: Expression, format: Format): FormLine => ({
  ...labels[key],
  name,
  kind: 'computed',
  content: { compute },
  format,
  choices: [],
});

const of = (header: string): Expression => allOf('Weather', header);
const dates = of(recordWords.date.header);
const highs = of(recordWords.high.header);
const lows = of(recordWords.low.header);

const units = input('RECORD_UNITS');
const isMetric = operate(units, '=', 'metric');
const degrees: CellContent = { compute: when(isMetric, '°C', '°F') };
const degreeDays: CellContent = { compute: when(isMetric, words.degreeDays.metric, words.degreeDays.us) };

const blankAsOmitted = (name: string): Expression => givenOr(input(name), '');
const isSouth = operate(input('HEMISPHERE'), '=', 'south');

/** The middle of the numbers in a list's second column; what is wrong with a record the lists say. */
const middleOf = (list: Expression): Expression =>
  native('IFERROR', native('MEDIAN', native('INDEX', list, 0, 2)), words.notTold);

/** Programs pass on the code of an error, not its sentence: a record too short for a line says so in words. */
const ifNumber = (cell: string, then: Expression, otherwise: string): Expression =>
  when(operate(native('COUNT', input(cell)), '=', 0), otherwise, then);

const seasons = input('SEASONS_COUNTED');
/** Springs, or falls, that count: with a frost, or none at all. */
const seasonsOf = (list: string): Expression =>
  operate(native('COUNT', input(list)), '+', native('COUNTIF', input(list), words.none));

const sowing = input('SOWING_COMPARED');
/** Days to maturity are meant for warm weather, so that their heat is that of a sowing in midsummer: judgement. */
const midsummer = input('LONGEST_DAY');
const orNoCeiling = (ceiling: Expression): Expression =>
  when(operate(operate(ceiling, '&', ''), '=', words.none), '', ceiling);
const howCounted = [input('BASE_USED'), orNoCeiling(input('CEILING_USED')), input('METHOD_USED')] as const;

/** The day of the first pick counts too, so that where the calendar is right heat gives the same day. */
const toThePick = (daysToMaturity: Expression): Expression => operate(daysToMaturity, '+', 1);

const ofCrop = (header: string): Expression =>
  lookUp(input('HEAT_CROP'), 'HeatByCrop', words.heatByCrop.crop.header, header);
const chosenCrop = (figure: Trait): Expression => cropFigure(input('HEAT_CROP'), figure);
const fallDays = when(operate(sowing, '>', input('LONGEST_DAY')), chosenCrop('fall days'), 0);

const sowingIn = (year: Expression): Expression =>
  native('DATE', year, native('MONTH', sowing), native('DAY', sowing));
const sowingInRecord = input('SOWING_IN_RECORD');
const sowingSpan = operate(input('LAST_SOWING_COMPARED'), '-', sowing);
/** From a later day on the record does not reach to the last sowing. */
const lastStart = operate(input('RECORD_LAST_DAY'), '-', sowingSpan);
const lastSowingIn = sowingIn(
  operate(
    native('YEAR', lastStart),
    '-',
    when(operate(sowingIn(native('YEAR', lastStart)), '>', lastStart), 1, 0),
  ),
);

/** Nothing to mend where nobody has measured it: such a crop has no table of emergence. */
const whereTable = (counted: Expression): Expression =>
  when(
    native(
      'OR',
      ...cropNames
        .filter((name) => emergence[seedKinds[name] ?? ''] === undefined)
        .map((name) => operate(input('HEAT_CROP'), '=', wordOfCrop(name))),
    ),
    words.noTable,
    counted,
  );

const cropsOfHeat = [...new Set(heatBases.map(({ crop }) => wordOfCrop(crop)))];

const form: readonly FormLine[] = [
  typed('place', 'RECORD_PLACE', null, 'text'),
  typed('units', 'RECORD_UNITS', 'us', 'text', inWords(unitSystems)),
  typed('frostAt', 'FROST_AT', null, 'general'),
  typed('rule', 'FROST_RULE', 'inc', 'text', inWords(['inc', 'exc'])),
  typed('hemisphere', 'HEMISPHERE', 'north', 'text', inWords(['north', 'south'])),
  typed('crop', 'HEAT_CROP', cropsOfHeat[0] ?? null, 'text', {
    choices: cropsOfHeat,
    words: Object.fromEntries(cropsOfHeat.map((name) => [name, [name, ...(otherNamesOfCrops[name] ?? [])]])),
  }),
  typed('sowing', 'HEAT_SOWING', null, 'date', { dates: datesInWords }),
  typed('base', 'HEAT_BASE', null, 'general'),
  typed('ceiling', 'HEAT_CEILING', null, 'general'),
  typed('method', 'HEAT_METHOD', null, 'text', inWords(['mean', 'modified', 'sine', 'reduced'])),
  typed('heatWanted', 'HEAT_WANTED', null, 'general'),
  typed('gap', 'SOWING_GAP', 14, 'whole'),
  typed('soil', 'SOIL_TEMPERATURE', null, 'general'),

  computed('firstDay', 'RECORD_FIRST_DAY', native('MIN', dates), 'date'),
  computed('lastDay', 'RECORD_LAST_DAY', native('MAX', dates), 'date'),
  computed(
    'missing',
    'DAYS_MISSING',
    operate(
      operate(operate(input('RECORD_LAST_DAY'), '-', input('RECORD_FIRST_DAY')), '+', 1),
      '-',
      native('MIN', native('COUNT', highs), native('COUNT', lows)),
    ),
    'whole',
  ),
  computed('seasons', 'YEARS_WITH_FROSTS', native('COUNT', input('FREE_DAYS_OF_YEARS')), 'whole'),
  computed(
    'counted',
    'SEASONS_COUNTED',
    native('MIN', seasonsOf('LAST_FROSTS'), seasonsOf('FIRST_FROSTS')),
    'whole',
  ),
  computed(
    'caution',
    'FROST_CAUTION',
    when(
      operate(seasons, '<', 2),
      when(operate(seasons, '=', 1), words.trust.one, words.trust.none),
      when(operate(seasons, '<', enoughSeasons), words.trust.few, words.trust.enough),
    ),
    'text',
  ),
  computed(
    'lastFrost',
    'WEATHER_LAST_FROST',
    call(
      'FROST.SPRINGDATE',
      input('LAST_FROSTS'),
      input('FROST_RISK'),
      input('SEASON_YEAR'),
      input('FROST_RULE'),
      input('HEMISPHERE'),
    ),
    'date',
  ),
  computed(
    'firstFrost',
    'WEATHER_FIRST_FROST',
    call(
      'FROST.FALLDATE',
      input('FIRST_FROSTS'),
      input('FROST_RISK'),
      when(isSouth, operate(input('SEASON_YEAR'), '+', 1), input('SEASON_YEAR')),
      input('FROST_RULE'),
      input('HEMISPHERE'),
    ),
    'date',
  ),
  computed(
    'freeDays',
    'WEATHER_FREE_DAYS',
    ifNumber(
      'WEATHER_LAST_FROST',
      ifNumber(
        'WEATHER_FIRST_FROST',
        call('SEASON.DAYS', input('WEATHER_LAST_FROST'), input('WEATHER_FIRST_FROST')),
        words.noFrostDate,
      ),
      words.noFrostDate,
    ),
    'whole',
  ),
  ...(
    [
      ['least', 'LEAST_FREE_DAYS', 'MIN'],
      ['middle', 'MIDDLE_FREE_DAYS', 'MEDIAN'],
      ['most', 'MOST_FREE_DAYS', 'MAX'],
    ] as const
  ).map(([key, name, figure]) =>
    computed(
      key,
      name,
      // Of no year at all the least would be 0.
      ifNumber('FREE_DAYS_OF_YEARS', native(figure, input('FREE_DAYS_OF_YEARS')), words.noYear),
      'whole',
    ),
  ),
  computed(
    'chanceAfter',
    'CHANCE_AFTER_LAST_FROST',
    ifNumber(
      'LAST_FROST',
      call('FROST.CHANCE', input('LAST_FROST'), input('LAST_FROSTS'), 'spring', input('HEMISPHERE')),
      words.noSeasonDate,
    ),
    'percent',
  ),
  computed(
    'chanceBefore',
    'CHANCE_BEFORE_FIRST_FROST',
    ifNumber(
      'FIRST_FROST',
      call('FROST.CHANCE', input('FIRST_FROST'), input('FIRST_FROSTS'), 'fall', input('HEMISPHERE')),
      words.noSeasonDate,
    ),
    'percent',
  ),
  computed(
    'soilUsed',
    'SOIL_USED',
    givenOr(input('SOIL_TEMPERATURE'), native('INDEX', call('SOIL.RANGE', input('HEAT_CROP'), units), 1, 5)),
    'tenth',
  ),
  computed(
    'emergence',
    'EMERGENCE_DAYS',
    whereTable(call('EMERGENCE.DAYS', input('HEAT_CROP'), input('SOIL_USED'), units)),
    'tenth',
  ),
  computed(
    'seedlings',
    'EMERGENCE_SHARE',
    whereTable(call('EMERGENCE.PERCENT', input('HEAT_CROP'), input('SOIL_USED'), units)),
    'percent',
  ),
  computed(
    'sowingUsed',
    'SOWING_COMPARED',
    givenOr(input('HEAT_SOWING'), input('FIRST_SOWING_DATE')),
    'date',
  ),
  computed('days', 'HEAT_DAYS', chosenCrop('days to maturity'), 'general'),
  computed(
    'baseUsed',
    'BASE_USED',
    givenOr(input('HEAT_BASE'), ofCrop(words.heatByCrop.base.header)),
    'tenth',
  ),
  computed(
    'ceilingUsed',
    'CEILING_USED',
    givenOr(input('HEAT_CEILING'), ofCrop(words.heatByCrop.ceiling.header)),
    'tenth',
  ),
  computed(
    'methodUsed',
    'METHOD_USED',
    givenOr(input('HEAT_METHOD'), ofCrop(words.heatByCrop.method.header)),
    'general',
  ),
  computed(
    'target',
    'HEAT_TARGET',
    givenOr(
      input('HEAT_WANTED'),
      ifNumber('HEATS_OF_YEARS', native('MEDIAN', input('HEATS_OF_YEARS')), words.noYear),
    ),
    'whole',
  ),
  computed(
    'calendarPick',
    'CALENDAR_PICK',
    call('DATE.FIRSTPICK', sowing, input('HEAT_DAYS'), 'seed', 'seed', null, fallDays),
    'date',
  ),
  ...(
    [
      ['heatPickEarly', 'EARLIEST_HEAT_PICK', 'MIN'],
      ['heatPick', 'MIDDLE_HEAT_PICK', 'MEDIAN'],
      ['heatPickLate', 'LATEST_HEAT_PICK', 'MAX'],
    ] as const
  ).map(([key, name, figure]) =>
    computed(
      key,
      name,
      ifNumber(
        'DAYS_TO_HEAT',
        native('ROUNDUP', operate(sowing, '+', native(figure, input('DAYS_TO_HEAT'))), 0),
        words.noYear,
      ),
      'date',
    ),
  ),
  computed(
    'lastSowing',
    'LAST_SOWING_COMPARED',
    call(
      'DATE.LASTSOWING',
      input('FIRST_FROST'),
      input('HEAT_DAYS'),
      chosenCrop('harvest days'),
      chosenCrop('fall days'),
      givenOr(input('FROST_MARGIN'), chosenCrop('frost margin')),
    ),
    'date',
  ),
  computed(
    'sowingInRecord',
    'SOWING_IN_RECORD',
    when(operate(lastSowingIn, '<', input('RECORD_FIRST_DAY')), words.notInRecord, lastSowingIn),
    'date',
  ),
  computed(
    'heatBetween',
    'HEAT_BETWEEN',
    middleOf(call('HEAT.YEARS', dates, highs, lows, midsummer, input('SOWING_GAP'), ...howCounted)),
    'whole',
  ),
];

const tableColumn = (
  { header, note }: { readonly header: string; readonly note: string },
  width: number,
  format: Format,
  unit: CellContent = null,
): TableColumn => ({ header, note, width, format, unit, kind: 'computed', compute: null, choices: [] });

const inRecordScale = (temperature: InBothScales | null): CellContent =>
  temperature === null ? words.none : { compute: when(isMetric, temperature.C, temperature.F) };

const { heatByCrop: byCrop } = words;

const heatByCrop: TableTemplate = {
  name: 'HeatByCrop',
  heading: byCrop.heading,
  grows: false,
  columns: [
    { ...tableColumn(byCrop.crop, 22, 'words'), formerly: formerCropNames },
    tableColumn(byCrop.publisher, 24, 'words'),
    tableColumn(byCrop.method, 14, 'words'),
    tableColumn(byCrop.base, 16, 'tenth', degrees),
    tableColumn(byCrop.ceiling, 10, 'tenth', degrees),
    tableColumn(byCrop.days, 10, 'general', catalogue.units.days),
    tableColumn(byCrop.heat, 12, 'whole', degreeDays),
    tableColumn(byCrop.source, 50, 'text'),
  ],
  rows: heatBases.map(({ crop, base, ceiling, method, ground }) => [
    wordOfCrop(crop),
    sources[ground as SourceId].publisher,
    method,
    inRecordScale(base),
    inRecordScale(ceiling),
    { compute: cropFigure(column(byCrop.crop.header), 'days to maturity') },
    {
      compute: middleOf(
        call(
          'HEAT.YEARS',
          dates,
          highs,
          lows,
          midsummer,
          toThePick(column(byCrop.days.header)),
          column(byCrop.base.header),
          orNoCeiling(column(byCrop.ceiling.header)),
          column(byCrop.method.header),
        ),
      ),
    },
    sayCitation(sources[ground as SourceId]),
  ]),
};

const listColumn = (
  { header, note }: { readonly header: string; readonly note: string },
  name: string,
  width: number,
  format: Format,
  unit: CellContent = null,
): ListColumn => ({ header, note, name, width, format, unit });

/** Dates of spreadsheet programs begin with 1900: no record has more years, nor a year more sowings. */
const mostListed = 200;

const lists: readonly SpillingList[] = [
  {
    heading: words.frostYears.heading,
    compute: call('FROST.YEARS', dates, lows, blankAsOmitted('FROST_AT'), units, input('HEMISPHERE')),
    rows: mostListed,
    columns: [
      listColumn(words.frostYears.year, 'FROST_YEARS', 10, 'general'),
      listColumn(words.frostYears.lastFrost, 'LAST_FROSTS', 14, 'date'),
      listColumn(words.frostYears.firstFrost, 'FIRST_FROSTS', 14, 'date'),
      listColumn(words.frostYears.freeDays, 'FREE_DAYS_OF_YEARS', 16, 'whole', catalogue.units.days),
    ],
  },
  {
    heading: words.heatYears.heading,
    compute: call('HEAT.YEARS', dates, highs, lows, midsummer, toThePick(input('HEAT_DAYS')), ...howCounted),
    rows: mostListed,
    columns: [
      listColumn(words.heatYears.year, 'HEAT_YEARS', 12, 'general'),
      listColumn(words.heatYears.heat, 'HEATS_OF_YEARS', 14, 'whole', degreeDays),
    ],
  },
  {
    heading: words.picks.heading,
    compute: ifNumber(
      'HEAT_TARGET',
      call('HEAT.DATES', dates, highs, lows, sowing, input('HEAT_TARGET'), ...howCounted),
      words.picks.noHeat,
    ),
    rows: mostListed,
    columns: [
      listColumn(words.picks.year, 'PICK_YEARS', 10, 'general'),
      listColumn(words.picks.date, '', 12, 'date'),
      listColumn(words.picks.days, 'DAYS_TO_HEAT', 8, 'whole', catalogue.units.days),
    ],
  },
  {
    heading: words.sowings.heading,
    compute: ifNumber(
      'SOWING_IN_RECORD',
      ifNumber(
        'HEAT_BETWEEN',
        // As many days after the first sowing as in the record.
        operate(
          call(
            'HEAT.SUCCESSION',
            dates,
            highs,
            lows,
            sowingInRecord,
            operate(sowingInRecord, '+', sowingSpan),
            input('HEAT_BETWEEN'),
            ...howCounted,
          ),
          '+',
          operate(sowing, '-', sowingInRecord),
        ),
        words.sowings.noHeat,
      ),
      words.sowings.notInRecord,
    ),
    rows: mostListed,
    columns: [listColumn(words.sowings.sown, 'HEAT_SOWINGS', 14, 'date')],
  },
];

export const weatherTemplate: SheetTemplate = {
  id: idInLanguage('weather'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form,
  tables: [heatByCrop],
  lists,
  optional: true,
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};

const recordColumn = (
  { header, note }: { readonly header: string; readonly note: string },
  format: Format,
  unit: CellContent,
): TableColumn => ({ header, note, format, unit, width: 14, kind: 'input', compute: null, choices: [] });

export const weatherRecordTemplate: SheetTemplate = {
  id: idInLanguage('weatherRecord'),
  version: 1,
  sheet: words.recordSheet,
  title: words.recordSheet,
  lead: words.recordLead,
  cautions: [],
  form: [],
  tables: [
    {
      name: 'Weather',
      heading: '',
      grows: true,
      columns: [
        recordColumn(recordWords.date, 'date', null),
        recordColumn(recordWords.high, 'general', degrees),
        recordColumn(recordWords.low, 'general', degrees),
      ],
      rows: null,
    },
  ],
  optional: true,
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
};

/** What makes the Weather sheets of a record, or renews those that are there; their record then stays as it is. */
export function requestWeather(
  { place, units: system, days }: WeatherRecord,
  form: FillRequest['form'] = {},
): readonly FillRequest[] {
  const inputs = days.map(({ serial, high, low }): InputRow => ({
    [recordWords.date.header]: serial,
    [recordWords.high.header]: high,
    [recordWords.low.header]: low,
  }));
  return [
    { template: weatherTemplate, inputs: [], form: { RECORD_PLACE: place, RECORD_UNITS: system, ...form } },
    { template: weatherRecordTemplate, inputs, form: {} },
  ];
}

/** Has the Season sheet's frost dates follow the record, at the risk that stands there. */
export const followWeather: FillRequest['form'] = Object.fromEntries(
  seasonTemplate.form.flatMap(({ name, follows }) =>
    follows === undefined ? [] : [[name, { compute: input(follows) }]],
  ),
);
