import {
  cellAt,
  clearRange,
  copyRow,
  numberFormatAt,
  setNumberFormat,
  setOnRange,
  settingAt,
  writeCells,
  type ConditionalRule,
  type Sheet,
} from './book';
import type { Cell, Constant } from './enterCell';
import { refuse } from './excelError';
import { placeOf, type Model, type Stage } from './model';
import { checkSpan, overlap, printAddress, rectangleOf, type Span } from './span';

const pointsOfColumn = 48;
const pointsOfRow = 15;
const longestListText = 255;

export function rangeModel(stage: Stage, sheet: Sheet, given: Span): Model {
  const { book } = stage;
  const span = checkSpan(given);
  const cells =
    <T>(of: (row: number, column: number) => T): (() => T[][]) =>
    (): T[][] =>
      rectangleOf(span, of);
  const part = (moved: Span): Model => rangeModel(stage, sheet, moved);
  const put = (value: unknown): void => writeCells(book, sheet, span, value);
  return {
    className: 'Range',
    range: { sheet, span },
    get: {
      Address: () => printAddress(sheet.name, span),
      RowIndex: () => span.row,
      ColumnIndex: () => span.column,
      RowCount: () => span.rows,
      ColumnCount: () => span.columns,
      Values: cells((row, column) => valueAt(stage, sheet, row, column)),
      Formulas: cells((row, column) => {
        const cell = cellAt(sheet, row, column);
        return cell !== undefined && 'formula' in cell ? cell.formula : constantOf(cell);
      }),
      ValueTypes: cells((row, column) => typeAt(stage, sheet, row, column)),
      NumberFormat: cells((row, column) => numberFormatAt(sheet, row, column)),
      Left: () =>
        sumOf(span.column, (column) => Number(settingAt(sheet, 0, column, 'ColumnWidth') ?? pointsOfColumn)),
      Top: () => span.row * pointsOfRow,
    },
    put: {
      Values: put,
      Formulas: put,
      NumberFormat: (value) => setNumberFormat(book, sheet, span, value),
    },
    call: {
      // The library cuts large arrays into bands of rows itself.
      GetRow: (row) => part({ ...span, row: span.row + Number(row), rows: 1 }),
      GetBoundingRect(other) {
        const to = placeOf(sheet, other).span;
        return part({ ...span, rows: to.row + to.rows - span.row });
      },
      _ValidateArraySize(rows, columns) {
        if (rows !== span.rows || columns !== span.columns) {
          refuse('InvalidArgument', 'the array is not as large as the range');
        }
      },
      Clear: (applyTo) => clearRange(book, sheet, span, String(applyTo ?? 'All')),
      CopyFrom(source, copyType) {
        const from = placeOf(sheet, source);
        if (from.sheet !== sheet || copyType !== 'All') refuse('InvalidArgument', 'copy');
        copyRow(book, sheet, span, from.span);
      },
      Select() {
        if (book.active !== sheet) refuse('InvalidOperation', 'select on a sheet that is not active');
        book.selection = { sheet, span };
      },
    },
    child: {
      Worksheet: () => ({ className: 'Worksheet', get: { Id: () => sheet.id, Name: () => sheet.name } }),
      Format: () => formatModel(stage, sheet, span),
      ConditionalFormats: () => rulesModel(stage, sheet, span),
      DataValidation: () => ({
        className: 'DataValidation',
        put: {
          Rule: (rule) => setOnRange(book, sheet, span, 'Rule', checkedRule(sheet, rule)),
          ErrorAlert: (alert) => setOnRange(book, sheet, span, 'ErrorAlert', alert),
          IgnoreBlanks: (ignore) => setOnRange(book, sheet, span, 'IgnoreBlanks', ignore),
        },
      }),
    },
  };
}

function formatModel({ book }: Stage, sheet: Sheet, span: Span): Model {
  const settings = (prefix: string, ...names: string[]): Model['put'] =>
    Object.fromEntries(
      names.map((name) => [
        name,
        (value: unknown) => setOnRange(book, sheet, span, `${prefix}${name}`, value),
      ]),
    );
  return {
    className: 'RangeFormat',
    put:
      settings(
        '',
        'ColumnWidth',
        'RowHeight',
        'WrapText',
        'HorizontalAlignment',
        'IndentLevel',
        'VerticalAlignment',
      ) ?? {},
    call: { AutofitRows: () => setOnRange(book, sheet, span, 'AutofitRows', true) },
    child: {
      Fill: () => ({ className: 'RangeFill', put: settings('Fill.', 'Color') ?? {} }),
      Font: () => ({
        className: 'RangeFont',
        put: settings('Font.', 'Bold', 'Italic', 'Size', 'Color', 'Name') ?? {},
      }),
      Borders: () => ({
        className: 'RangeBorderCollection',
        item: (side) => ({
          className: 'RangeBorder',
          put: settings(`Border.${String(side)}.`, 'Style', 'Color') ?? {},
        }),
      }),
    },
  };
}

