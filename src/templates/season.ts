import type { Limits } from '../workbook/limits';
import type { CellContent, FormLine, Format, SheetTemplate } from '../workbook/template';
import { call, input, isBlank, native, operate, when } from '../workbook/expressions';
import { practice } from '../reference/practice';
import { unitFactors } from '../reference/unitFactors';
import { catalogue } from '../texts/catalogue';
import { idInLanguage } from '../texts/language';
import { inWords } from './inWords';
import { datesInWords } from '../texts/datesInWords';

const words = catalogue.sheets.season;

type LineKey = keyof typeof words.lines;

const typed = (
  key: LineKey,
  name: string,
  content: CellContent,
  format: Format,
  more: Partial<FormLine> = {},
): FormLine => ({
  ...words.lines[key],
  name,
  kind: 'input',
  content,
  format,
  choices: [],
  ...more,
});

const computed = (key: LineKey, name: string, compute: FormLine['content'], format: Format): FormLine => ({
  ...words.lines[key],
  name,
  kind: 'computed',
  content: compute,
  format,
  choices: [],
});

/** The same in every language; a blank is the first. */
export const unitSystems = ['us', 'metric'] as const;

/** Half a per cent of losses can be meant. */
const losses: Limits = { atLeast: 0, atMost: 1, mayBeTiny: true };

const meanRisk = 0.5;
const noWaitRisk = practice.noWaitRisk.value;

/** The wait belongs to a mean date and falls in a line to none at a low risk. */
const scaledWait = (daysAtMean: number): CellContent => ({
  compute: native(
    'ROUNDUP',
    operate(
      daysAtMean,
      '*',
      native('MAX', 0, operate(operate(input('FROST_RISK'), '-', noWaitRisk), '/', meanRisk - noWaitRisk)),
    ),
    0,
  ),
});

const lastFrostMonth = native('MONTH', input('LAST_FROST'));
const lastFrostYear = native('YEAR', input('LAST_FROST'));

/** A leap year. Two frosts of one season cannot be further apart. */
export const mostSeasonDays = practice.mostSeasonDays.value;

export const seasonTemplate: SheetTemplate = {
  id: idInLanguage('season'),
  version: 1,
  sheet: words.sheet,
  title: words.title,
  lead: words.lead,
  cautions: [],
  form: [
    typed('place', 'PLACE', null, 'text'),
    typed('year', 'SEASON_YEAR', null, 'general', { limits: { atLeast: 1901, atMost: 9998, isWhole: true } }),
    typed('lastFrost', 'LAST_FROST', null, 'date', { follows: 'WEATHER_LAST_FROST', dates: datesInWords }),
    typed('firstFrost', 'FIRST_FROST', null, 'date', { follows: 'WEATHER_FIRST_FROST', dates: datesInWords }),
    typed('frostRisk', 'FROST_RISK', 0.5, 'percent'),
    typed('units', 'UNITS', 'us', 'text', inWords(unitSystems)),
    // No amount of seed is enough for certain.
    typed('assurance', 'ASSURANCE', 0.9, 'percent', { limits: { above: 0, below: 1 } }),
    typed('trayCulls', 'TRAY_CULLS', 0.05, 'percent', { limits: losses }),
    typed('seedsPerCell', 'SEEDS_PER_CELL', 1, 'whole', { limits: { atLeast: 1, isWhole: true } }),
    typed('monoeciousFemale', 'MONOECIOUS_FEMALE', 0.5, 'percent'),
    typed('pollenizerLosses', 'POLLENIZER_LOSSES', 0, 'percent', { limits: losses }),
    typed('frostMargin', 'FROST_MARGIN', null, 'whole', { limits: { atLeast: 0, isWhole: true } }),
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
      {
        compute: when(
          operate(input('UNITS'), '=', 'metric'),
          unitFactors.cmPerMetre,
          unitFactors.inchesPerFoot,
        ),
      },
      'whole',
    ),
  ],
  tables: [],
  page: { landscape: true, pagesWide: 1, repeatFirstColumn: false },
};
