/** A workbook over a started engine. */
import {
  CommandType,
  ICommandService,
  RedoCommand,
  UndoCommand,
  type IRange,
  type Worksheet,
} from '@univerjs/core';
import {
  SetSelectionsOperation,
  SetWorksheetActivateCommand,
  SheetsSelectionsService,
} from '@univerjs/sheets';
import { HostError, type Area, type LiveWorkbook } from '../../workbook/port';
import { applyChange } from './applyChange';
import { isCalculationTalk, watchCalculation } from './calculation';
import type { Engine } from './engine';
import { findFormulaFault } from './findFormulaFault';
import { FreshNames } from './freshNames';
import { growTables } from './growTables';
import { SetMarkMutation } from './markSteps';
import { demandSheet, listSheets, locateName, readArea, readTable } from './readWorkbook';
import { reenterFormulas } from './reenterFormulas';
import { snapshotWorkbook } from './snapshot';
import { stampOf } from './stamps';
import { spanOf } from './tables';

export interface BrowserWorkbook extends LiveWorkbook {
  /** @returns the title of the change that was undone; "" for what people did in the grid, null when nothing was */
  undo(): Promise<string | null>;
  redo(): Promise<string | null>;
  /** All of it as a text, from which a workbook can be opened again. What can be undone is not in it. */
  snapshot(): string;
  /** Somebody did what can be undone; not what the engine does by itself. */
  onEdit(listener: () => void): () => void;
  /** Anything that a snapshot holds has changed. */
  onMutation(listener: () => void): () => void;
  dispose(): void;
}

export interface WorkbookHooks {
  readonly onWrite: (step: string) => void;
  /** Brings a selected range into sight. */
  readonly scrollTo: (range: IRange) => void;
}

/** Changes of one run come closer together than this. */
const runGapMs = 50;

export function openWorkbook(engine: Engine, hooks: WorkbookHooks): BrowserWorkbook {
  const commands = engine.accessor.get(ICommandService);
  const selections = engine.accessor.get(SheetsSelectionsService);
  const calculation = watchCalculation(engine);
  growTables(engine);
  commands.registerCommand(SetMarkMutation);
  const freshNames = new FreshNames(engine);
  let lastChange: Promise<unknown> = Promise.resolve();

  const areaOf = (worksheet: Worksheet, range: IRange): Area => ({
    sheet: worksheet.getName(),
    ...spanOf(range),
  });
  const selectedArea = (): Area | null => {
    const range = selections.getCurrentLastSelection()?.range;
    return range === undefined ? null : areaOf(engine.workbook.getActiveSheet(), range);
  };

  function inTurn<T>(action: () => T): Promise<T> {
    const done = lastChange.then(action);
    lastChange = done.catch(() => undefined);
    return done;
  }

  return {
    sheets: async () => listSheets(engine),
    read: async (area) => readArea(engine, area),
    readTable: async (name) => readTable(engine, name),
    locate: async (name) => locateName(engine, name),
    stamp: async (sheet) => stampOf(engine, demandSheet(engine, sheet)),
    apply: (change, progress = () => undefined) =>
      inTurn(() => {
        freshNames.expect(change.newSheets);
        applyChange(engine, change, hooks.onWrite, progress);
      }),
    settle: (timeoutMs) => calculation.settle(timeoutMs),

    reenterFormulas: (title) => inTurn(() => reenterFormulas(engine, title, hooks.onWrite)),
    selection: async () => selectedArea(),
    onSelection(listener) {
      const subscription = selections.selectionChanged$.subscribe(() => {
        const area = selectedArea();
        if (area !== null) listener(area);
      });
      return () => subscription.unsubscribe();
    },
    onChange(listener) {
      let timer: ReturnType<typeof setTimeout> | undefined;
      const listening = commands.onCommandExecuted((command) => {
        if (command.type !== CommandType.MUTATION || !changesContent(command.id)) return;
        clearTimeout(timer);
        timer = setTimeout(listener, runGapMs);
      });
      return () => {
        clearTimeout(timer);
        listening.dispose();
      };
    },
    async reveal(area) {
      const worksheet = demandSheet(engine, area.sheet);
      const place = { unitId: engine.unitId, subUnitId: worksheet.getSheetId() };
      const range: IRange = {
        startRow: area.row,
        endRow: area.row + area.rows - 1,
        startColumn: area.column,
        endColumn: area.column + area.columns - 1,
      };
      const isShown =
        (await commands.executeCommand(SetWorksheetActivateCommand.id, place)) &&
        (await commands.executeCommand(SetSelectionsOperation.id, {
          ...place,
          selections: [
            {
              range,
              primary: {
                startRow: area.row,
                endRow: area.row,
                startColumn: area.column,
                endColumn: area.column,
                actualRow: area.row,
                actualColumn: area.column,
                isMerged: false,
                isMergedMainCell: false,
              },
              style: null,
            },
          ],
        }));
      if (!isShown) throw new HostError({ code: 'failed', action: 'reveal' });
      hooks.scrollTo(range);
    },

    findFault: (formula) => findFormulaFault(engine.accessor, formula),
    undo: async () => {
      const title = engine.undo.titleOfUndo();
      return (await commands.executeCommand(UndoCommand.id)) ? title : null;
    },
    redo: async () => {
      const title = engine.undo.titleOfRedo();
      return (await commands.executeCommand(RedoCommand.id)) ? title : null;
    },
    snapshot: () => snapshotWorkbook(engine),
    onEdit: (listener) =>
      engine.undo.onStep((unitId) => {
        if (unitId === engine.unitId) listener();
      }),
    onMutation(listener) {
      const listening = commands.onCommandExecuted(({ id, type }) => {
        if (type === CommandType.MUTATION && !isCalculationTalk(id)) listener();
      });
      return () => listening.dispose();
    },
    dispose() {
      calculation.dispose();
      engine.univer.dispose();
    },
  };
}

const contentMutations: ReadonlySet<string> = new Set(
  [
    'set-range-values',
    'insert-row',
    'insert-col',
    'remove-rows',
    'remove-col',
    'move-range',
    'move-rows',
    'move-columns',
    'reorder-range',
    'insert-sheet',
    'remove-sheet',
    'set-worksheet-name',
    'add-table',
    'delete-table',
    'set-sheet-table',
  ].map((name) => `sheet.mutation.${name}`),
);

function changesContent(id: string): boolean {
  return contentMutations.has(id) || (id.startsWith('formula.mutation.') && id.endsWith('defined-name'));
}
