/** One plot as a form: fields over the input cells of its line, or of a line that is still to come. */
import { isCellError, type CellValue } from '../workbook/port';
import type { Line, LinesRead } from '../workbook/readLines';
import { choiceLike } from '../workbook/readInputs';
import type { FormLine, TableColumn, TableTemplate } from '../workbook/template';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';
import { sayValue } from './fieldValue';
import { createFormField, type FormField } from './formField';
import { sayStandIn, type CropFigures } from './standIns';

const words = catalogue.pane.plots;
const headers = catalogue.sheets.plots.columns;

const nameHeader = headers.plot.header;

export interface PlotForm {
  readonly element: HTMLElement;
  /** null for a new plot. */
  open(line: Line | null): void;
  close(): void;
  isOpen(): boolean;
  /** Takes what the sheet says now; null while there is no line. */
  show(read: LinesRead, line: Line | null, figures: CropFigures): void;
  touched(): readonly FormField[];
  /** What was typed and differs from the sheet, by header; null when something is wrong, which then has the focus. */
  demandRight(otherNames: readonly string[]): Readonly<Record<string, CellValue>> | null;
  focus(): void;
}

export function createPlotForm(
  table: TableTemplate,
  nearestNames: NearestNames,
  onPut: () => void,
  onClose: () => void,
): PlotForm {
  const id = paneId('plot-form');
  const title = element('h3', { id });
  const inputs = table.columns.filter(({ kind }) => kind === 'input');
  const fields = inputs.map((column) => createFormField(lineOf(column), () => showState(), nearestNames));
  // What every plot is asked stands before the first result.
  const asked = table.columns.findIndex(({ kind }) => kind === 'computed');
  const put = element('button', { type: 'submit', class: 'main' });
  const leave = element('button', { type: 'button' }, words.leaveForm);
  const grid = (some: readonly FormField[]): HTMLElement =>
    element('div', { class: 'fields' }, ...some.map((field) => field.element));
  const form = element(
    'form',
    { novalidate: true, hidden: true, 'aria-labelledby': id },
    title,
    grid(fields.slice(0, asked)),
    element('details', {}, element('summary', {}, words.more), grid(fields.slice(asked))),
    element('div', { class: 'buttons' }, put, leave),
  );
  let latest: { read: LinesRead; figures: CropFigures } | null = null;
  let isNew = true;

  const fieldOf = (header: string): FormField | undefined => fields.find(({ line }) => line.label === header);
  const textOf = (header: string): string => {
    const checked = fieldOf(header)?.check();
    return checked !== undefined && 'value' in checked ? String(checked.value ?? '') : '';
  };
  const showState = (): void => {
    for (const field of fields) {
      const checked = field.check();
      field.markWrong(field.isDone() && 'wrong' in checked ? checked.wrong : null);
      const { label: header } = field.line;
      const unit = latest?.read.units[header] ?? '';
      field.showUnit(unit);
      const takenAs = takenFor(field.line, textOf(header));
      const standIn =
        latest === null
          ? ''
          : sayStandIn(latest.figures, {
              header,
              crop: textOf(headers.crop.header),
              layout: textOf(headers.layout.header),
              say: (value) => `${sayValue(field.line, value)} ${unit}`.trim(),
            });
      field.showStandIn(takenAs === undefined ? standIn : fill(words.takenAs, { crop: takenAs }));
    }
  };
  const show = (line: Line | null): void => {
    for (const field of fields) field.show(line?.values[field.line.label] ?? null, line !== null);
    const name = line?.values[nameHeader] ?? null;
    const said = name === null || isCellError(name) ? words.unnamed : String(name);
    setText(title, isNew ? words.formNew : fill(words.formOf, { name: said }));
    setText(put, isNew ? words.putNew : words.put);
    showState();
  };

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    onPut();
  });
  leave.addEventListener('click', onClose);

  return {
    element: form,
    open(line) {
      isNew = line === null;
      for (const field of fields) {
        field.show(line?.values[field.line.label] ?? null, false);
        field.drop();
      }
      show(line);
      form.hidden = false;
      fields[0]?.focus();
    },
    close() {
      form.hidden = true;
      for (const field of fields) field.drop();
    },
    isOpen: () => !form.hidden,
    show(read, line, figures) {
      latest = { read, figures };
      if (!form.hidden) show(line);
    },
    touched: () => fields.filter((field) => field.isTouched()),
    demandRight(otherNames) {
      for (const field of fields) field.setDone();
      showState();
      const wrong = fields.filter((field) => 'wrong' in field.check());
      const name = fieldOf(nameHeader);
      const problem = name === undefined ? null : checkName(textOf(nameHeader), otherNames);
      if (name !== undefined && problem !== null && !wrong.includes(name)) {
        name.markWrong(problem);
        wrong.unshift(name);
      }
      wrong[0]?.focus();
      if (wrong.length > 0) return null;
      return Object.fromEntries(
        fields
          .filter((field) => field.isTouched())
          .map((field) => {
            const checked = field.check();
            return [field.line.label, 'value' in checked ? checked.value : null];
          }),
      );
    },
    focus: () => fields[0]?.focus(),
  };
}

function checkName(name: string, otherNames: readonly string[]): string | null {
  if (name === '') return words.nameWanted;
  const isTaken = otherNames.some((other) => other.toLowerCase() === name.toLowerCase());
  return isTaken ? fill(words.nameTaken, { name }) : null;
}

/** Names are one whatever their case and accents. */
function takenFor({ takenAs = {} }: FormLine, given: string): string | undefined {
  const name = choiceLike(Object.keys(takenAs), given);
  return name === undefined ? undefined : takenAs[name];
}

function lineOf({ header, format, choices, takenAs, words: spoken, note, limits }: TableColumn): FormLine {
  return {
    label: header,
    name: `plot ${header}`,
    kind: 'input',
    content: null,
    format,
    choices,
    remark: note,
    ...(takenAs && { takenAs }),
    ...(spoken && { words: spoken }),
    ...(limits && { limits }),
  };
}
