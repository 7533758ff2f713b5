import { ICommandService, type IAccessor, type IRange, type Nullable, type Workbook } from '@univerjs/core';
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from '@univerjs/engine-render';
import {
  ScrollToCellOperation,
  SetSelectionsOperation,
  type ISetSelectionsOperationParams,
} from '@univerjs/sheets';
import {
  ScrollCommand,
  ScrollToCellCommand,
  ScrollToRangeOperation,
  SheetSkeletonManagerService,
} from '@univerjs/sheets-ui';
import { scrollAlong } from './scrollAlong';

/** The scroll bars lie over the cells. */
const barPx = 12;

const scrolling: ReadonlySet<string> = new Set([
  ScrollToCellCommand.id,
  ScrollToCellOperation.id,
  ScrollToRangeOperation.id,
]);

/**
 * Beside frozen columns the engine's own scrolling stops short of a far cell, in the name box, by keys and where somebody
 * begins to type; a cell out of sight lost what was typed into it but for the first letter.
 */
export function scrollWhole(accessor: IAccessor, workbook: Workbook): void {
  accessor.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (scrolling.has(id)) scrollIntoSight(accessor, workbook, (params as { range: IRange }).range);
    if (id !== SetSelectionsOperation.id) return;
    const { unitId, reveal, selections } = params as ISetSelectionsOperationParams;
    const cell = selections.at(-1)?.primary;
    if (unitId === workbook.getUnitId() && reveal === true && cell != null)
      scrollIntoSight(accessor, workbook, cell);
  });
}

/** Scrolls the sheet that is shown until the whole range is in sight, beside frozen rows and columns. */
export function scrollIntoSight(accessor: IAccessor, workbook: Workbook, range: IRange): void {
  const render = accessor.get(IRenderManagerService).getRenderById(workbook.getUnitId());
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  const viewport = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  if (skeleton == null || viewport == null) return;
  const sheet = workbook.getActiveSheet();
  const { xSplit, ySplit } = sheet.getFreeze();
  const roomIn = (size: Nullable<number>): number => (size ?? 0) / sheet.getZoomRatio() - barPx;
  const across = {
    ends: skeleton.columnWidthAccumulation,
    frozen: xSplit,
    room: roomIn(viewport.width),
    at: viewport.viewportScrollX,
  };
  const down = {
    ends: skeleton.rowHeightAccumulation,
    frozen: ySplit,
    room: roomIn(viewport.height),
    at: viewport.viewportScrollY,
  };
  // As a distance from the first cell: the engine finds by itself which row and column that is.
  accessor.get(ICommandService).syncExecuteCommand(ScrollCommand.id, {
    sheetViewStartColumn: 0,
    offsetX: scrollAlong(across, range.startColumn, range.endColumn),
    sheetViewStartRow: 0,
    offsetY: scrollAlong(down, range.startRow, range.endRow),
  });
}
