/** Writes that bring in a new sheet and what hangs on it. */
import {
  DataValidationErrorStyle,
  DataValidationRenderMode,
  DataValidationType,
  generateRandomId,
  type ISheetDataValidationRule,
} from '@univerjs/core';
import { AddDataValidationMutation, RemoveDataValidationMutation } from '@univerjs/data-validation';
import { RemoveDefinedNameMutation, SetDefinedNameMutation } from '@univerjs/engine-formula';
import { InsertSheetMutation, RemoveSheetMutation, serializeListOptions } from '@univerjs/sheets';
import { RemoveNoteMutation, UpdateNoteMutation } from '@univerjs/sheets-note';
import { absoluteAddress } from '../../workbook/cellAddress';
import type { NamedPlace, NewSheet, Note, PickList } from '../../workbook/port';
import { findName } from './definedNames';
import type { Engine } from './engine';
import { addRule } from './ruleSteps';
import { rangeOf } from './rangeOf';
import { takeSnapshot } from './sheetSnapshot';
import { addTable } from './tableSteps';
import type { WriteStep } from './writeSteps';

export function addSheet(engine: Engine, newSheet: NewSheet, sheetId: string): WriteStep[] {
  const { unitId } = engine;
  const tableIds = newSheet.tables.map(() => generateRandomId());
  const { sheet, styles } = takeSnapshot(newSheet, sheetId, tableIds, engine.namespace);
  const insert: WriteStep = {
    name: 'sheet',
    mutations: () => ({
      redo: {
        id: InsertSheetMutation.id,
        params: { unitId, index: engine.workbook.getSheets().length, sheet, styles },
      },
      undo: {
        id: RemoveSheetMutation.id,
        params: { unitId, subUnitId: sheetId, subUnitName: newSheet.name },
      },
    }),
  };
  return [
    insert,
    ...newSheet.tables.map((table, i) => addTable(engine, sheetId, tableIds[i] ?? generateRandomId(), table)),
    ...Object.entries(newSheet.names).map(([name, place]) => addName(engine, newSheet.name, name, place)),
    ...newSheet.lists.map((list) => addList(engine, sheetId, list)),
    ...newSheet.rules.map((rule) => addRule(engine, sheetId, rule)),
    ...newSheet.notes.map((note) => addNote(engine, sheetId, note)),
  ];
}

/** A name that a deleted sheet left behind is given its cell again. */
function addName(
  engine: Engine,
  sheetName: string,
  name: string,
  [row, column, rows]: NamedPlace,
): WriteStep {
  const dead = findName(engine, name);
  const params = {
    unitId: engine.unitId,
    id: dead?.id ?? generateRandomId(),
    name,
    formulaOrRefString: absoluteAddress(sheetName, row, column, rows),
    localSheetId: 'AllDefaultWorkbook',
  };
  return {
    name: 'name',
    mutations: () => ({
      redo: { id: SetDefinedNameMutation.id, params },
      undo:
        dead === null
          ? { id: RemoveDefinedNameMutation.id, params }
          : { id: SetDefinedNameMutation.id, params: dead },
    }),
  };
}

/** Warns of other entries and lets them in. */
function addList(engine: Engine, sheetId: string, list: PickList): WriteStep {
  const ambiguous = list.values.find((value) => value.includes(','));
  if (ambiguous !== undefined) throw new RangeError(`a list cannot offer "${ambiguous}"`);
  const rule: ISheetDataValidationRule = {
    uid: generateRandomId(),
    type: DataValidationType.LIST,
    formula1: serializeListOptions([...list.values]),
    allowBlank: true,
    showDropDown: true,
    renderMode: DataValidationRenderMode.ARROW,
    errorStyle: DataValidationErrorStyle.WARNING,
    // Shown at a cell that holds something else.
    showErrorMessage: true,
    error: offered(list.values),
    ranges: [rangeOf(list)],
  };
  const place = { unitId: engine.unitId, subUnitId: sheetId };
  return {
    name: 'list',
    mutations: () => ({
      redo: { id: AddDataValidationMutation.id, params: { ...place, rule } },
      undo: { id: RemoveDataValidationMutation.id, params: { ...place, ruleId: rule.uid } },
    }),
  };
}

const mostOffered = 12;

function offered(values: readonly string[]): string {
  const more = values.length > mostOffered ? ', …' : '';
  return `${values.slice(0, mostOffered).join(', ')}${more}`;
}

const noteWidthPx = 240;
const charactersPerLine = 36;
const lineHeightPx = 20;

function addNote(engine: Engine, sheetId: string, { row, column, text }: Note): WriteStep {
  const lines = text
    .split('\n')
    .reduce((sum, line) => sum + Math.ceil((line.length + 1) / charactersPerLine), 0);
  const id = generateRandomId();
  const place = { unitId: engine.unitId, sheetId, row, col: column };
  const note = { id, row, col: column, width: noteWidthPx, height: (lines + 1) * lineHeightPx, note: text };
  return {
    name: 'note',
    mutations: () => ({
      redo: { id: UpdateNoteMutation.id, params: { ...place, note } },
      undo: { id: RemoveNoteMutation.id, params: { ...place, noteId: id } },
    }),
  };
}
