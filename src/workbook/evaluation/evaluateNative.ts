import type { CellError, NativeFunction, ReadValue } from '../port';
import { isCellError } from '../port';
import { isErr, toNumber, toTruth } from './coerceValue';
import { findMatches, findMatchesOfAll, findPosition } from './lookUp';
import { allValues, errorOf, plainValue, singleValue, withoutMessage, type Operand } from './operand';
import { round, roundUp } from './rounding';
import { calendarDate, dateSerial } from './spreadsheetDate';

const all = (): boolean => true;
const none = (): boolean => false;
const isFirst = (index: number): boolean => index === 0;
const isBranch = (index: number): boolean => index > 0;
const isEven = (index: number): boolean => index % 2 === 0;
const isFirstOrOdd = (index: number): boolean => index === 0 || index % 2 === 1;

/** The arguments, from 0, that take more than one cell. Several cells in another one make a list of results. */
const takesCells: Readonly<Record<NativeFunction, (index: number) => boolean>> = {
  IF: isBranch,
  AND: all,
  OR: all,
  IFERROR: none,
  ISNUMBER: none,
  ISERROR: none,
  ISERR: none,
  NA: none,
  SUM: all,
  COUNTIF: isFirst,
  COUNTIFS: isEven,
  SUMIFS: isFirstOrOdd,
  MINIFS: isFirstOrOdd,
  MIN: all,
  MAX: all,
  COUNT: all,
  MEDIAN: all,
  INDEX: isFirst,
  MATCH: (index) => index === 1,
  DATE: none,
  YEAR: none,
  MONTH: none,
  DAY: none,
  INT: none,
  ROUND: none,
  ROUNDUP: none,
};

export function isNativeFunction(name: string): name is NativeFunction {
  return Object.hasOwn(takesCells, name);
}

export function takesManyCells(name: NativeFunction, index: number): boolean {
  return takesCells[name](index);
}

/** The built-in functions of `NativeFunction`, as Excel computes them. IF and IFERROR evaluate what they need. */
export function evaluateNative<Part>(
  name: NativeFunction,
  args: readonly Part[],
  evaluate: (part: Part) => Operand,
): Operand {
  const operand = (index: number): Operand => {
    const part = args[index];
    return part === undefined ? plainValue(null) : evaluate(part);
  };
  const single = (index: number): ReadValue => singleValue(operand(index));
  switch (name) {
    case 'IF': {
      const condition = toTruth(single(0));
      if (isCellError(condition)) return plainValue(condition);
      if (condition) return operand(1);
      return args.length > 2 ? operand(2) : plainValue(false);
    }
    case 'IFERROR': {
      const tried = operand(0);
      return isCellError(singleValue(tried)) ? operand(1) : tried;
    }
    case 'INDEX':
      return pickFrom(operand(0), single(1), args.length > 2 ? single(2) : null);
    default:
      return plainValue(evaluateEager(name, args.map(evaluate)));
  }
}

function evaluateEager(
  name: Exclude<NativeFunction, 'IF' | 'IFERROR' | 'INDEX'>,
  operands: readonly Operand[],
): ReadValue {
  const single = (index: number): ReadValue => {
    const operand = operands[index];
    return operand === undefined ? null : singleValue(operand);
  };
  switch (name) {
    case 'AND':
    case 'OR':
      return joinTruths(operands, name === 'AND');
    case 'ISNUMBER':
      return typeof single(0) === 'number';
    case 'ISERROR':
      return isCellError(single(0));
    case 'ISERR':
      return isErr(single(0));
    case 'NA':
      return { error: '#N/A', message: null };
    case 'SUM':
      return mapValue(numbersIn(operands), (numbers) => numbers.reduce((sum, number) => sum + number, 0));
    case 'MIN':
    case 'MAX':
      return mapValue(numbersIn(operands), (numbers) =>
        numbers.reduce((best, number) => Math[name === 'MIN' ? 'min' : 'max'](best, number), numbers[0] ?? 0),
      );
    case 'COUNT':
      return operands.flatMap(allValues).filter((value) => typeof value === 'number').length;
    case 'MEDIAN':
      return mapValue(numbersIn(operands), (numbers) => middle(numbers) ?? errorOf('#NUM!'));
    case 'COUNTIF':
      return findMatches(operands[0] === undefined ? [] : allValues(operands[0]), single(1)).length;
    case 'COUNTIFS':
      return findMatchesOfAll(criteriaIn(operands))?.length ?? errorOf('#VALUE!');
    case 'SUMIFS':
      return mapValue(numbersWhere(operands), (numbers) => numbers.reduce((sum, number) => sum + number, 0));
    case 'MINIFS':
      return mapValue(numbersWhere(operands), (numbers) =>
        numbers.reduce((least, number) => Math.min(least, number), numbers[0] ?? 0),
      );
    case 'MATCH':
      return mapValue(operands.length > 2 ? toNumber(single(2)) : 1, (order) =>
        findPosition(single(0), operands[1] === undefined ? [] : allValues(operands[1]), order),
      );
    case 'DATE':
      return mapValue(numbersOf(operands), ([year = 0, month = 0, day = 0]) => dateSerial(year, month, day));
    case 'YEAR':
    case 'MONTH':
    case 'DAY': {
      const part = ({ YEAR: 'year', MONTH: 'month', DAY: 'day' } as const)[name];
      return mapValue(toNumber(single(0)), (serial) => mapValue(calendarDate(serial), (date) => date[part]));
    }
    case 'INT':
      return mapValue(toNumber(single(0)), Math.floor);
    case 'ROUND':
      return mapValue(numbersOf(operands), ([number = 0, places = 0]) => round(number, places));
    case 'ROUNDUP':
      return mapValue(numbersOf(operands), ([number = 0, places = 0]) => roundUp(number, places));
  }
}

