/** The working of a cell on the page. */
import { addressOf, type NamedCells } from '../workbook/formulaCells';
import { dayOfIso, dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { isCellError, type Area, type ReadValue } from '../workbook/port';
import type { CallWorking, WorkingLine } from '../functions/explain';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element } from './elements';
import type { UnfoldedArgument } from '../workbook/unfoldFormula';
import type { ExplainedCall, InputWorking, Working } from './readWorking';

const words = catalogue.pane.working;

type Reveal = (area: Area) => void;

/** One result, then each call; the innermost first, as they are worked out. */
export function workingView(working: Working, reveal: Reveal): HTMLElement[] {
  const { at, problem, shown, another, calls, around, notFollowed } = working;
  const isDate = calls.some((call) => call.isAsked !== false && call.working?.isDate === true);
  const heading =
    problem === null
      ? pair(linkTo(at, fill(words.shown, { cell: sayCell(at) }), reveal), sayValue(shown, isDate))
      : element('p', { class: 'origin' }, linkTo(at, fill(words.asks, problem), reveal), ' ', problem.text);
  return [
    heading,
    ...(another === undefined
      ? []
      : [element('p', { class: 'wrong' }, fill(words.another, { result: sayValue(another, isDate) }))]),
    ...calls.map((call) => callView(call, isDate, reveal)),
    ...(around.length === 0
      ? []
      : [
          element('h3', {}, words.around.heading),
          list(
            around.map(({ text, value }) =>
              fill(words.around.line, { text, value: sayValue(value, isDate) }),
            ),
          ),
        ]),
    ...(notFollowed.length === 0
      ? []
      : [
          element('h3', {}, words.notFollowed.heading),
          list(notFollowed.map(({ text, why }) => fill(words.notFollowed[why], { text }))),
          element('p', { class: 'help' }, words.notFollowed.advice),
        ]),
  ];
}

/** "Plots E9" */
export function sayCell(area: Area): string {
  return fill(words.inputs.ofCells, { sheet: area.sheet, cell: addressOf(area) });
}

/** Days between dates, which a formula with dates may give as well, are no day of this century. */
const firstDate = dayOfIso('2000-01-01') ?? 0;

function sayValue(value: ReadValue, isDate: boolean, digits = 12): string {
  if (isCellError(value)) return value.error;
  if (value === null || value === '') return words.blank;
  const day = isDate && typeof value === 'number' ? dayOfSerial(value) : null;
  if (day !== null && day >= firstDate) return isoOfDay(Math.floor(day));
  return String(typeof value === 'number' ? Number(value.toPrecision(digits)) : value);
}

/** Folded in where the formula does not come to it. */
function callView(call: ExplainedCall, isDate: boolean, reveal: Reveal): HTMLElement {
  const { id, isAsked } = call;
  if (isAsked === false) {
    const summary = element('summary', {}, element('h3', {}, fill(words.call.notAsked, { id })));
    return element('details', {}, summary, element('article', {}, ...callParts(call, isDate, reveal)));
  }
  const unsure = isAsked === null ? [element('p', { class: 'note' }, words.call.askedUnknown)] : [];
  return element('article', {}, element('h3', {}, id), ...unsure, ...callParts(call, isDate, reveal));
}

function callParts(
  { sentence, inputs, working }: ExplainedCall,
  isDate: boolean,
  reveal: Reveal,
): HTMLElement[] {
  const parts: HTMLElement[] = [element('p', { class: 'lead' }, sentence ?? words.call.unknown)];
  if (inputs.length > 0) {
    const rows = inputs.map((input) => inputView(input, reveal));
    parts.push(element('h4', {}, words.inputs.heading), element('ul', { class: 'inputs' }, ...rows));
  }
  if (working !== null) parts.push(...stepsView(working), ...effectsView(working, isDate));
  return parts;
}

function inputView({ description, value, argument }: InputWorking, reveal: Reveal): HTMLElement {
  const blank = argument === null ? words.inputs.leftOut : words.inputs.blank;
  const said = value === null ? words.inputs.notKnown : value === '' ? blank : value;
  const origin = argument === null ? [] : originView(argument, reveal);
  return element(
    'li',
    {},
    description,
    element('span', { class: 'origin' }, element('strong', {}, said), ...origin),
  );
}

function originView({ from, calls, isSum, text }: UnfoldedArgument, reveal: Reveal): (Node | string)[] {
  const links = from.map((cells) => linkTo(cells.area, sayOrigin(cells), reveal));
  if (calls.length > 0) return [fill(words.inputs.given, { functions: calls.join(', ') }), ...links];
  if (isSum) return [fill(words.inputs.sum, { text })];
  return links.length > 0 ? links : [words.inputs.written];
}

