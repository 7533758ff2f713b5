/// <reference types="office-js" />

import { askExcel } from './askExcel';
import type { PlannedPicture } from './planChange';
import { rangeOf } from './readCells';
import { bytesPerAction, type WriteStep } from './writeSteps';

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

function toBase64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}
