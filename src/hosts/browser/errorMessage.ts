/**
 * What one of our functions said about its error travels with that error: through the formula into the result, and
 * with the result into the cell. So a cell has the words of the very call whose error it shows.
 */
import {
  ICommandService,
  ObjectMatrix,
  type CustomData,
  type IAccessor,
  type ICellData,
  type Nullable,
} from '@univerjs/core';
import {
  SetFormulaCalculationResultMutation,
  type ISetFormulaCalculationResultMutation,
} from '@univerjs/engine-formula';

export function packMessage(message: string): CustomData {
  return { message };
}

/** null when the error is not one of ours, or was only passed on. */
export function messageIn(cell: ICellData): string | null {
  const message: unknown = cell.custom?.['message'];
  return typeof message === 'string' ? message : null;
}

/** A result without words would leave those of the earlier result in the cell. */
export function forgetOldMessages(accessor: IAccessor): void {
  accessor.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationResultMutation.id) return;
    const { unitData } = params as ISetFormulaCalculationResultMutation;
    for (const sheets of Object.values(unitData)) {
      for (const cells of Object.values(sheets ?? {})) {
        new ObjectMatrix<Nullable<ICellData>>(cells ?? {}).forValue((_, __, cell) => {
          if (cell != null) cell.custom ??= null;
        });
      }
    }
  });
}
