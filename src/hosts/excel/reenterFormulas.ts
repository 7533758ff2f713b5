/// <reference types="office-js" />

import { ourFormulas } from '../../workbook/ourFormulas';
import type { Reentered } from '../../workbook/port';
import { cellsRead } from './cellContents';
import { readCells } from './readCells';
import { surveyWorkbook } from './surveyWorkbook';
import { cellSteps, sendSteps } from './writeSteps';

/** Needs no journal: a cell entered again holds what it held. @throws HostError */
export async function reenterFormulas(
  excel: typeof Excel,
  namespace: string,
  title: string,
): Promise<Reentered> {
  const { sheets } = await surveyWorkbook(excel);
  const areas = sheets.flatMap(({ used }) => used ?? []);
  const cells = await readCells(excel, areas);
  const found = areas.flatMap((area, i) => {
    const raw = cells[i];
    return raw === undefined
      ? []
      : ourFormulas(cellsRead(raw), area, namespace).map((run) => ({ sheet: area.sheet, ...run }));
  });
  const locked = sheets.filter((sheet) => sheet.isLocked && found.some((run) => run.sheet === sheet.name));
  const open = found.filter((run) => !locked.some(({ name }) => name === run.sheet));
  const steps = open.flatMap(({ formulas, ...at }) =>
    cellSteps(
      { ...at, rows: formulas.length, columns: 1 },
      formulas.map((formula) => [formula]),
    ),
  );
  await sendSteps(excel, title, steps);
  return {
    cells: open.reduce((sum, { formulas }) => sum + formulas.length, 0),
    locked: locked.map(({ name }) => name),
  };
}
