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
import { UniverSheetsConditionalFormattingPlugin } from '@univerjs/sheets-conditional-formatting';
import { UniverSheetsDataValidationPlugin } from '@univerjs/sheets-data-validation';
import { UniverSheetsDrawingPlugin } from '@univerjs/sheets-drawing';
import { CalculationMode, UniverSheetsFormulaPlugin } from '@univerjs/sheets-formula';
import { UniverSheetsNotePlugin } from '@univerjs/sheets-note';
import { UniverSheetsNumfmtPlugin } from '@univerjs/sheets-numfmt';
import { UniverSheetsTablePlugin } from '@univerjs/sheets-table';
import { forgetOldMessages } from './errorMessage';
import { readEmptyTexts } from './emptyTexts';
import { forgetWhole } from './forgetWhole';
import { formatSpilled } from './formatSpilled';
import { noteRangesOnce } from './formulaLinks';
import { JoiningUndoService } from './joiningUndoService';
import { keepReadings } from './keptReadings';
import { dropLateChecks } from './lateChecks';
import { makeTextsOnce } from './literalTexts';
import { recalculateSpilled } from './recalculateSpilled';
import { asUnit, readSnapshot } from './snapshot';
import { SheetFunctionExecutor, type SheetFunction } from './sheetFunction';
import { TableIndex } from './tableIndex';

export interface WorkbookOptions {
  readonly functions: readonly SheetFunction[];
  /** Stands before the ids of the functions, its dot included. */
  readonly namespace: string;
  /** The name of the sheet that a new workbook has. */
  readonly firstSheet: string;
  /** What `snapshot` gave: the workbook opens as it was then. */
  readonly snapshot?: string | undefined;
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

/** Then the page gets a turn. A note of a plot takes some milliseconds. */
const formulasAtOnce = 20;

/**
 * The look of every table, for the first theme is the engine's default: no stripes of its own over the cells. The name
 * begins with "table" because the engine puts such a theme on anew when it opens a snapshot, and any other twice.
 */
const bareTheme = 'table-as-its-cells';

/**
 * How many engines this page or process has started. Each knows its workbook by an id of its own: what the engines
 * remember of formulas and ranges is in one memory, by that id, and several may calculate at once.
 */
let started = 0;

function emptyWorkbook({ firstSheet }: WorkbookOptions, unitId: string): Partial<IWorkbookData> {
  return {
    id: unitId,
    name: '',
    sheetOrder: ['first'],
    sheets: { first: { id: 'first', name: firstSheet } },
  };
}

/** @throws when the snapshot is none */
export function startEngine(options: WorkbookOptions, shell: EngineShell | null): Engine {
  started += 1;
  const unitId = `workbook${started}`;
  const { snapshot } = options;
  const contents =
    snapshot === undefined ? emptyWorkbook(options, unitId) : asUnit(readSnapshot(snapshot), unitId);
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: shell?.locales ?? {},
    override: [[IUndoRedoService, { useClass: JoiningUndoService }]],
  });
  shell?.registerBefore(univer);
  univer.registerPlugin(UniverFormulaEnginePlugin, {
    intervalCount: formulasAtOnce,
    function: [[TableIndex, FUNCTION_NAMES_LOOKUP.INDEX]],
  });
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, {
    // All of an opened workbook: what a function said about its error is in no snapshot.
    initialFormulaComputing: snapshot === undefined ? CalculationMode.WHEN_EMPTY : CalculationMode.FORCED,
  });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsNotePlugin);
  univer.registerPlugin(UniverSheetsTablePlugin, { userThemes: [{ name: bareTheme, style: {} }] });
  univer.registerPlugin(UniverDrawingPlugin);
  univer.registerPlugin(UniverSheetsDrawingPlugin);
  shell?.registerAfter(univer);

  const injector = univer.__getInjector();
  readEmptyTexts();
  noteRangesOnce(injector);
  makeTextsOnce(injector);
  keepReadings(injector);
  // Before the workbook: registered later, every formula would be calculated twice.
  injector
    .get(IFunctionService)
    .registerExecutors(
      ...options.functions.map((each) => new SheetFunctionExecutor(`${options.namespace}${each.id}`, each)),
    );
  const workbook = createWorkbook(univer, contents);
  forgetWhole(injector, workbook);
  formatSpilled(injector);
  recalculateSpilled(injector, unitId);
  forgetOldMessages(injector);
  dropLateChecks(injector);
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

function createWorkbook(univer: Univer, contents: Partial<IWorkbookData>): Workbook {
  try {
    return univer.createUnit<Partial<IWorkbookData>, Workbook>(UniverInstanceType.UNIVER_SHEET, contents);
  } catch (cause) {
    univer.dispose();
    throw cause;
  }
}