type Criteria = Parameters<typeof findMatchesOfAll>[0];

/** A column, its criterion, the next column, its criterion. */
function criteriaIn(operands: readonly Operand[]): Criteria {
  return operands.flatMap((operand, index) => {
    const criterion = operands[index + 1];
    if (index % 2 === 1 || criterion === undefined) return [];
    return [{ values: allValues(operand), criterion: singleValue(criterion) }];
  });
}

/** Of the first operand, where the others' criteria are met. An error counts only where its row meets them. */
function numbersWhere([operand = plainValue(null), ...others]: readonly Operand[]): number[] | CellError {
  const criteria = criteriaIn(others);
  const values = valuesToFold(operand);
  const met = findMatchesOfAll(criteria);
  if (met === null || criteria[0]?.values.length !== values.length) return errorOf('#VALUE!');
  return numbersIn([{ kind: 'range', values: met.map((index) => values[index] ?? null) }]);
}

/** null of no numbers. */
function middle(numbers: readonly number[]): number | null {
  const sorted = [...numbers].sort((one, other) => one - other);
  const below = sorted[Math.ceil(sorted.length / 2) - 1];
  const above = sorted[Math.floor(sorted.length / 2)];
  return below === undefined || above === undefined ? null : (below + above) / 2;
}

/** Errors pass through. */
function mapValue<T>(value: T | CellError, use: (value: T) => ReadValue): ReadValue {
  return isCellError(value) ? value : use(value);
}

function numbersOf(operands: readonly Operand[]): number[] | CellError {
  const numbers: number[] = [];
  for (const operand of operands) {
    const number = toNumber(singleValue(operand));
    if (isCellError(number)) return number;
    numbers.push(number);
  }
  return numbers;
}

function valuesToFold(operand: Operand): readonly ReadValue[] {
  return operand.kind === 'range' ? operand.values.map(withoutMessage) : allValues(operand);
}

/** For SUM, MIN and MAX: in cells only numbers count; a value written into the formula is made one. */
function numbersIn(operands: readonly Operand[]): number[] | CellError {
  const numbers: number[] = [];
  for (const operand of operands) {
    for (const value of valuesToFold(operand)) {
      if (isCellError(value)) return value;
      const number = operand.kind === 'value' ? toNumber(value) : value;
      if (isCellError(number)) return number;
      if (typeof number === 'number') numbers.push(number);
    }
  }
  return numbers;
}

/** In cells, text and blanks are passed over; with no truth value at all there is nothing to say. */
function joinTruths(operands: readonly Operand[], all: boolean): ReadValue {
  let told: boolean | null = null;
  for (const operand of operands) {
    for (const value of valuesToFold(operand)) {
      const isPassedOver = operand.kind !== 'value' && (value === null || typeof value === 'string');
      if (isPassedOver) continue;
      const truth = toTruth(value);
      if (isCellError(truth)) return truth;
      told = told === null ? truth : all ? told && truth : told || truth;
    }
  }
  return told ?? errorOf('#VALUE!');
}

/** INDEX: one index counts along a column or a row; 0 gives all of it. */
function pickFrom(from: Operand, rowValue: ReadValue, columnValue: ReadValue): Operand {
  const rowNumber = toNumber(rowValue);
  const columnNumber = toNumber(columnValue);
  if (isCellError(rowNumber)) return plainValue(rowNumber);
  if (isCellError(columnNumber)) return plainValue(columnNumber);
  const row = Math.trunc(rowNumber);
  const column = Math.trunc(columnNumber);
  if (row < 0 || column < 0) return plainValue(errorOf('#VALUE!'));
  if (from.kind === 'range') {
    if (column > 1 || row > from.values.length) return plainValue(errorOf('#REF!'));
    return row === 0 ? from : { kind: 'cell', value: withoutMessage(from.values[row - 1] ?? null) };
  }
  return from.kind === 'list' ? pickFromList(from.rows, row, column) : pickFromOne(from, row, column);
}

function pickFromOne(from: Operand, row: number, column: number): Operand {
  const value = singleValue(from);
  return isCellError(value) || (row <= 1 && column <= 1) ? from : plainValue(errorOf('#REF!'));
}

function pickFromList(rows: readonly (readonly ReadValue[])[], row: number, column: number): Operand {
  const isOneRow = rows.length === 1 && column === 0;
  const [down, across] = isOneRow ? [1, row] : [row, column];
  const width = rows[0]?.length ?? 0;
  if (down > rows.length || across > width) return plainValue(errorOf('#REF!'));
  const chosen = down === 0 ? rows : [rows[down - 1] ?? []];
  const cut = across === 0 ? chosen : chosen.map((cells) => [cells[across - 1] ?? null]);
  return { kind: 'list', rows: cut };
}
