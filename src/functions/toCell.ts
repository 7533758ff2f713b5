/** What the spreadsheet program gets back from a wrapper: a value, a formatted number, or its own error object. */
import type { CellFault, FunctionDefinition, Scalar } from './define';

let takesFormats = (): boolean => false;

/**
 * Has `ask` asked, once and not before the first dated result, whether the program takes a number together with
 * its number format. Until then, and where it does not, a date goes back as its bare serial number.
 */
export function formatResultsIf(ask: () => boolean): void {
  let answer: boolean | undefined;
  takesFormats = () => (answer ??= ask());
}

/** Only #VALUE! and #N/A can carry a message; #NUM! is shown bare. */
function cellError(fault: CellFault): CustomFunctions.Error {
  const codes = {
    '#VALUE!': CustomFunctions.ErrorCode.invalidValue,
    '#N/A': CustomFunctions.ErrorCode.notAvailable,
    '#NUM!': CustomFunctions.ErrorCode.invalidNumber,
  } as const;
  return new CustomFunctions.Error(codes[fault.error], fault.error === '#NUM!' ? undefined : fault.message);
}

/** @throws CustomFunctions.Error, which the program shows as the cell's error */
export function toCell(definition: FunctionDefinition, args: readonly unknown[]): unknown {
  const outcome = definition.run(args);
  if ('error' in outcome) throw cellError(outcome);
  const { value, pattern } = outcome;
  if (pattern === undefined || !takesFormats()) return value;
  const formatted = (one: Scalar): unknown =>
    typeof one === 'number' ? { type: 'Double', basicValue: one, numberFormat: pattern } : one;
  return Array.isArray(value) ? value.map((row) => row.map(formatted)) : formatted(value);
}

/**
 * What a function that spills gives back. `any`, because the generator of functions.json takes the wrapper's declared
 * type, and for cells of several kinds it knows no other.
 * @throws CustomFunctions.Error
 */
export function toCells(definition: FunctionDefinition, args: readonly unknown[]): any[][] {
  return toCell(definition, args) as any[][];
}
