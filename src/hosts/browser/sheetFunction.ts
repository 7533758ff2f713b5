/** Our functions as functions of the engine. */
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from '@univerjs/engine-formula';
import { packMessage } from './errorMessage';

type Scalar = number | string | boolean;

/**
 * What an entry hands in. Arguments come as values, null for an omitted one or an empty cell, ranges as rows. The
 * rows of a range may be the same object in several calls, and are not to be changed.
 */
export interface SheetFunction {
  /** Without the namespace. */
  readonly id: string;
  run(
    args: readonly unknown[],
  ):
    | { readonly value: Scalar | Scalar[][]; readonly pattern?: string }
    | { readonly error: '#N/A' | '#VALUE!' | '#NUM!'; readonly message: string };
}

const errorTypes = { '#N/A': ErrorType.NA, '#VALUE!': ErrorType.VALUE, '#NUM!': ErrorType.NUM } as const;

export class SheetFunctionExecutor extends BaseFunction {
  override minParams = 0;
  override maxParams = 255;

  constructor(
    name: string,
    private readonly sheetFunction: SheetFunction,
  ) {
    super(name);
  }

  /** Left to itself the engine makes numbers of written texts that look like dates, in the order of the US. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  /** Never throws: the engine would stop calculating for good. */
  override calculate(...variants: BaseValueObject[]): BaseValueObject {
    try {
      const failed = variants.map(single).find((variant) => variant.isError());
      if (failed !== undefined) return failed;
      const outcome = this.sheetFunction.run(variants.map(argumentOf));
      if ('error' in outcome) return errorResult(errorTypes[outcome.error], outcome.message);
      return resultOf(outcome.value, outcome.pattern);
    } catch (error) {
      return errorResult(ErrorType.VALUE, String(error));
    }
  }
}

/** An object of its own: `create` hands out one object for all errors of a kind. */
function errorResult(type: ErrorType, message: string): ErrorValueObject {
  const error = new ErrorValueObject(type);
  error.withCustomData(packMessage(message));
  return error;
}

/** A reference to one cell comes as an array of one; it is that cell. */
function single(variant: BaseValueObject): BaseValueObject {
  if (!variant.isArray()) return variant;
  const array = variant as ArrayValueObject;
  if (array.getRowCount() !== 1 || array.getColumnCount() !== 1) return variant;
  return array.get(0, 0) ?? variant;
}

function argumentOf(variant: BaseValueObject): unknown {
  if (!variant.isArray()) return scalarOf(variant);
  const rows = rowsOf(variant as ArrayValueObject);
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

/** The engine has one object for a range in all of a calculation, and another one in the next. */
const rowsOfRanges = new WeakMap<ArrayValueObject, readonly (readonly unknown[])[]>();

function rowsOf(range: ArrayValueObject): readonly (readonly unknown[])[] {
  const known = rowsOfRanges.get(range);
  if (known !== undefined) return known;
  const rows = range.getArrayValue().map((row) => row.map((cell) => (cell == null ? null : scalarOf(cell))));
  rowsOfRanges.set(range, rows);
  return rows;
}

function scalarOf(cell: BaseValueObject): unknown {
  if (cell.isError()) return { error: String(cell.getValue()), message: null };
  return cell.isNull() ? null : cell.getValue();
}

function resultOf(value: Scalar | Scalar[][], pattern: string | undefined): BaseValueObject {
  if (!Array.isArray(value)) return scalarResult(value, pattern);
  const rows = value.map((row) => row.map((cell) => scalarResult(cell, pattern)));
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

function scalarResult(value: Scalar, pattern: string | undefined): BaseValueObject {
  if (typeof value === 'string') return StringValueObject.create(value);
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  return NumberValueObject.create(value, pattern ?? '');
}
