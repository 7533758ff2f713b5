import { ourFormulas } from '../../workbook/ourFormulas';
import type { Reentered } from '../../workbook/port';
import { formulaData } from './cellData';
import { putCells, type CellMatrix } from './cellSteps';
import type { Engine } from './engine';
import { demandSheet, listSheets, readArea } from './readWorkbook';
import { writeAsOne, type WriteStep } from './writeSteps';

/** One undo step. @throws HostError; then nothing was written */
export function reenterFormulas(engine: Engine, title: string, onWrite: (step: string) => void): Reentered {
  const locked: string[] = [];
  const steps: WriteStep[] = [];
  let count = 0;
  for (const sheet of listSheets(engine)) {
    const runs =
      sheet.used === null ? [] : ourFormulas(readArea(engine, sheet.used), sheet.used, engine.namespace);
    if (runs.length === 0) continue;
    if (sheet.locked) {
      locked.push(sheet.name);
      continue;
    }
    const cells: CellMatrix = {};
    for (const { row, column, formulas } of runs) {
      formulas.forEach((formula, i) => ((cells[row + i] ??= {})[column] = formulaData(formula)));
      count += formulas.length;
    }
    steps.push(putCells(engine, demandSheet(engine, sheet.name).getSheetId(), cells));
  }
  writeAsOne(engine, title, () => steps, onWrite);
  return { cells: count, locked };
}
