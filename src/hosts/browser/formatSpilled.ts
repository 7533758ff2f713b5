import { InterceptorEffectEnum, type IAccessor } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';

/** Between what fills in a spilled value (100) and what writes a value in its format (0). */
const priority = 50;

/**
 * A list of dates comes with its format in every cell, and the engine uses that of the first cell alone: the others
 * would show as serial numbers. A cell with a look of its own keeps it.
 */
export function formatSpilled(accessor: IAccessor): void {
  const formulas = accessor.get(FormulaDataModel);
  accessor.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style | InterceptorEffectEnum.Value,
    handler(cell, { unitId, subUnitId, row, col }, next) {
      const spilled = formulas.getArrayFormulaCellData()[unitId]?.[subUnitId]?.[row]?.[col];
      return next(spilled?.s == null || cell == null || cell.s != null ? cell : { ...cell, s: spilled.s });
    },
  });
}
