import type { IAccessor, IRange, IUnitRange, Workbook } from '@univerjs/core';
import {
  IActiveDirtyManagerService,
  SetSuperTableMutation,
  type ISetSuperTableMutationParam,
} from '@univerjs/engine-formula';

type Reference = ISetSuperTableMutationParam['reference'];

/**
 * What a table that changes its range spoils.
 *
 * The engine forgets what the formulas of that table's sheet read, but only where they read their own sheet: what they
 * read elsewhere stays behind and slows every later calculation. So it forgets all sheets, and takes them up anew at the
 * next calculation.
 *
 * And it calculates every formula in the table again. Where only lines came or went at the end, those that read a whole
 * column differ, and they read its last line.
 */
export function forgetWhole(accessor: IAccessor, workbook: Workbook): void {
  const dirt = accessor.get(IActiveDirtyManagerService);
  const ofTable = dirt.get(SetSuperTableMutation.id);
  if (ofTable == null) throw new Error('the engine does not say what a changed table spoils');
  const before = new Map<string, Reference>();
  dirt.register(SetSuperTableMutation.id, {
    ...ofTable,
    getDirtyData: (command) => {
      const { unitId, tableName, reference } = command.params as ISetSuperTableMutationParam;
      const lines = linesThatCameOrWent(before.get(tableName), reference);
      before.set(tableName, { ...reference, range: { ...reference.range } });
      const dirtyRanges: IUnitRange[] | null = lines && [
        { unitId, sheetId: reference.sheetId, range: { ...reference.range, ...lines } },
      ];
      return {
        ...ofTable.getDirtyData(command),
        ...(dirtyRanges && { dirtyRanges }),
        clearDependencyTreeCache: {
          [workbook.getUnitId()]: Object.fromEntries(
            workbook.getSheets().map((sheet) => [sheet.getSheetId(), '1']),
          ),
        },
      };
    },
  });
}

/** The rows between the ends of the table before and now, both included; null where more than its end has changed. */
function linesThatCameOrWent(
  before: Reference | undefined,
  now: Reference,
): Pick<IRange, 'startRow' | 'endRow'> | null {
  if (before === undefined) return null;
  const withoutEnd = ({ sheetId, range, titleMap }: Reference): string =>
    JSON.stringify([sheetId, range.startRow, range.startColumn, range.endColumn, [...titleMap]]);
  if (withoutEnd(before) !== withoutEnd(now)) return null;
  const ends = [before.range.endRow, now.range.endRow];
  return { startRow: Math.min(...ends), endRow: Math.max(...ends) };
}
