/** The working of a cell on the page. */
import { addressOf, type NamedCells } from '../workbook/formulaCells';
import { isCellError, type Area, type ReadValue } from '../workbook/port';
import type { CallWorking, Effect, WorkingLine } from '../functions/explain';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element } from './elements';
import type { ExplainedCall, InputWorking, Working } from './readWorking';

const words = catalogue.pane.working;

type Reveal = (area: Area) => void;

/** One result, then each call; the innermost first, as they are worked out. */
export function workingView(working: Working, reveal: Reveal): HTMLElement[] {
  const { at, shown, another, calls, notFollowed } = working;
  const there = element('button', { type: 'button' }, fill(words.shown, { cell: sayCell(at) }));
  there.addEventListener('click', () => reveal(at));
  const answer = element(
    'dl',
    {},
    element('div', {}, element('dt', {}, there), element('dd', {}, sayValue(shown))),
  );
  return [
    answer,
    ...(another === undefined
      ? []
      : [element('p', { class: 'wrong' }, fill(words.another, { result: sayValue(another) }))]),
    ...calls.map((call) => callView(call, reveal)),
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

function sayValue(value: ReadValue): string {
  if (isCellError(value)) return value.error;
  if (value === null || value === '') return words.blank;
  return String(typeof value === 'number' ? Number(value.toPrecision(12)) : value);
}

function callView({ id, isAsked, sentence, inputs, working }: ExplainedCall, reveal: Reveal): HTMLElement {
  const idle = isAsked === true ? '' : isAsked === null ? words.call.askedUnknown : words.call.notAsked;
  return element(
    'article',
    {},
    element('h3', {}, id),
    element('p', { class: 'lead' }, sentence ?? words.call.unknown),
    ...(idle === '' ? [] : [element('p', { class: 'note' }, idle)]),
    ...(inputs.length === 0
      ? []
      : [
          element('h4', {}, words.inputs.heading),
          element('ul', { class: 'inputs' }, ...inputs.map((input) => inputView(input, reveal))),
        ]),
    ...(working === null ? [] : stepsView(working)),
    ...(working === null ? [] : effectsView(working.effects, inputs)),
  );
}

function inputView({ description, value, argument }: InputWorking, reveal: Reveal): HTMLElement {
  const said =
    value === null
      ? words.inputs.notKnown
      : value !== ''
        ? value
        : argument === null
          ? words.inputs.leftOut
          : words.inputs.blank;
  const links = (argument?.from ?? []).map((cells) => {
    const button = element('button', { type: 'button' }, sayOrigin(cells));
    button.addEventListener('click', () => reveal(cells.area));
    return button;
  });
  const where: string[] = [];
  if (argument !== null && argument.calls.length > 0) {
    where.push(fill(words.inputs.given, { functions: argument.calls.join(', ') }));
  } else if (argument?.isSum === true) where.push(fill(words.inputs.sum, { text: argument.text }));
  else if (argument !== null && links.length === 0) where.push(words.inputs.written);
  return element(
    'li',
    {},
    element('span', { class: 'input-name' }, description),
    ' ',
    element('strong', {}, said),
    ...(where.length + links.length === 0 ? [] : [element('span', { class: 'origin' }, ...where, ...links)]),
  );
}

function sayOrigin({ area, label }: NamedCells): string {
  if (label === '') return sayCell(area);
  return fill(words.inputs.ofColumn, { sheet: area.sheet, cell: addressOf(area), label });
}

function stepsView({ lines, result, unit, isRefused }: CallWorking): HTMLElement[] {
  const of = (kind: WorkingLine['kind']): WorkingLine[] => lines.filter((line) => line.kind === kind);
  const steps = of('step');
  const told = isRefused ? words.steps.stopped : words.steps.heading;
  const parts: HTMLElement[] = [];
  if (steps.length > 0) {
    parts.push(element('h4', {}, told), element('ol', { class: 'steps' }, ...steps.map(stepView)));
  } else if (!isRefused) parts.push(element('p', { class: 'hint' }, words.steps.none));
  const answer = fill(words.call.answer, { answer: result, unit }).trim();
  parts.push(
    element(
      'dl',
      {},
      element(
        'div',
        {},
        element('dt', {}, isRefused ? words.call.refuses : words.call.gives),
        element('dd', isRefused ? { class: 'wrong' } : {}, element('strong', {}, answer)),
      ),
    ),
  );
  const assumed = of('assumption').map(({ title, result: value, unit: of_, formula }) =>
    fill(words.assumed.line, {
      title,
      value: fill(words.call.answer, { answer: value, unit: of_ }).trim(),
      ground: formula,
    }),
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
  const answer = fill(words.call.answer, { answer: result, unit }).trim();
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

function effectsView(effects: readonly Effect[], inputs: readonly InputWorking[]): HTMLElement[] {
  if (effects.length === 0) return [];
  const nameOf = ({ index }: Effect): string => inputs[index]?.description ?? '';
  const same = effects.filter(({ matters }) => !matters);
  const rows = effects
    .filter(({ matters }) => matters)
    .map((effect) =>
      element(
        'li',
        {},
        element('span', {}, nameOf(effect)),
        ...effect.changes.map((change) =>
          element('span', { class: 'change' }, fill(words.effects.change, change)),
        ),
      ),
    );
  return [
    element('h4', {}, words.effects.heading),
    element('p', { class: 'help' }, words.effects.lead),
    ...(rows.length === 0 ? [] : [element('ol', { class: 'steps' }, ...rows)]),
    ...(same.length === 0
      ? []
      : [element('p', { class: 'help' }, words.effects.nothing), list(same.map(nameOf))]),
  ];
}

function list(sentences: readonly string[]): HTMLElement {
  return element('ul', { class: 'told' }, ...sentences.map((sentence) => element('li', {}, sentence)));
}
