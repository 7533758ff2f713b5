/** Questions of the season, answered by the calculations of the worksheet functions from what the sheets say. */
import type { CellValue, ReadValue } from '../workbook/port';
import type { FormRead } from '../workbook/readForm';
import type { FormLine, TableTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, section } from './elements';
import type { Answer, PaneTools } from './paneTools';
import type { PlotsState } from './readPlots';
import type { QuestionField, Values } from './question';
import { createSheetQuestion, type Said, type SheetQuestion } from './sheetQuestion';
import { sayDay } from './sayDay';
import { cropsOf, figureOf } from './standIns';
import { todaySerial } from '../workbook/today';

const words = catalogue.pane.questions;
const columns = catalogue.sheets.plots.columns;
const { traits } = catalogue.sheets.crops;
const daysPerWeek = 7;

export interface QuestionsSection {
  readonly element: HTMLElement;
  show(plots: PlotsState, season: FormRead | null): void;
}

export function createQuestionsSection(table: TableTemplate, tools: PaneTools): QuestionsSection {
  const { element: all } = section('questions', words.heading);
  let plots: PlotsState = 'absent';
  let season: FormRead | null = null;
  const asked: SheetQuestion[] = [];

  const figure = (crop: CellValue | undefined, trait: keyof typeof traits): number | null => {
    const value =
      typeof plots === 'object' ? figureOf(plots.figures, String(crop ?? ''), traits[trait])?.value : null;
    return typeof value === 'number' ? value : null;
  };
  const given = (value: CellValue | undefined, otherwise: number | null): number | null =>
    typeof value === 'number' ? value : otherwise;
  const inSeason = (name: string): ReadValue => season?.values[name] ?? null;
  const unitOf = (header: string): string =>
    typeof plots === 'object' ? (plots.lines.units[header] ?? '') : '';

  const answerRow = (values: Values): Said => {
    const crop = values['row crop'];
    const harvestDays = figure(crop, 'harvest days');
    const perHundred = given(values['row yield'], figure(crop, 'yield per 100'));
    const weeks = given(values['row weeks'], harvestDays === null ? null : harvestDays / daysPerWeek);
    if (perHundred === null) return [words.row.noYield];
    const isGiven = typeof values['row weeks'] === 'number';
    // A crop picked once has 0 harvest days; a typed 0 the function itself refuses.
    if (weeks === null || (weeks === 0 && !isGiven)) return [words.row.noWeeks];
    return sayAnswer(tools.rowForDemand(Number(values['row wanted']), perHundred, weeks), (length) => [
      fill(words.row.answer, {
        length: sayTenth(length),
        unit: unitOf(columns.length.header),
        perHundred: sayTenth(perHundred),
        perUnit: unitOf(columns.yieldPer100.header),
        weeks: sayTenth(weeks),
      }),
    ]);
  };
  const answerSeed = (values: Values): Said => {
    const crop = values['seed crop'];
    const germination = given(values['seed germination'], figure(crop, 'germination standard'));
    const assurance = given(values['seed assurance'], asNumber(inSeason('ASSURANCE')));
    if (germination === null) return [words.seed.noGermination];
    if (assurance === null) return [words.noSeason];
    const emergence = typeof values['seed emergence'] === 'number' ? values['seed emergence'] : undefined;
    return sayAnswer(
      tools.seedsNeeded(Number(values['seed plants']), germination, emergence, assurance),
      (seeds) => {
        const perWeight = figure(crop, 'seeds per weight');
        const weight = perWeight === null ? null : tools.seedWeight(seeds, perWeight);
        return [
          fill(words.seed.answer, {
            seeds,
            germination: sayPercent(germination),
            emergence: sayPercent(emergence ?? 1),
            assurance: sayPercent(assurance),
          }),
          ...(weight !== null && 'value' in weight
            ? [
                ' ',
                fill(words.seed.weight, {
                  weight: Number(weight.value.toPrecision(3)),
                  unit: unitOf(columns.seedWeight.header),
                }),
              ]
            : []),
        ];
      },
    );
  };
  const answerFits = (values: Values): Said => {
    const asked = Number(values['fits date']);
    const firstSowing = asNumber(inSeason('FIRST_SOWING_DATE'));
    // Nothing can be sown before: spare days count from then.
    const date = Math.max(asked, firstSowing ?? asked);
    const firstFrost = asNumber(inSeason('FIRST_FROST'));
    if (firstFrost === null || typeof plots !== 'object') return [words.noSeason];
    if (asked > firstFrost)
      return [fill(words.fits.afterFrost, { date: sayDay(asked), frost: sayDay(firstFrost) })];
    const margin = asNumber(inSeason('FROST_MARGIN'));
    const fits: { crop: string; last: number; days: number }[] = [];
    const late: string[] = [];
    const unknown: string[] = [];
    for (const crop of cropsOf(plots.figures)) {
      const [daysToMaturity, harvestDays, fallDays, frostMargin] = (
        ['days to maturity', 'harvest days', 'fall days', 'frost margin'] as const
      ).map((trait) => figure(crop, trait));
      const last =
        daysToMaturity == null || harvestDays == null || fallDays == null
          ? null
          : tools.lastSowing(firstFrost, daysToMaturity, harvestDays, fallDays, margin ?? frostMargin ?? 0);
      if (last === null || 'wrong' in last) unknown.push(crop);
      else if (last.value < date) late.push(crop);
      else fits.push({ crop, last: last.value, days: last.value - date });
    }
    fits.sort((a, b) => b.days - a.days);
    const list = element(
      'dl',
      { class: 'states' },
      ...fits.map(({ crop, last, days }) =>
        element(
          'div',
          {},
          element('dt', {}, crop),
          element('dd', {}, fill(words.fits.days, { days, last: sayDay(last) })),
        ),
      ),
    );
    const sentences = [
      ...(firstSowing !== null && asked < firstSowing
        ? [fill(words.fits.early, { date: sayDay(firstSowing) })]
        : []),
      fits.length === 0 ? words.fits.none : fill(words.fits.some, { count: fits.length, date: sayDay(date) }),
    ];
    const rest = [
      ...(late.length === 0 ? [] : [fill(words.fits.late, { crops: late.join(', ') })]),
      ...(unknown.length === 0 ? [] : [fill(words.fits.unknown, { crops: unknown.join(', ') })]),
    ];
    return [
      element('p', {}, sentences.join(' ')),
      ...(fits.length === 0 ? [] : [list]),
      ...(rest.length === 0 ? [] : [element('p', {}, rest.join(' '))]),
    ];
  };

  const cropColumn = table.columns.find(({ header }) => header === columns.crop.header);
  const cropField = (name: string): QuestionField => ({
    ...words.crop,
    name,
    format: 'text',
    choices: cropColumn?.choices ?? [],
    takenAs: cropColumn?.takenAs ?? {},
    words: cropColumn?.words ?? {},
    isWanted: false,
  });
  const wanted = (name: string, text: { label: string; help: string }): QuestionField => ({
    ...text,
    name,
    format: 'general',
    isWanted: true,
  });
  const own = (
    name: string,
    text: { label: string; help: string },
    format: FormLine['format'] = 'general',
  ): QuestionField => ({ ...text, name, format, isWanted: false });
  const ofPlots = (
    name: string,
    text: { label: string; help: string },
    { header }: { header: string },
  ): QuestionField => {
    const { limits } = table.columns.find((column) => column.header === header) ?? {};
    return { ...own(name, text, 'percent'), ...(limits && { limits }) };
  };
  const ask = (
    name: 'row' | 'seed' | 'fits',
    fields: readonly QuestionField[],
    answer: (values: Values) => Said,
  ): HTMLElement => {
    const { heading, button } = words[name];
    const question = createSheetQuestion(
      { name, heading, button, fields, wanted: words.wanted, nearestNames: tools.nearestNames },
      answer,
    );
    asked.push(question);
    return question.element;
  };
  const body = element(
    'div',
    {},
    ask(
      'row',
      [
        wanted('row wanted', words.row.wanted),
        cropField('row crop'),
        own('row yield', words.row.perHundred),
        own('row weeks', words.row.weeks),
      ],
      answerRow,
    ),
    ask(
      'seed',
      [
        wanted('seed plants', words.seed.plants),
        cropField('seed crop'),
        ofPlots('seed germination', words.seed.germination, columns.germination),
        ofPlots('seed emergence', words.seed.emergence, columns.fieldEmergence),
        own('seed assurance', words.seed.assurance, 'percent'),
      ],
      answerSeed,
    ),
    ask(
      'fits',
      [{ ...words.fits.date, name: 'fits date', format: 'date', start: todaySerial(), isWanted: true }],
      answerFits,
    ),
  );
  const hint = element('p', { class: 'hint' }, words.noSheets);
  all.append(element('p', { class: 'lead' }, words.lead), hint, body);

  return {
    element: all,
    show(nextPlots, nextSeason) {
      plots = nextPlots;
      season = nextSeason;
      body.hidden = typeof plots !== 'object' || season === null;
      hint.hidden = !body.hidden;
      if (!body.hidden) for (const each of asked) each.recheck();
    },
  };
}

function sayAnswer<Value>(answer: Answer<Value>, say: (value: Value) => Said): Said {
  return 'wrong' in answer ? [answer.wrong] : say(answer.value);
}

function asNumber(value: ReadValue): number | null {
  return typeof value === 'number' ? value : null;
}

function sayTenth(value: number): string {
  return String(Number(value.toFixed(1)));
}

function sayPercent(share: number): string {
  return `${Number((share * 100).toPrecision(4))} %`;
}
