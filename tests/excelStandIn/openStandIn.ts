/**
 * A small, strict stand-in for Excel: the vendor's real client library, and behind its bridge a workbook in memory
 * that knows exactly the calls our host makes and refuses what Excel refuses. See DEVELOPERS.md for its limits.
 */
import { answerRequest, type RequestBody } from './answerRequest';
import { createBook, writeCells, type Book, type Sheet } from './book';
import { calculateBook, type Functions, type Results } from './calculateBook';
import { loadLibrary, type Bridge } from './loadLibrary';
import type { Stage } from './model';
import { printAddress } from './span';
import { workbookModel } from './workbookModel';

/** When a request fails: not carried out, half carried out, or carried out and its answer lost. */
export type FaultKind = 'refused' | 'half' | 'lost';

export interface StandInOptions {
  readonly firstSheet: string;
  /** The newest ExcelApi 1.… that this Excel has. */
  readonly apiMinor?: number;
  readonly functions?: Functions;
}

export interface StandIn {
  readonly excel: typeof Excel;
  readonly book: Book;
  isSetSupported(name: string, version: string): boolean;
  /** Sizes of the requests since the last call, in bytes. */
  takeRequests(): number[];
  /** The request of that number fails, counted from 0 from now; null lets all pass. */
  failAt(request: number | null, kind?: FaultKind): void;
  /** From the request of that number on nothing is answered; null lets all pass. */
  goneFrom(request: number | null): void;
  /** The workbook was opened where the add-in is not: all formulas with its functions say #NAME? until entered again. */
  forgetFunctions(): void;
  /** Somebody types into a cell. */
  type(sheet: Sheet, row: number, column: number, value: string | number | boolean): void;
  select(sheet: Sheet, row: number, column: number): void;
  /** Whether the library has asked for events of that name. */
  listensTo(event: keyof typeof eventTypes): boolean;
  /** Tells the library of an event of that name, if it asked for it. */
  tell(event: keyof typeof eventTypes): void;
  /** @throws when the host asked for something that the stand-in does not know */
  close(): void;
}

const newestMinor = 18;
/** Excel on the web takes and gives no more in one request. */
const mostBytes = 5_000_000;

/** By the library's numbering. */
const eventTypes = { DataChanged: 10, Calculated: 16, Added: 13, Deleted: 15, SelectionChanged: 14 } as const;
const eventCategory = 65536;

export function openStandIn(options: StandInOptions): StandIn {
  const { firstSheet, apiMinor = newestMinor, functions = [] } = options;
  const book = createBook(firstSheet);
  const events = new Set<string>();
  const unknown: string[] = [];
  let sizes: number[] = [];
  let count = 0;
  let fault: { at: number; kind: FaultKind } | null = null;
  let gone: number | null = null;
  let results: Results = new Map();
  let calculated = 0;
  let turn: Promise<unknown> = Promise.resolve();

  const isSetSupported = (name: string, version: string): boolean =>
    name === 'ExcelApi' && Number(version.replace(/^1\./, '')) <= apiMinor;

  const bridge: Bridge = {
    onMessageFromHost: () => undefined,
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as { id: number; message: { body: RequestBody } };
      sizes.push(text.length);
      const number = count++;
      // One at a time, as Excel does.
      turn = turn.then(async () => {
        const reply = await answer(message.body, text.length, number).catch((error: unknown) => {
          unknown.push(String(error));
          return failure('GeneralException', String(error));
        });
        bridge.onMessageFromHost(JSON.stringify({ id, type: 2, message: reply }));
      });
    },
  };

  async function answer(body: RequestBody, bytes: number, number: number) {
    if (gone !== null && number >= gone) return failure('ConnectionFailure', 'the connection is gone');
    if (book.isCellBeingEdited) return failure('InvalidOperationInCellEditMode', 'a cell is being edited');
    if (bytes > mostBytes) return failure('RequestPayloadSizeLimitExceeded', 'too large');
    const kind = fault?.at === number ? fault.kind : null;
    if (kind === 'refused') return failure('GeneralException', 'a fault made by the test');
    if (readsResults(body) && calculated !== book.version) {
      results = await calculateBook(book, functions);
      calculated = book.version;
    }
    const stage: Stage = { book, results, events };
    const answered = answerRequest(body, {
      root: workbookModel(stage),
      apiMinor,
      onUnknown: (what) => unknown.push(what),
      mostActions: kind === 'half' ? Math.floor(body.Actions.length / 2) : Infinity,
    });
    if (kind === 'lost') return failure('GeneralException', 'a fault made by the test');
    const text = JSON.stringify(answered);
    if (text.length > mostBytes) return failure('ResponsePayloadSizeLimitExceeded', 'too large');
    return { statusCode: 200, headers: {}, body: text };
  }

  const tell = (event: keyof typeof eventTypes, message: object = {}): void => {
    if (!events.has(event)) return;
    const entry = [eventCategory, eventTypes[event], 'Workbook', JSON.stringify(message), ''];
    bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries: [entry] } }));
  };

  return {
    excel: loadLibrary(bridge, isSetSupported),
    book,
    isSetSupported,
    takeRequests() {
      const taken = sizes;
      sizes = [];
      return taken;
    },
    failAt(request, kind = 'refused') {
      fault = request === null ? null : { at: request, kind };
      count = 0;
    },
    goneFrom(request) {
      gone = request;
      count = 0;
    },
    forgetFunctions() {
      for (const { cells } of book.sheets) {
        for (const cell of [...cells.values()].flatMap((line) => [...line.values()])) {
          if ('formula' in cell && /CUCURBIT/i.test(cell.formula)) book.forgotten.add(cell);
        }
      }
      book.version += 1;
    },
    type(sheet, row, column, value) {
      const span = { row, column, rows: 1, columns: 1 };
      writeCells(book, sheet, span, [[value]]);
      const address = printAddress(sheet.name, span).replace(/^.*!/, '');
      tell('DataChanged', {
        address,
        worksheetId: sheet.id,
        changeType: 'RangeEdited',
        shiftDirection: 'None',
      });
    },
    select(sheet, row, column) {
      book.active = sheet;
      book.selection = { sheet, span: { row, column, rows: 1, columns: 1 } };
      tell('SelectionChanged', { address: 'A1', worksheetId: sheet.id });
    },
    listensTo: (event) => events.has(event),
    tell,
    close() {
      if (unknown.length > 0) throw new Error(`the stand-in does not know: ${unknown.join('; ')}`);
    },
  };
}

/** Whether results of formulas are asked for; a request that writes reads none. */
function readsResults(body: RequestBody): boolean {
  return body.Actions.some(({ QueryInfo }) =>
    QueryInfo?.Select?.some((name) => /(^|\/)(values|valueTypes)$/i.test(name)),
  );
}

function failure(code: string, message: string) {
  return { statusCode: 500, headers: {}, body: JSON.stringify({ error: { code, message } }) };
}
