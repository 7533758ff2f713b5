/** A headless workbook with somebody typing into it, through the commands that the page's editor uses. */
import { ICommandService, IUndoRedoService, type ICellData } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/sheets';
import { startEngine, type WorkbookOptions } from '../../../src/hosts/browser/engine';
import { openWorkbook, type BrowserWorkbook } from '../../../src/hosts/browser/openWorkbook';
import { findSheet } from '../../../src/hosts/browser/readWorkbook';
import { contractFunctions } from '../../contract/contractFunctions';

export interface TypedWorkbook {
  readonly workbook: BrowserWorkbook;
  type(sheet: string, row: number, column: number, cells: readonly (readonly ICellData[])[]): Promise<void>;
  run(id: string, params: object): Promise<boolean>;
  idOf(sheet: string): string;
  undoSteps(): number;
  readonly engine: ReturnType<typeof startEngine>;
}

export function openTyped(
  onWrite: (step: string) => void = () => undefined,
  functions: WorkbookOptions['functions'] = contractFunctions,
  snapshot?: string,
): TypedWorkbook {
  const engine = startEngine({ functions, namespace: 'CUCURBIT.', firstSheet: 'Kitchen', snapshot }, null);
  const workbook = openWorkbook(engine, { onWrite, scrollTo: () => undefined });
  const commands = engine.accessor.get(ICommandService);
  let steps = 0;
  engine.accessor.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos }) => (steps = undos));
  const idOf = (sheet: string): string => findSheet(engine, sheet)?.getSheetId() ?? '';
  return {
    workbook,
    engine,
    idOf,
    run: (id, params) => commands.executeCommand(id, params),
    undoSteps: () => steps,
    async type(sheet, row, column, cells) {
      await commands.executeCommand(SetRangeValuesCommand.id, {
        unitId: engine.unitId,
        subUnitId: idOf(sheet),
        range: {
          startRow: row,
          endRow: row + cells.length - 1,
          startColumn: column,
          endColumn: column + (cells[0]?.length ?? 1) - 1,
        },
        value: cells,
      });
    },
  };
}
