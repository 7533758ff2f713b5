/** Pictures that lie over the cells. */
import { DrawingTypeEnum, generateRandomId, ImageSourceType, type Worksheet } from '@univerjs/core';
import {
  DrawingApplyType,
  ISheetDrawingService,
  SetDrawingApplyMutation,
  SheetDrawingAnchorType,
  type ISheetImage,
} from '@univerjs/sheets-drawing';
import type { Picture } from '../../workbook/port';
import type { Engine } from './engine';
import { findSheet } from './readWorkbook';
import type { WriteStep } from './writeSteps';

/** The engine carries a title along and does not type it. */
interface NamedImage extends ISheetImage {
  readonly title: string;
}

/** The engine types this as unknown. */
interface BatchOperation {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly undo: unknown;
  readonly redo: unknown;
  readonly objects: unknown;
}

/** Takes off the pictures of that name that lie on the sheet. */
export function removePictures(engine: Engine, { sheet, name }: Picture): WriteStep[] {
  const subUnitId = findSheet(engine, sheet)?.getSheetId();
  if (subUnitId === undefined) return [];
  const { unitId } = engine;
  const drawings = engine.accessor.get(ISheetDrawingService);
  return Object.values(drawings.getDrawingData(unitId, subUnitId) ?? {})
    .filter((drawing) => (drawing as NamedImage).title === name)
    .map(({ drawingId }) => ({
      name: 'picture',
      mutations() {
        const op = drawings.getBatchRemoveOp([{ unitId, subUnitId, drawingId }]) as BatchOperation;
        return applyOperation(op, DrawingApplyType.REMOVE, DrawingApplyType.INSERT);
      },
    }));
}

export function addPicture(engine: Engine, picture: Picture): WriteStep {
  return {
    name: 'picture',
    mutations() {
      // An earlier step may have made it.
      const worksheet = findSheet(engine, picture.sheet);
      if (worksheet === null) throw new Error(`no sheet ${picture.sheet}`);
      const drawing = drawingOf(engine.unitId, worksheet, picture);
      const op = engine.accessor.get(ISheetDrawingService).getBatchAddOp([drawing]) as BatchOperation;
      return applyOperation(op, DrawingApplyType.INSERT, DrawingApplyType.REMOVE);
    },
  };
}

function applyOperation(
  { unitId, subUnitId, redo, undo, objects }: BatchOperation,
  type: DrawingApplyType,
  undoType: DrawingApplyType,
): ReturnType<WriteStep['mutations']> {
  const { id } = SetDrawingApplyMutation;
  return {
    redo: { id, params: { unitId, subUnitId, op: redo, objects, type } },
    undo: { id, params: { unitId, subUnitId, op: undo, objects, type: undoType } },
  };
}

function drawingOf(unitId: string, worksheet: Worksheet, picture: Picture): NamedImage {
  const { row, column, widthPx, heightPx } = picture;
  const columnWidth = (index: number): number => worksheet.getColumnWidth(index);
  const rowHeight = (index: number): number => worksheet.getRowHeight(index);
  const end = { ...across(column, widthPx, columnWidth), ...down(row, heightPx, rowHeight) };
  const position = { from: { row, column, rowOffset: 0, columnOffset: 0 }, to: end, angle: 0 };
  const { rowHeader, columnHeader } = worksheet.getConfig();
  return {
    unitId,
    subUnitId: worksheet.getSheetId(),
    drawingId: generateRandomId(),
    drawingType: DrawingTypeEnum.DRAWING_IMAGE,
    imageSourceType: ImageSourceType.BASE64,
    source: `data:image/png;base64,${toBase64(picture.png)}`,
    title: picture.name,
    description: picture.altText,
    anchorType: SheetDrawingAnchorType.Position,
    transform: {
      left: rowHeader.width + sum(column, columnWidth),
      top: columnHeader.height + sum(row, rowHeight),
      width: widthPx,
      height: heightPx,
      angle: 0,
    },
    sheetTransform: position,
    axisAlignSheetTransform: position,
  } as NamedImage;
}

function sum(count: number, sizeOf: (index: number) => number): number {
  return Array.from({ length: count }, (_, index) => sizeOf(index)).reduce((total, size) => total + size, 0);
}

function across(from: number, px: number, sizeOf: (index: number) => number) {
  const { index, offset } = walk(from, px, sizeOf);
  return { column: index, columnOffset: offset };
}

function down(from: number, px: number, sizeOf: (index: number) => number) {
  const { index, offset } = walk(from, px, sizeOf);
  return { row: index, rowOffset: offset };
}

function walk(
  from: number,
  px: number,
  sizeOf: (index: number) => number,
): { index: number; offset: number } {
  let index = from;
  let offset = px;
  while (sizeOf(index) > 0 && offset > sizeOf(index)) offset -= sizeOf(index++);
  return { index, offset };
}

function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}
