/** One function: what it asks, field by field, and its formula put into the selected cell. */
import { quoteSheet } from '../workbook/cellAddress';
import { call } from '../workbook/expressions';
import { addressOf } from '../workbook/formulaCells';
import type { ListedFunction } from '../workbook/functionHelp';
import type { Expression, LiveWorkbook } from '../workbook/port';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';
import { exampleArguments } from './exampleArguments';
import type { Notice } from './notice';
import type { RefusalOf } from './paneTools';
import { failureSentence } from './problemSentence';
import { formulaOf, putFormula } from './putFormula';
import { mayBeName, typedArgument, typedValue } from './typedArgument';

const words = catalogue.pane.functionList;

export interface FunctionFormParts {
  readonly workbook: LiveWorkbook;
  readonly nearestNames: NearestNames;
  readonly refusalOf: RefusalOf;
  /** Where the pages of the functions are; with its slash. */
  readonly pages: string;
  readonly notice: Notice;
}

export interface FunctionForm {
  readonly element: HTMLElement;
  readonly heading: HTMLElement;
  /** Puts the formula into the selected cell, and says what came of it. */
  put(): Promise<void>;
}

export function createFunctionForm(listed: ListedFunction, parts: FunctionFormParts): FunctionForm {
  const { id, description, parameters, example } = listed;
  const { workbook, notice } = parts;
  const given = exampleArguments(example, id);
  const preview = element('code');
  const fields = parameters.map(({ name, description: help, optional = false }, place) => {
    const fieldId = paneId(`argument-${name}`);
    const input = element('input', {
      id: fieldId,
      type: 'text',
      autocomplete: 'off',
      spellcheck: 'false',
      'aria-describedby': `${fieldId}-wrong ${fieldId}-help`,
    });
    input.value = given[place] ?? '';
    const wrong = element('p', { id: `${fieldId}-wrong`, class: 'wrong', hidden: true });
    /** What was typed that the workbook has no such name for. */
    let noName = '';
    const isName = (): boolean => input.value !== noName;
    /** What the function cannot take of what is typed, said beside the field; cells and formulas it has to be tried with. */
    const check = async (): Promise<string | null> => {
      const typed = input.value;
      if (mayBeName(typed) && isName() && !(await isNameIn(workbook, typed.trim()))) noName = typed;
      show();
      const value = typed.trim() === '' ? undefined : typedValue(typed, typed !== noName);
      const problem = value === undefined ? null : await parts.refusalOf(id, place, value);
      // Typed on meanwhile: the next answer is on its way.
      if (input.value === typed) markWrong(input, wrong, problem);
      return problem;
    };
    input.addEventListener('input', () => {
      show();
      if (!wrong.hidden) void check();
    });
    input.addEventListener('change', () => {
      // A line that comes while a button is pressed would move it from under the pointer.
      if (document.querySelector('button:active') === null) void check();
      else document.addEventListener('click', () => void check(), { once: true });
    });
    const take = element('button', { type: 'button', 'aria-describedby': `${fieldId}-label` }, words.take);
    take.addEventListener('click', () => void takeSelection(input));
    return {
      name,
      optional,
      input,
      argument: (): string => typedArgument(input.value, isName()),
      check,
      element: element(
        'div',
        { class: 'field' },
        element(
          'label',
          { for: fieldId, id: `${fieldId}-label` },
          optional ? fill(words.optional, { name }) : name,
        ),
        element('div', { class: 'control' }, input, take),
        wrong,
        element('p', { id: `${fieldId}-help`, class: 'help' }, help),
      ),
    };
  });
  const compute = (): Expression =>
    call(
      id,
      ...fields.map(({ input, argument }) => (input.value.trim() === '' ? null : { typed: argument() })),
    );
  const show = (): void => setText(preview, formulaOf(compute()));
  const takeSelection = async (input: HTMLInputElement): Promise<void> => {
    try {
      const area = await workbook.selection();
      if (area === null) return notice.warn(words.noCell);
      input.value = `${quoteSheet(area.sheet)}!${addressOf(area)}`;
      input.dispatchEvent(new Event('input'));
    } catch (cause) {
      notice.warn(failureSentence(cause));
    }
  };
  show();
  const heading = element('h3', { tabindex: -1 }, id);
  return {
    heading,
    element: element(
      'div',
      {},
      heading,
      element('p', {}, description),
      element(
        'p',
        {},
        element(
          'a',
          { href: `${parts.pages}${id}.html`, target: '_blank', rel: 'noopener' },
          fill(words.page, { id }),
        ),
      ),
      ...(fields.length === 0 ? [] : [element('p', { class: 'help' }, words.fields)]),
      element('div', { class: 'fields' }, ...fields.map((field) => field.element)),
      element('p', {}, preview),
    ),
    async put() {
      const wanted = fields.find(({ optional, input }) => !optional && input.value.trim() === '');
      if (wanted !== undefined) {
        notice.warn(fill(words.wanted, { name: wanted.name }));
        return wanted.input.focus();
      }
      for (const { input, check } of fields) {
        const problem = await check();
        if (problem === null) continue;
        notice.warn(fill(words.refused, { problem }));
        return input.focus();
      }
      const said = await putFormula(workbook, compute(), parts.nearestNames).catch((cause: unknown) => ({
        wrong: failureSentence(cause),
      }));
      if ('wrong' in said) notice.warn(said.wrong);
      else notice.say(said.written);
    },
  };
}

/** A table goes by its name too. What a workbook that cannot be read has to say, it says when the formula is put. */
async function isNameIn(workbook: LiveWorkbook, name: string): Promise<boolean> {
  const found = Promise.all([workbook.locate(name), workbook.readTable(name)]);
  return found.then(
    (all) => all.some((one) => one !== null),
    () => true,
  );
}

function markWrong(input: HTMLInputElement, wrong: HTMLElement, problem: string | null): void {
  setText(wrong, problem ?? '');
  wrong.hidden = problem === null;
  if (problem === null) input.removeAttribute('aria-invalid');
  else input.setAttribute('aria-invalid', 'true');
}
