/** What a sheet computes from its form, to be read only. */
import { isCellError, type ReadValue } from '../workbook/port';
import type { FormRead } from '../workbook/readForm';
import type { FormLine } from '../workbook/template';
import { english } from '../texts/english';
import { element, setText } from './elements';
import { sayValue } from './fieldValue';

const { pane } = english;

export interface FormResults {
  readonly element: HTMLElement;
  show(read: FormRead | null): void;
}

export function createFormResults(heading: string, lines: readonly FormLine[]): FormResults {
  const cells = lines.map((line) => ({ line, cell: element('dd') }));
  const list = element(
    'dl',
    {},
    ...cells.map(({ line, cell }) => element('div', {}, element('dt', {}, line.label), cell)),
  );
  const all = element('div', { hidden: true }, element('h3', {}, heading), list);
  return {
    element: all,
    show(read) {
      all.hidden = read === null;
      for (const { line, cell } of cells) showResult(cell, line, read?.values[line.name] ?? null);
    },
  };
}

function showResult(cell: HTMLElement, line: FormLine, value: ReadValue): void {
  const isError = isCellError(value);
  cell.classList.toggle('wrong', isError);
  const said = value === null ? '' : sayResult(line, value);
  setText(cell, isError ? `${pane.season.errorWord}: ${said}` : said);
}

function sayResult(line: FormLine, value: ReadValue): string {
  const isDate = line.format === 'date' && typeof value === 'number';
  return isDate || typeof value !== 'number' || line.format === 'percent'
    ? sayValue(line, value)
    : sayValue({ ...line, format: 'general' }, value);
}
