import type { CellContent, FormLine, Format, SheetTemplate } from '../workbook/template';
import { call, input, isBlank, native, operate, when } from '../workbook/expressions';
import { practice } from '../reference/practice';
import { english } from '../texts/english';

const words = english.sheets.season;

type LineKey = keyof typeof words.lines;

const typed = (
  key: LineKey,
  name: string,
  content: CellContent,
  format: Format,
  choices: string[] = [],
): FormLine => ({
  ...words.lines[key],
  name,
  kind: 'input',
  content,
  format,
  choices,
});

const computed = (key: LineKey, name: string, compute: FormLine['content'], format: Format): FormLine => ({
  ...words.lines[key],
  name,
  kind: 'computed',
  content: compute,
  format,
  choices: [],
});

/** The wait belongs to a mean date (50 % risk) and falls in a line to none at 10 %. */
const scaledWait = (daysAtMean: number): CellContent => ({
  compute: native(
    'ROUNDUP',
    operate(daysAtMean, '*', native('MAX', 0, operate(operate(input('FROST_RISK'), '-', 0.1), '/', 0.4))),
    0,
  ),
});

const lastFrostMonth = native('MONTH', input('LAST_FROST'));
const lastFrostYear = native('YEAR', input('LAST_FROST'));

/** A leap year. Two frosts of one season cannot be further apart. */
export const mostSeasonDays = 366;

export const seasonTemplate: SheetTemplate = {
  id: 'season',
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [
    typed('place', 'PLACE', null, 'text'),
    typed('year', 'SEASON_YEAR', null, 'general'),
    { ...typed('lastFrost', 'LAST_FROST', null, 'date'), follows: 'WEATHER_LAST_FROST' },
    { ...typed('firstFrost', 'FIRST_FROST', null, 'date'), follows: 'WEATHER_FIRST_FROST' },
    typed('frostRisk', 'FROST_RISK', 0.5, 'percent'),
    typed('units', 'UNITS', 'us', 'text', ['us', 'metric']),
    typed('assurance', 'ASSURANCE', 0.9, 'percent'),
    typed('trayCulls', 'TRAY_CULLS', 0.05, 'percent'),
    typed('seedsPerCell', 'SEEDS_PER_CELL', 1, 'whole'),
    typed('monoeciousFemale', 'MONOECIOUS_FEMALE', 0.5, 'percent'),
    typed('pollenizerLosses', 'POLLENIZER_LOSSES', 0, 'percent'),
    typed('frostMargin', 'FROST_MARGIN', null, 'whole'),
    computed(
      'yearCheck',
      'YEAR_CHECK',
      {
        compute: when(
          native('OR', isBlank(input('SEASON_YEAR')), operate(lastFrostYear, '=', input('SEASON_YEAR'))),
          words.yearFits,
          words.yearDiffers,
        ),
      },
      'general',
    ),
    computed(
      'frostFreeDays',
      'FROST_FREE_DAYS',
      { compute: call('SEASON.DAYS', input('LAST_FROST'), input('FIRST_FROST')) },
      'whole',
    ),
    computed('setOutWait', 'SET_OUT_WAIT', scaledWait(practice.setOutWait.value), 'whole'),
    computed('sowingWait', 'SOWING_WAIT', scaledWait(practice.sowingWait.value), 'whole'),
    computed(
      'setOut',
      'SET_OUT_DATE',
      { compute: call('DATE.SETOUT', input('LAST_FROST'), input('SET_OUT_WAIT')) },
      'date',
    ),
    computed(
      'hardenOff',
      'HARDEN_OFF_DATE',
      { compute: call('DATE.HARDENOFF', input('SET_OUT_DATE')) },
      'date',
    ),
    computed(
      'firstSowing',
      'FIRST_SOWING_DATE',
      { compute: call('DATE.FIRSTSOWING', input('LAST_FROST'), input('SOWING_WAIT')) },
      'date',
    ),
    computed(
      'longestDay',
      'LONGEST_DAY',
      {
        compute: when(
          operate(lastFrostMonth, '>=', 7),
          native('DATE', lastFrostYear, 12, 21),
          native('DATE', lastFrostYear, 6, 21),
        ),
      },
      'date',
    ),
    computed(
      'spacingPerLength',
      'SPACING_PER_LENGTH',
      { compute: when(operate(input('UNITS'), '=', 'metric'), 100, 12) },
      'whole',
    ),
  ],
  tables: [],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
