/** The functions by task, searched by words; one of them opened, to put its formula into a cell. */
import type { ListedFunction } from '../workbook/functionHelp';
import type { LiveWorkbook } from '../workbook/port';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { language, pagesIn } from '../texts/language';
import type { Actions } from './actions';
import { element, paneId, setText } from './elements';
import { createFunctionForm, type FunctionForm } from './functionForm';
import { findFunctions, type FoundFunctions } from './findFunctions';
import { createNotice } from './notice';
import type { RefusalOf } from './paneTools';

const words = catalogue.pane.functionList;

/** The folder of the pages, beside the page of the pane. */
const pages = `functions/${pagesIn(language)}`;

export interface FunctionListParts {
  readonly workbook: LiveWorkbook;
  readonly actions: Actions;
  readonly nearestNames: NearestNames;
  readonly refusalOf: RefusalOf;
  readonly functions: readonly ListedFunction[];
}

export interface FunctionList {
  readonly element: HTMLElement;
  focus(): void;
}

export function createFunctionList(parts: FunctionListParts): FunctionList {
  const { actions, functions } = parts;
  const notice = createNotice(actions);
  const searchId = paneId('function-search');
  const search = element('input', {
    id: searchId,
    type: 'search',
    autocomplete: 'off',
    'aria-describedby': `${searchId}-help`,
  });
  const count = element('p', { role: 'status', class: 'hint' });
  const items = new Map(functions.map((listed) => [listed, createItem(listed, () => open(listed))]));
  const list = element('div', { class: 'lines tasks' });
  const chosen = element('div');
  const put = element('button', { type: 'button', class: 'main' }, words.put);
  const under = element(
    'div',
    { hidden: true },
    chosen,
    element('p', { class: 'help' }, words.putWhere),
    element('div', { class: 'buttons' }, put),
    notice.element,
  );
  actions.add(put);

  let form: FunctionForm | null = null;
  const open = (listed: ListedFunction): void => {
    form = createFunctionForm(listed, { ...parts, pages, notice });
    chosen.replaceChildren(form.element);
    notice.forgetGood();
    under.hidden = false;
    form.heading.focus();
  };
  const show = ({ heading, found }: FoundFunctions): HTMLElement =>
    element(
      'div',
      {},
      element('h3', {}, heading),
      element('ul', {}, ...found.flatMap((listed) => items.get(listed) ?? [])),
    );
  const filter = (): void => {
    const groups = findFunctions(functions, search.value);
    list.replaceChildren(...groups.map(show));
    list.hidden = groups.length === 0;
    const found = groups.flatMap((group) => group.found).length;
    setText(
      count,
      found === 0 ? fill(words.none, { searched: search.value }) : fill(words.count, { count: found }),
    );
  };
  /** Arrow keys lead from the search into the list and through it, so that nobody tabs past a hundred buttons. */
  const walk = (event: KeyboardEvent): void => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const stops = [search, ...list.querySelectorAll('button')];
    const at = stops.findIndex((stop) => stop === document.activeElement);
    if (event.key === 'Enter' && at === 0) stops[1]?.click();
    if (step === undefined || at === -1) return;
    event.preventDefault();
    stops[at + step]?.focus();
  };
  search.addEventListener('input', filter);
  put.addEventListener('click', () => void actions.run(async () => form?.put()));
  filter();

  const searched = element(
    'div',
    { class: 'field' },
    element('label', { for: searchId }, words.search),
    element('div', { class: 'control' }, search),
    element('p', { id: `${searchId}-help`, class: 'help' }, words.searchHelp),
    count,
    list,
  );
  searched.addEventListener('keydown', walk);
  return {
    element: element(
      'div',
      {},
      element(
        'p',
        {},
        element('a', { href: `${pages}index.html`, target: '_blank', rel: 'noopener' }, words.all),
      ),
      searched,
      under,
    ),
    focus: () => search.focus(),
  };
}

function createItem({ id, description }: ListedFunction, open: () => void): HTMLElement {
  const button = element(
    'button',
    { type: 'button' },
    element('span', { class: 'line-name' }, id),
    element('span', { class: 'line-details' }, description),
  );
  button.addEventListener('click', open);
  return element('li', {}, button);
}
