/** What a sheet computes from its form, to be read only. */
import { isCellError, type ReadValue } from '../workbook/port';
import type { FormRead } from '../workbook/readForm';
import type { FormLine } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { element, setText } from './elements';
import { sayValue } from './fieldValue';

const { pane } = catalogue;

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

/** As many decimals as the sheet shows. */
const decimals: Partial<Record<FormLine['format'], number>> = {
  whole: 0,
  tenth: 1,
  hundredth: 2,
  percent: 3,
};

function sayResult(line: FormLine, value: ReadValue): string {
  if (typeof value !== 'number' || line.format === 'date') return sayValue(line, value);
  const places = decimals[line.format];
  const shown = places === undefined ? value : Number(value.toFixed(places));
  return sayValue(line.format === 'percent' ? line : { ...line, format: 'general' }, shown);
}
