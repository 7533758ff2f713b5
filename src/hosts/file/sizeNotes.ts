import type { Note } from '../../workbook/port';
import { countLines } from './countLines';

/** Pixels of the usual 11-point font. */
const pxPerCharacter = 7;
const columnPaddingPx = 5;
const rowPx = 20;
const noteLinePx = 18;
const noteCharacters = 46;
const notePaddingPx = 20;
const defaultColumnCharacters = 9;
const ptPerPx = 0.75;

interface Reach {
  readonly cell: number;
  readonly px: number;
}

/** Sizes each note's box to its text: the library gives all of them one size, too small to read. */
export function sizeNotes(vml: string, notes: readonly Note[], widths: readonly number[]): string {
  return vml.replace(/<v:shape [\s\S]*?<\/v:shape>/g, (shape) => {
    const row = Number(/<x:Row>(\d+)</.exec(shape)?.[1]);
    const column = Number(/<x:Column>(\d+)</.exec(shape)?.[1]);
    const note = notes.find((each) => each.row === row && each.column === column);
    if (note === undefined) return shape;
    const width = noteCharacters * pxPerCharacter + notePaddingPx;
    const height = countLines(note.text, noteCharacters) * noteLinePx + notePaddingPx;
    const from = { cell: column + 1, px: 12 };
    const right = reach(from, width, (cell) => columnPx(widths, cell));
    const bottom = reach({ cell: row, px: 4 }, height, () => rowPx);
    const anchor = [from.cell, from.px, row, 4, right.cell, right.px, bottom.cell, bottom.px].join(', ');
    return shape
      .replace(/width:[\d.]+pt;height:[\d.]+pt/, `width:${width * ptPerPx}pt;height:${height * ptPerPx}pt`)
      .replace(/<x:Anchor>[^<]*<\/x:Anchor>/, `<x:Anchor>${anchor}</x:Anchor>`);
  });
}

function columnPx(widths: readonly number[], column: number): number {
  return (widths[column] ?? defaultColumnCharacters) * pxPerCharacter + columnPaddingPx;
}

/** In which cell a box of that size ends, and how far into it. */
function reach(from: Reach, size: number, sizeOf: (cell: number) => number): Reach {
  let { cell, px } = { cell: from.cell, px: from.px + size };
  while (px > sizeOf(cell)) px -= sizeOf(cell++);
  return { cell, px: Math.round(px) };
}