function linkTo(area: Area, text: string, reveal: Reveal): HTMLElement {
  const button = element('button', { type: 'button' }, text);
  button.addEventListener('click', () => reveal(area));
  return button;
}

function sayOrigin({ area, label }: NamedCells): string {
  if (label === '') return sayCell(area);
  return fill(words.inputs.ofColumn, { sheet: area.sheet, cell: addressOf(area), label });
}

function stepsView({ lines, result, unit, isRefused }: Omit<CallWorking, 'effects'>): HTMLElement[] {
  const of = (kind: WorkingLine['kind']): WorkingLine[] => lines.filter((line) => line.kind === kind);
  const steps = of('step');
  const told = isRefused ? words.steps.stopped : words.steps.heading;
  const parts: HTMLElement[] = [];
  if (steps.length > 0) {
    parts.push(element('h4', {}, told), element('ol', { class: 'steps' }, ...steps.map(stepView)));
  } else if (!isRefused) parts.push(element('p', { class: 'hint' }, words.steps.none));
  const answer = element('strong', isRefused ? { class: 'wrong' } : {}, sayWithUnit(result, unit));
  parts.push(pair(isRefused ? words.call.refuses : words.call.gives, answer));
  const assumed = of('assumption').map(({ title, result: value, unit: itsUnit, formula: ground }) =>
    fill(words.assumed.line, { title, value: sayWithUnit(value, itsUnit), ground }),
  );
  for (const [heading, said] of [
    [words.assumed.heading, assumed],
    [words.remarks.heading, of('remark').map(({ title }) => title)],
    [words.sources.heading, of('source').map(({ title }) => title)],
  ] as const) {
    if (said.length > 0) parts.push(element('h4', {}, heading), list(said));
  }
  return parts;
}

function stepView({ title, formula, numbersPutIn, result, unit, rounding }: WorkingLine): HTMLElement {
  const answer = sayWithUnit(result, unit);
  const said = rounding === '' ? answer : fill(words.steps.rounded, { answer, rounding });
  return element(
    'li',
    {},
    element('span', {}, title),
    ' ',
    element('strong', {}, said),
    ...(formula === '' ? [] : [element('span', { class: 'formula' }, formula)]),
    ...(numbersPutIn === ''
      ? []
      : [element('span', { class: 'formula' }, fill(words.steps.putIn, { numbers: numbersPutIn }))]),
  );
}

/** @param isDate what the whole formula gives is a date */
function effectsView(
  { effects, notVaried, isList, isRefused }: NonNullable<ExplainedCall['working']>,
  isDate: boolean,
): HTMLElement[] {
  if (isRefused) return [];
  const told = words.effects;
  const heading = element('h4', {}, told.heading);
  if (effects.length === 0) return [heading, help(told.unvaried)];
  const rows = effects
    .filter(({ matters }) => matters)
    .map(({ name, changes, wholes }) => {
      const said = changes.map(({ given, step, answer }, i) => {
        const change = fill(given === '' ? told.changeOfRange : told.change, { given, step, answer });
        const whole = wholes?.[i];
        return whole === undefined ? change : fill(told.whole, { change, whole: sayWhole(whole, isDate) });
      });
      return element('li', {}, name, ...said.map((each) => element('span', { class: 'change' }, each)));
    });
  const parts: HTMLElement[] = [heading, help(told.lead)];
  if (isList) parts.push(help(told.ofList));
  if (effects.some(({ wholes }) => wholes !== undefined)) parts.push(help(told.ofWhole));
  if (rows.length > 0) parts.push(element('ol', { class: 'steps' }, ...rows));
  for (const [sentence, names] of [
    [told.nothing, effects.filter(({ matters }) => !matters)],
    [told.notVaried.word, notVaried.filter(({ why }) => why === 'word')],
    [told.notVaried.dayOfRecord, notVaried.filter(({ why }) => why === 'dayOfRecord')],
  ] as const) {
    if (names.length > 0) parts.push(help(sentence), list(names.map(({ name }) => name)));
  }
  return parts;
}

/** In as many digits as what the function gives then. */
function sayWhole(whole: ReadValue, isDate: boolean): string {
  return sayValue(whole, isDate, typeof whole === 'number' && Math.abs(whole) >= 1e6 ? 12 : 6);
}

function help(sentence: string): HTMLElement {
  return element('p', { class: 'help' }, sentence);
}

function pair(term: Node | string, value: Node | string): HTMLElement {
  return element('dl', {}, element('div', {}, element('dt', {}, term), element('dd', {}, value)));
}

function sayWithUnit(answer: string, unit: string): string {
  return fill(words.call.answer, { answer, unit }).trim();
}

function list(sentences: readonly string[]): HTMLElement {
  return element('ul', {}, ...sentences.map((sentence) => element('li', {}, sentence)));
}
