/// <reference types="office-js" />

/** The workbook that is open in Excel. */
import { HostError, type Area, type LiveWorkbook } from '../../workbook/port';
import { applyChange } from './applyChange';
import { askExcel, errorCode } from './askExcel';
import { askTogether } from './askTogether';
import { lackedFeatures, type ExcelFeature, type IsSetSupported } from './excelFeatures';
import { listenToExcel } from './listenToExcel';
import { reenterFormulas } from './reenterFormulas';
import { listSheets, locateNames, readAreas, readTable, stampSheet } from './readWorkbook';
import { settleResults, type Clock } from './settleResults';
import { rangeOf } from './readCells';
import { spanOf, surveyWorkbook } from './surveyWorkbook';
import { endUnfinished, findUnfinished } from './unfinishedChange';

export interface ExcelWorkbook extends LiveWorkbook {
  /** What this version of Excel cannot do, for the pane to leave out. */
  readonly lacks: readonly ExcelFeature[];
  /** What a change that was cut off in an earlier session is called; null when there is none. @throws HostError */
  findCutOff(): Promise<string | null>;
  /** Puts back what stood there before a change that was cut off, and removes what it made. @throws HostError */
  putBack(): Promise<void>;
}

export interface ExcelOptions {
  /** The library's namespace: the global `Excel`. */
  readonly excel: typeof Excel;
  /** `Office.context.requirements.isSetSupported`. */
  readonly isSetSupported: IsSetSupported;
  /** Stands before the ids of our functions, its dot included. */
  readonly namespace: string;
  readonly clock?: Clock;
}

/** Changes of one run come closer together than this. */
const runGapMs = 200;

const realClock: Clock = {
  now: () => Date.now(),
  sleep: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
};

export function openExcelWorkbook(options: ExcelOptions): ExcelWorkbook {
  const { excel, namespace, clock = realClock } = options;
  const lacks = lackedFeatures(options.isSetSupported);
  let changes = 0;
  let turn: Promise<unknown> = Promise.resolve();

  /** One at a time; one that fails does not hold up the next. */
  function inTurn<T>(action: () => Promise<T>): Promise<T> {
    const done = turn.then(action);
    turn = done.catch(() => undefined);
    return done;
  }

  const selection = async (): Promise<Area | null> => {
    try {
      return await askExcel(excel, 'read', ({ workbook }) => {
        const range = workbook.getSelectedRange();
        range.load('rowIndex,columnIndex,rowCount,columnCount,worksheet/name');
        return () => ({ sheet: range.worksheet.name, ...spanOf(range) });
      });
    } catch (error) {
      // A picture, or several areas at once.
      if (error instanceof HostError && errorCode(error.cause) === 'InvalidSelection') return null;
      throw error;
    }
  };

  return {
    lacks,
    cannotAddRows: lacks.includes('tableRows'),
    sheets: async () => listSheets(await surveyWorkbook(excel)),
    read: askTogether((areas) => readAreas(excel, areas)),
    readTable: (name) => readTable(excel, name),
    locate: askTogether((names) => locateNames(excel, names)),
    stamp: (sheet) => stampSheet(excel, sheet),
    apply: (change, progress = () => undefined) =>
      inTurn(() => {
        const key = `${clock.now().toString(36)}-${(changes++).toString(36)}`;
        return applyChange(excel, { namespace, lacks, key }, change, progress);
      }),
    settle: (timeoutMs) => settleResults(excel, clock, timeoutMs),

    reenterFormulas: (title) => inTurn(() => reenterFormulas(excel, namespace, title)),
    selection,
    onSelection: (listener) =>
      listenToExcel(
        excel,
        clock,
        async (isWanted) => {
          const area = await selection();
          if (area !== null && isWanted()) listener(area);
        },
        ({ worksheets }, handler) => [worksheets.onSelectionChanged.add(handler)],
      ),
    onChange(listener) {
      let timer: ReturnType<typeof setTimeout> | undefined;
      const stop = listenToExcel(
        excel,
        clock,
        () => {
          clearTimeout(timer);
          timer = setTimeout(listener, runGapMs);
        },
        ({ worksheets }, handler) => [
          worksheets.onChanged.add(handler),
          worksheets.onCalculated.add(handler),
          worksheets.onAdded.add(handler),
          worksheets.onDeleted.add(handler),
        ],
      );
      return () => {
        clearTimeout(timer);
        stop();
      };
    },
    reveal: (area) =>
      askExcel(excel, 'reveal', (context) => {
        context.workbook.worksheets.getItem(area.sheet).activate();
        rangeOf(context, area).select();
        return () => undefined;
      }),

    findCutOff: () => inTurn(async () => findUnfinished(excel, await surveyWorkbook(excel))),
    putBack: () => inTurn(async () => void (await endUnfinished(excel))),
  };
}
