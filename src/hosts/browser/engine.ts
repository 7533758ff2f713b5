/** Starts the spreadsheet engine: the same core in the page and in Node, with more plugins in the page. */
import {
  IUndoRedoService,
  IUniverInstanceService,
  LocaleType,
  Univer,
  UniverInstanceType,
  type IAccessor,
  type ILocales,
  type IWorkbookData,
  type Workbook,
} from '@univerjs/core';
import { UniverDrawingPlugin } from '@univerjs/drawing';
import {
  FormulaDataModel,
  FUNCTION_NAMES_LOOKUP,
  IFunctionService,
  UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { UniverSheetsDrawingPlugin } from '@univerjs/sheets-drawing';
import { UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { UniverSheetsNotePlugin } from '@univerjs/sheets-note';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import { forgetOldMessages } from './errorMessage';
import { forgetWhole } from './forgetWhole';
import { formatSpilled } from './formatSpilled';
import { JoiningUndoService } from './joiningUndoService';
import { SheetFunctionExecutor, type SheetFunction } from './sheetFunction';
import { TableIndex } from './tableIndex';

export interface WorkbookOptions {
  readonly functions: readonly SheetFunction[];
  /** Stands before the ids of the functions, its dot included. */
  readonly namespace: string;
  /** The name of the sheet that a new workbook has. */
  readonly firstSheet: string;
  /** Called before every single write of a change; what it throws undoes the change. For tests. */
  readonly onWrite?: (step: string) => void;
}

/** What the page adds to the engine. */
export interface EngineShell {
  readonly locales: ILocales;
  registerBefore(univer: Univer): void;
  registerAfter(univer: Univer): void;
}

export interface Engine {
  readonly univer: Univer;
  readonly accessor: IAccessor;
  readonly workbook: Workbook;
  readonly unitId: string;
  readonly formulas: FormulaDataModel;
  readonly undo: JoiningUndoService;
  readonly namespace: string;
}

const unitId = 'workbook';

export function startEngine(options: WorkbookOptions, shell: EngineShell | null): Engine {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: shell?.locales ?? {},
    override: [[IUndoRedoService, { useClass: JoiningUndoService }]],
  });
  shell?.registerBefore(univer);
  univer.registerPlugin(UniverFormulaEnginePlugin, {
    function: [[TableIndex, FUNCTION_NAMES_LOOKUP.INDEX]],
  });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsNotePlugin);
  univer.registerPlugin(UniverSheetsTablePlugin);
  univer.registerPlugin(UniverDrawingPlugin);
  univer.registerPlugin(UniverSheetsDrawingPlugin);
  shell?.registerAfter(univer);

  const injector = univer.__getInjector();
  // Before the workbook: registered later, every formula would be calculated twice.
  injector
    .get(IFunctionService)
    .registerExecutors(
      ...options.functions.map((each) => new SheetFunctionExecutor(`${options.namespace}${each.id}`, each)),
    );
  const workbook = univer.createUnit<Partial<IWorkbookData>, Workbook>(UniverInstanceType.UNIVER_SHEET, {
    id: unitId,
    name: '',
    sheetOrder: ['first'],
    sheets: { first: { id: 'first', name: options.firstSheet } },
  });
  forgetWhole(injector, workbook);
  formatSpilled(injector);
  forgetOldMessages(injector);
  // Without a focused unit undo does nothing.
  injector.get(IUniverInstanceService).focusUnit(unitId);
  return {
    univer,
    accessor: injector,
    workbook,
    unitId,
    formulas: injector.get(FormulaDataModel),
    undo: injector.get(IUndoRedoService) as JoiningUndoService,
    namespace: options.namespace,
  };
}
