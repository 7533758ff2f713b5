/** Plots out of rows that were copied from a spreadsheet, or out of a text file: looked at first, then one change. */
import { parseNumber } from '../workbook/parseNumber';
import { readDelimited, type Delimited } from '../workbook/readDelimited';
import { isUnfit, readInputs } from '../workbook/readInputs';
import type { InputRow, TableTemplate } from '../workbook/template';
import {
  lineOfProblem,
  sayListProblem,
  type ListProblem,
  type NearestNames,
} from '../templates/sayListProblem';
import { manyPlots } from '../templates/plots';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, setText } from './elements';
import { createPasteField } from './pasteField';

const words = catalogue.pane.paste;

const cropHeader = catalogue.sheets.plots.columns.crop.header;

/** More would make the pane slow, and nobody mends them all at once. */
const mostShown = 20;

export interface PasteParts {
  readonly table: TableTemplate;
  readonly nearestNames: NearestNames;
  /** In lower case, of the plots that are there. */
  readonly takenNames: () => ReadonlySet<string>;
  /** Whether they went into the sheet. */
  readonly put: (plots: readonly InputRow[]) => void;
  readonly addButton: (button: HTMLButtonElement) => void;
}

export interface PastePart {
  readonly element: HTMLElement;
  /** Once the plots are in the sheet. */
  clear(): void;
}

export function createPastePart(parts: PasteParts): PastePart {
  const { table, takenNames } = parts;
  const field = createPasteField('paste', 5, words, () => look());
  const { area } = field;
  const state = element('p', { role: 'status', class: 'hint' });
  const problems = element('ul', { class: 'problems' });
  const put = element('button', { type: 'button', class: 'main', hidden: true });
  const clear = element('button', { type: 'button', hidden: true }, words.clear);
  parts.addButton(put);
  parts.addButton(clear);
  let inputs: readonly InputRow[] = [];

  const look = (): void => {
    const read = readPasted(table, area.value);
    inputs = read.inputs;
    const count = inputs.length;
    const taken = takenNames();
    const nameHeader = table.columns[0]?.header ?? '';
    const names = inputs.map((input) => String(input[nameHeader] ?? ''));
    const again = names.filter((name) => taken.has(name.toLowerCase()));
    const isMany = taken.size + count > manyPlots;
    const sentences = [
      ...(area.value.trim() === '' ? [] : [fill(sayFound(read), { count })]),
      ...(read.leftOut.length === 0 ? [] : [fill(words.computed, { headers: read.leftOut.join(', ') })]),
      ...(again.length === 0
        ? []
        : [fill(words.namesTaken, { names: again.slice(0, mostShown).join(', ') })]),
      ...(isMany ? [fill(catalogue.pane.many.warning, { count: taken.size + count })] : []),
    ];
    setText(state, sentences.join(' '));
    const said = read.problems.map((problem) =>
      fill(words.line, {
        line: lineOfProblem(problem),
        problem: sayListProblem(problem, parts.nearestNames),
      }),
    );
    const more = said.length - mostShown;
    problems.replaceChildren(
      ...[...said.slice(0, mostShown), ...(more > 0 ? [fill(words.more, { count: more })] : [])].map((text) =>
        element('li', {}, text),
      ),
    );
    put.hidden = count === 0;
    clear.hidden = area.value === '';
    setText(put, fill(isMany ? words.putAllTheSame : words.put, { count }));
  };
  put.addEventListener('click', () => parts.put(inputs));
  const empty = (): void => {
    area.value = '';
    look();
    area.focus();
  };
  clear.addEventListener('click', empty);

  return {
    element: element(
      'details',
      {},
      element('summary', {}, words.heading),
      field.element,
      state,
      problems,
      element('div', { class: 'buttons' }, put, clear),
    ),
    clear: empty,
  };
}

function sayFound({ inputs, refused }: Pasted): string {
  return refused !== null ? words[refused] : inputs.length === 0 ? words.nothing : words.ready;
}

interface Pasted {
  readonly inputs: readonly InputRow[];
  readonly problems: readonly ListProblem[];
  /** Headers of columns that the sheet computes. */
  readonly leftOut: readonly string[];
  /** Nothing says that these are plots, or which column is which. */
  readonly refused: 'other' | 'headersUnknown' | null;
}

function readPasted(table: TableTemplate, text: string): Pasted {
  const nothing = { inputs: [], problems: [], leftOut: [] };
  if (text.trim() === '') return { ...nothing, refused: null };
  const headers = table.columns.map(({ header }) => header);
  const telling = table.columns.filter(({ kind }) => kind === 'input').map(({ header }) => header);
  const delimited = readDelimited(text, { headers, mayBeBare: true, telling });
  const { inputs: read, problems, leftOut } = readInputs(table, delimited);
  const inputs = read.filter((input) => Object.values(input).some((value) => value !== null));
  if (!delimited.isHeaded && !inputs.some((input) => hasKnownCrop(table, input))) {
    return { ...nothing, refused: 'other' };
  }
  const unknown = delimited.isHeaded ? [] : headersLike(table, delimited, read);
  if (unknown.length > 0) return { ...nothing, problems: unknown, refused: 'headersUnknown' };
  const inOrder = [...delimited.problems, ...problems].sort((a, b) => lineOfProblem(a) - lineOfProblem(b));
  return { inputs, problems: inOrder, leftOut, refused: null };
}

/** What is to be said of a first line of words alone, no crop among them, over lines with numbers beside their names. */
function headersLike(
  table: TableTemplate,
  { rows }: Delimited,
  inputs: readonly InputRow[],
): readonly ListProblem[] {
  const [first, ...others] = rows;
  const words = first?.cells.map((cell) => cell.trim()) ?? [];
  const isOverNumbers = words.some(
    (word, column) =>
      column > 0 &&
      word !== '' &&
      others.some(({ cells }) => parseNumber(cells[column] ?? '', true) !== null),
  );
  if (words.some((word) => /\d/.test(word)) || !isOverNumbers || hasKnownCrop(table, inputs[0] ?? {}))
    return [];
  return words.flatMap((header): ListProblem[] =>
    header === '' ? [] : [{ code: 'unknownHeader', line: first?.line ?? 1, header }],
  );
}

function hasKnownCrop({ columns }: TableTemplate, input: InputRow): boolean {
  const crop = columns.find(({ header }) => header === cropHeader);
  const given = input[cropHeader] ?? null;
  return crop !== undefined && given !== null && !isUnfit(crop, given);
}