/** Those that the range meets, the first of them first. */
function rulesModel({ book }: Stage, sheet: Sheet, span: Span): Model {
  const met = (): ConditionalRule[] => sheet.rules.filter((rule) => overlap(rule.span, span));
  return {
    className: 'ConditionalFormatCollection',
    items: () => met().map((rule) => ruleModel(sheet, rule)),
    item(id) {
      const rule = met().find((each) => each.id === id);
      return rule === undefined ? refuse('ItemNotFound', `rule ${String(id)}`) : ruleModel(sheet, rule);
    },
    call: {
      Add(type) {
        if (type !== 'CellValue') refuse('InvalidArgument', 'a conditional format of another kind');
        const rule: ConditionalRule = { id: `{rule ${book.nextId++}}`, span, properties: {} };
        sheet.rules.unshift(rule);
        return ruleModel(sheet, rule);
      },
    },
  };
}

function ruleModel(sheet: Sheet, rule: ConditionalRule): Model {
  const { properties } = rule;
  const takeOut = (): void => void sheet.rules.splice(sheet.rules.indexOf(rule), 1);
  const color = (className: string, name: string) => (): Model => ({
    className,
    put: { Color: (value) => void (properties[name] = value) },
  });
  return {
    className: 'ConditionalFormat',
    get: { Id: () => rule.id, Type: () => 'CellValue' },
    put: {
      Priority(priority) {
        if (priority !== -1) refuse('InvalidArgument', 'another priority than the last');
        takeOut();
        sheet.rules.push(rule);
      },
    },
    call: { Delete: takeOut },
    child: {
      CellValue: () => ({
        className: 'CellValueConditionalFormat',
        get: { Rule: () => properties['rule'] },
        put: { Rule: (value) => void (properties['rule'] = value) },
        child: {
          Format: () => ({
            className: 'ConditionalRangeFormat',
            child: {
              Font: color('ConditionalRangeFont', 'color'),
              Fill: color('ConditionalRangeFill', 'fill'),
            },
          }),
        },
      }),
    },
  };
}

/** A list: its entries with commas between them, or the range that holds them, printed as an address. */
function checkedRule(sheet: Sheet, rule: unknown): unknown {
  const { list } = rule as { list?: { source?: unknown; inCellDropDown?: unknown } };
  if (list === undefined) return refuse('InvalidArgument', 'a rule of another kind than a list');
  if (typeof list.source === 'string') {
    if (list.source.length > longestListText || list.source === '') refuse('InvalidArgument', 'the list');
    return { list };
  }
  const { sheet: from, span } = placeOf(sheet, list.source);
  return { list: { ...list, source: printAddress(from.name, span) } };
}

function valueAt({ book, results }: Stage, sheet: Sheet, row: number, column: number): Constant {
  if (book.busy.has(`${sheet.name}!${row},${column}`)) return '#BUSY!';
  const cell = cellAt(sheet, row, column);
  const result = results.get(sheet)?.get(`${row},${column}`) ?? 0;
  // A cell that a list spills into has nothing of its own.
  const isResult = cell === undefined ? isSpilledInto(results, sheet, row, column) : 'formula' in cell;
  if (!isResult) return constantOf(cell);
  return typeof result === 'object' ? result.error : result;
}

function typeAt(stage: Stage, sheet: Sheet, row: number, column: number): string {
  const cell = cellAt(sheet, row, column);
  if (cell === undefined && !isSpilledInto(stage.results, sheet, row, column)) return 'Empty';
  const result = stage.results.get(sheet)?.get(`${row},${column}`);
  const isBusy = stage.book.busy.has(`${sheet.name}!${row},${column}`);
  if (isBusy || (cell !== undefined && 'error' in cell) || (typeof result === 'object' && result !== null))
    return 'Error';
  const value = valueAt(stage, sheet, row, column);
  if (typeof value === 'string') return 'String';
  return typeof value === 'boolean' ? 'Boolean' : 'Double';
}

function isSpilledInto(results: Stage['results'], sheet: Sheet, row: number, column: number): boolean {
  return results.get(sheet)?.has(`${row},${column}`) === true;
}

function constantOf(cell: Cell | undefined): Constant {
  if (cell === undefined) return '';
  if ('error' in cell) return cell.error;
  return 'constant' in cell ? cell.constant : '';
}

function sumOf(count: number, of: (index: number) => number): number {
  return Array.from({ length: count }, (_, index) => of(index)).reduce((sum, size) => sum + size, 0);
}
