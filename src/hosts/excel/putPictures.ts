/// <reference types="office-js" />

import { askExcel } from './askExcel';
import type { PlannedPicture } from './planChange';
import { rangeOf } from './readCells';
import { bytesPerAction, step, type WriteStep } from './writeSteps';

const pointsPerPixel = 0.75;

/** The writes that put pictures at their cells; asks first where on the sheet those are. @throws HostError */
export async function pictureSteps(
  excel: typeof Excel,
  planned: readonly PlannedPicture[],
): Promise<WriteStep[]> {
  if (planned.length === 0) return [];
  const places = await askExcel(excel, 'read', (context) => {
    const cells = planned.map(({ picture: { row, column }, at }) =>
      rangeOf(context, { sheet: at, row, column, rows: 1, columns: 1 }).load('left,top'),
    );
    return () => cells.map(({ left, top }) => ({ left, top }));
  });
  return planned.map(({ picture, at, name }, i) => {
    const image = toBase64(picture.png);
    return {
      bytes: image.length + 8 * bytesPerAction,
      write({ workbook }) {
        const shape = workbook.worksheets.getItem(at).shapes.addImage(image);
        shape.name = name;
        shape.lockAspectRatio = false;
        shape.left = places[i]?.left ?? 0;
        shape.top = places[i]?.top ?? 0;
        shape.width = picture.widthPx * pointsPerPixel;
        shape.height = picture.heightPx * pointsPerPixel;
        shape.altTextDescription = picture.altText;
      },
    };
  });
}

/** A picture on a sheet that was there. */
export interface PlacedPicture {
  readonly at: string;
  readonly name: string;
  readonly becomes: string;
}

/** The pictures of them that are on their sheets, and whether another has the name that each is to get. */
export async function findPictures(
  excel: typeof Excel,
  placed: readonly PlacedPicture[],
): Promise<readonly (PlacedPicture & { readonly isNameTaken: boolean })[]> {
  if (placed.length === 0) return [];
  const names = await askExcel(excel, 'read', ({ workbook }) => {
    const shapes = placed.map(({ at }) => workbook.worksheets.getItem(at).shapes.load('items/name'));
    return () => shapes.map(({ items }) => items.map(({ name }) => name));
  });
  return placed.flatMap((picture, i) =>
    names[i]?.includes(picture.name) ? [{ ...picture, isNameTaken: names[i].includes(picture.becomes) }] : [],
  );
}

/** The writes, for when the change is whole, that give pictures their names in place of those that have them. */
export async function namingSteps(
  excel: typeof Excel,
  placed: readonly PlacedPicture[],
): Promise<WriteStep[]> {
  const found = await findPictures(
    excel,
    placed.filter(({ name, becomes }) => name !== becomes),
  );
  return found.flatMap(({ at, name, becomes, isNameTaken }) => [
    ...(isNameTaken ? [removePicture(at, becomes)] : []),
    step(1, ({ workbook }) => (workbook.worksheets.getItem(at).shapes.getItem(name).name = becomes)),
  ]);
}

export function removePicture(at: string, name: string): WriteStep {
  return step(2, ({ workbook }) => workbook.worksheets.getItem(at).shapes.getItem(name).delete());
}

function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}
