/** Marks sheets that exist anew. The engine has no write of its own for what we keep with a sheet. */
import { CommandType, IUniverInstanceService, type IMutation, type Workbook } from '@univerjs/core';
import type { Change, Mark } from '../../workbook/port';
import type { Engine } from './engine';
import { demandSheet } from './readWorkbook';
import { customOf, setMark } from './sheetCustom';
import type { WriteStep } from './writeSteps';

interface MarkParams {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly mark: Mark | null;
}

export const SetMarkMutation: IMutation<MarkParams> = {
  id: 'workbook.mutation.set-mark',
  type: CommandType.MUTATION,
  handler(accessor, { unitId, subUnitId, mark }) {
    const workbook = accessor.get(IUniverInstanceService).getUnit<Workbook>(unitId);
    const worksheet = workbook?.getSheetBySheetId(subUnitId);
    if (worksheet == null) return false;
    setMark(worksheet, mark);
    return true;
  },
};

export function markSteps(engine: Engine, marks: Change['marks']): WriteStep[] {
  return marks.map(({ sheet, mark }) => {
    const worksheet = demandSheet(engine, sheet);
    const place = { unitId: engine.unitId, subUnitId: worksheet.getSheetId() };
    const set = (given: Mark | null) => ({ id: SetMarkMutation.id, params: { ...place, mark: given } });
    return { name: 'mark', mutations: () => ({ redo: set(mark), undo: set(customOf(worksheet).mark) }) };
  });
}
