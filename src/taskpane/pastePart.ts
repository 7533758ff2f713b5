/** Plots out of rows that were copied from a spreadsheet, or out of a text file: looked at first, then one change. */
import { parseNumber } from '../workbook/parseNumber';
import { readDelimited, withoutRecords, type Delimited } from '../workbook/readDelimited';
import { isUnfit, readInputs } from '../workbook/readInputs';
import type { InputRow, TableTemplate } from '../workbook/template';
import {
  lineOfProblem,
  sayListProblems,
  type ListProblem,
  type NearestNames,
} from '../templates/sayListProblem';
import { manyPlots, plotHeaders } from '../templates/plots';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { pointOfThousands } from '../texts/language';
import { element, setText } from './elements';
import { focusUnlessElsewhere } from './holdFocus';
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
  /** `onDone` is told once they are in the sheet. */
  readonly put: (plots: readonly InputRow[], onDone: () => void) => void;
  readonly addButton: (button: HTMLButtonElement) => void;
}

export function createPastePart(parts: PasteParts): HTMLElement {
  const { table, takenNames } = parts;
  const field = createPasteField('paste', 5, words, () => look());
  const { area } = field;
  const state = element('p', { role: 'status', class: 'hint' });
  const problems = element('ul', { class: 'problems' });
  const putGood = element('button', { type: 'button', class: 'main', hidden: true });
  const putAll = element('button', { type: 'button', hidden: true });
  const clear = element('button', { type: 'button', hidden: true }, words.clear);
  for (const button of [putGood, putAll, clear]) parts.addButton(button);
  let read: Pasted = nothingPasted;
  let good: readonly PastedPlot[] = [];

  const look = (): void => {
    read = readPasted(table, area.value);
    const { plots } = read;
    const count = plots.length;
    const taken = takenNames();
    const nameHeader = table.columns[0]?.header ?? '';
    const nameOf = ({ input }: PastedPlot): string => String(input[nameHeader] ?? '');
    const again = plots.filter((plot) => taken.has(nameOf(plot).toLowerCase()));
    const told = new Set(read.problems.map(lineOfProblem));
    good = plots.filter((plot) => !told.has(plot.line) && !again.includes(plot));
    const isMany = taken.size + count > manyPlots;
    const areAllGood = good.length === count;
    const sayToMend = good.length === 0 ? words.allToMend : words.toMend;
    const sentences = [
      ...(area.value.trim() === '' ? [] : [fill(sayFound(read), { count })]),
      ...(areAllGood ? [] : [fill(sayToMend, { count: count - good.length })]),
      ...(read.leftOut.length === 0 ? [] : [fill(words.computed, { headers: read.leftOut.join(', ') })]),
      ...(again.length === 0
        ? []
        : [fill(words.namesTaken, { names: again.slice(0, mostShown).map(nameOf).join(', ') })]),
      ...(isMany ? [fill(catalogue.pane.many.warning, { count: taken.size + count })] : []),
    ];
    setText(state, sentences.join(' '));
    const said = sayListProblems(read.problems, parts.nearestNames).map((each) => fill(words.line, each));
    const more = said.length - mostShown;
    problems.replaceChildren(
      ...[...said.slice(0, mostShown), ...(more > 0 ? [fill(words.more, { count: more })] : [])].map((text) =>
        element('li', {}, text),
      ),
    );
    putGood.hidden = good.length === 0;
    putAll.hidden = areAllGood;
    clear.hidden = area.value === '';
    const sayAll = isMany ? words.putAllTheSame : words.put;
    setText(putGood, fill(areAllGood ? sayAll : words.putGood, { count: good.length }));
    setText(putAll, fill(words.putAllTheSame, { count }));
  };
  const leave = (text: string): void => {
    area.value = text;
    look();
    focusUnlessElsewhere(area);
  };
  /** Whatever did not go into the sheet stays in the field, to be mended. */
  const put = (plots: readonly PastedPlot[]): void => {
    const { value } = area;
    const { delimited } = read;
    parts.put(
      plots.map(({ input }) => input),
      () => {
        const isAsItWas = area.value === value && delimited !== null;
        if (isAsItWas) leave(withoutRecords(value, delimited, new Set(plots.map(({ line }) => line))));
      },
    );
  };
  putGood.addEventListener('click', () => put(good));
  putAll.addEventListener('click', () => put(read.plots));
  clear.addEventListener('click', () => leave(''));

  return element(
    'details',
    {},
    element('summary', {}, words.heading),
    field.element,
    state,
    problems,
    element('div', { class: 'buttons' }, putGood, putAll, clear),
  );
}

function sayFound({ plots, refused }: Pasted): string {
  return refused !== null ? words[refused] : plots.length === 0 ? words.nothing : words.ready;
}

interface PastedPlot {
  readonly line: number;
  readonly input: InputRow;
}

interface Pasted {
  readonly delimited: Delimited | null;
  readonly plots: readonly PastedPlot[];
  readonly problems: readonly ListProblem[];
  /** Headers of columns that the sheet computes. */
  readonly leftOut: readonly string[];
  /** Nothing says that these are plots, or which column is which. */
  readonly refused: 'other' | 'headersUnknown' | null;
}

const nothingPasted: Pasted = { delimited: null, plots: [], problems: [], leftOut: [], refused: null };

function readPasted(table: TableTemplate, text: string): Pasted {
  if (text.trim() === '') return nothingPasted;
  const telling = table.columns.filter(({ kind }) => kind === 'input').map(({ header }) => header);
  const delimited = readDelimited(text, { ...plotHeaders, mayBeBare: true, telling });
  const { inputs, problems, leftOut } = readInputs(table, { ...delimited, pointOfThousands });
  const plots = delimited.rows
    .map(({ line }, index) => ({ line, input: inputs[index] ?? {} }))
    .filter(({ input }) => Object.values(input).some((value) => value !== null));
  if (!delimited.isHeaded && !plots.some(({ input }) => hasKnownCrop(table, input))) {
    return { ...nothingPasted, refused: 'other' };
  }
  const unknown = delimited.isHeaded ? [] : headersLike(table, delimited, inputs);
  if (unknown.length > 0) return { ...nothingPasted, problems: unknown, refused: 'headersUnknown' };
  const inOrder = [...delimited.problems, ...problems].sort((a, b) => lineOfProblem(a) - lineOfProblem(b));
  return { delimited, plots, problems: inOrder, leftOut, refused: null };
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
