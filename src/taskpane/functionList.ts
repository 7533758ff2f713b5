/** The functions by task, searched by words; one of them opened, to put its formula into a cell. */
import type { ListedFunction } from '../workbook/functionHelp';
import type { LiveWorkbook } from '../workbook/port';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, paneId, setText } from './elements';
import { createFunctionForm, type FunctionForm } from './functionForm';
import { hasWords } from './hasWords';
import { createNotice } from './notice';

const words = catalogue.pane.functionList;

/** The folder of the pages, beside the page of the pane. */
const pages = 'functions/';

export interface FunctionListParts {
  readonly workbook: LiveWorkbook;
  readonly actions: Actions;
  readonly nearestNames: NearestNames;
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
  const search = element('input', { id: searchId, type: 'search', autocomplete: 'off' });
  const count = element('p', { role: 'status', class: 'hint' });
  const items = functions.map((listed) => {
    const button = element(
      'button',
      { type: 'button' },
      element('span', { class: 'line-name' }, listed.id),
      element('span', { class: 'line-details' }, listed.description),
    );
    button.addEventListener('click', () => open(listed));
    return { listed, element: element('li', {}, button) };
  });
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
  const filter = (): void => {
    const { value } = search;
    const isWanted = ({ id, description, family }: ListedFunction): boolean =>
      hasWords(`${id} ${description} ${family}`, value);
    for (const item of items) item.element.hidden = !isWanted(item.listed);
    setText(count, fill(words.count, { count: items.filter((item) => !item.element.hidden).length }));
  };
  search.addEventListener('input', filter);
  put.addEventListener('click', () => void actions.run(async () => form?.put()));
  filter();

  return {
    element: element(
      'div',
      {},
      element(
        'p',
        {},
        element('a', { href: `${pages}index.html`, target: '_blank', rel: 'noopener' }, words.all),
      ),
      element('label', { for: searchId }, words.search),
      element('div', { class: 'control' }, search),
      count,
      element('ul', { class: 'lines tasks' }, ...items.map((item) => item.element)),
      under,
    ),
    focus: () => search.focus(),
  };
}
