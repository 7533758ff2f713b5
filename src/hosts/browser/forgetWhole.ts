import type { IAccessor, Workbook } from '@univerjs/core';
import { IActiveDirtyManagerService, SetSuperTableMutation } from '@univerjs/engine-formula';

/**
 * When a table changes its range the engine forgets what the formulas of that table's sheet read, but only where they
 * read their own sheet: what they read elsewhere stays behind and slows every later calculation. So it forgets all
 * sheets, and takes them up anew at the next calculation.
 */
export function forgetWhole(accessor: IAccessor, workbook: Workbook): void {
  const dirt = accessor.get(IActiveDirtyManagerService);
  const ofTable = dirt.get(SetSuperTableMutation.id);
  if (ofTable == null) throw new Error('the engine does not say what a changed table spoils');
  dirt.register(SetSuperTableMutation.id, {
    ...ofTable,
    getDirtyData: (command) => ({
      ...ofTable.getDirtyData(command),
      clearDependencyTreeCache: {
        [workbook.getUnitId()]: Object.fromEntries(
          workbook.getSheets().map((sheet) => [sheet.getSheetId(), '1']),
        ),
      },
    }),
  });
}
