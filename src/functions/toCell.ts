/** What the spreadsheet program gets back from a wrapper: a value, a formatted number, or its own error object. */
import type { CellFault, FunctionDefinition } from './define';

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
  return outcome.value;
}
