/** The pane over the real browser workbook, with its engine and our functions, and somebody typing in the grid. */
import { ICommandService } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import { expect } from 'vitest';
import { paneTools } from '../../src/entries/paneTools';
import { functions } from '../../src/functions';
import { startEngine } from '../../src/hosts/browser/engine';
import { openWorkbook, type BrowserWorkbook } from '../../src/hosts/browser/openWorkbook';
import { findSheet } from '../../src/hosts/browser/readWorkbook';
import { functionNamespace } from '../../src/templates/sheets';
import type { ReadValue, TableRead } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';
import { fillFake, openPaneOver, until, type OpenPane } from './openPane';

export interface GridPane extends OpenPane<BrowserWorkbook> {
  table(name: string): Promise<TableRead>;
  column(header: string, table?: string): Promise<readonly ReadValue[]>;
  /** As the grid's editor does. */
  type(sheet: string, row: number, column: number, cell: { v?: string | number; f?: string }): Promise<void>;
  /** Presses a button, and waits until that is said. */
  press(button: string, said: string): Promise<void>;
  close(): void;
}

export async function openGridPane(plots: readonly InputRow[], tools = paneTools): Promise<GridPane> {
  const engine = startEngine(
    { functions: [...functions.values()], namespace: functionNamespace, firstSheet: 'Scratch' },
    null,
  );
  const workbook = openWorkbook(engine, { onWrite: () => undefined, scrollTo: () => undefined });
  await fillFake(workbook, plots);
  const pane = await openPaneOver(workbook, tools);
  const table = async (name: string): Promise<TableRead> => {
    expect(await workbook.settle(20_000)).toEqual([]);
    const read = await workbook.readTable(name);
    if (read === null) throw new Error(`no ${name}`);
    return read;
  };
  return {
    ...pane,
    table,
    async column(header, name = 'Plots') {
      const { headers, rows } = await table(name);
      return rows.map((row) => row[headers.indexOf(header)] ?? null);
    },
    async type(sheet, row, column, cell) {
      await engine.accessor.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
        unitId: engine.unitId,
        subUnitId: findSheet(engine, sheet)?.getSheetId(),
        range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
        value: [[cell]],
      });
    },
    async press(button, said) {
      pane.button(button).click();
      // The same may have been said of an earlier press.
      await until(() => expect(pane.root.getAttribute('aria-busy')).not.toBe('true'));
      await until(() => expect(pane.spoken()).toContain(said));
    },
    close() {
      pane.handle.dispose();
      workbook.dispose();
    },
  };
}
