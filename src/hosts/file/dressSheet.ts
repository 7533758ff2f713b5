import type exceljs from 'exceljs';
import { borderColor, formatCodes, isIndented, looks, shades, type Look } from '../../workbook/appearance';
import { cellAddress } from '../../workbook/cellAddress';
import type { Dressing } from '../../workbook/port';
import { printText } from '../../workbook/printFormula';
import type { SheetState } from './bookState';

/** Role and format of every dressed cell; where two dressings meet, the later one holds. */
export function dressSheet(to: exceljs.Worksheet, sheet: SheetState): void {
  // One object per kind of cell, so that the library stores one style for all of them.
  const styles = new Map<string, Partial<exceljs.Style>>();
  for (const dressing of sheet.dressings) {
    const key = `${dressing.role} ${dressing.format}`;
    const style = styles.get(key) ?? styleOf(dressing);
    styles.set(key, style);
    for (let row = dressing.row; row < dressing.row + dressing.rows; row++) {
      for (let column = dressing.column; column < dressing.column + dressing.columns; column++) {
        to.getCell(row + 1, column + 1).style = style;
      }
    }
  }
}

/** Where two rules meet, the earlier one holds. */
export function addRules(to: exceljs.Worksheet, { rules }: SheetState): void {
  rules.forEach(({ row, column, rows, columns, equals, shade }, index) => {
    const { color, fill } = shades[shade];
    to.addConditionalFormatting({
      ref: `${cellAddress(row, column)}:${cellAddress(row + rows - 1, column + columns - 1)}`,
      rules: [
        {
          type: 'cellIs',
          operator: 'equal',
          formulae: [printText(equals)],
          priority: index + 1,
          style: {
            font: { color: { argb: `FF${color}` } },
            // Of a rule's solid fill programs show the color that is a cell's background.
            fill: { type: 'pattern', pattern: 'solid', bgColor: { argb: `FF${fill}` } },
          },
        },
      ],
    });
  });
}

/** Cells share their styles, so one with a format of its own gets a style of its own. */
export function putFormat(cell: exceljs.Cell, numFmt: string): void {
  cell.style = { ...cell.style, numFmt };
}

function styleOf({ role, format }: Dressing): Partial<exceljs.Style> {
  const look = looks[role];
  return {
    numFmt: formatCodes[format],
    font: {
      name: 'Calibri',
      size: look.sizePt,
      bold: look.bold,
      italic: look.italic,
      color: { argb: `FF${look.color}` },
    },
    alignment: {
      vertical: 'middle',
      wrapText: look.wrap,
      ...(look.centred ? { horizontal: 'center' } : {}),
      ...(isIndented({ role, format }) ? { horizontal: 'left', indent: 1 } : {}),
    },
    ...(look.fill === null ? {} : { fill: solid(look.fill) }),
    ...(look.border ? { border: allSides } : {}),
  };
}

function solid(color: Look['color']): exceljs.Fill {
  return { type: 'pattern', pattern: 'solid', fgColor: { argb: `FF${color}` } };
}

const thin: exceljs.Border = { style: 'thin', color: { argb: `FF${borderColor}` } };
const allSides: exceljs.Borders = {
  top: thin,
  left: thin,
  bottom: thin,
  right: thin,
  diagonal: {},
};
