/**
 * The one interface between the project and a spreadsheet program. Long because every shape that crosses it stands
 * here with its meaning.
 *
 * Everything is plain data. A host reads, and takes one declarative `Change` at a time: either all of it
 * arrives or nothing does. Rows and columns count from 0.
 */

import type { FormulaFault } from './formulaFault';

/** A value as it stands in a cell. null is an empty cell. A string is text, whatever it looks like. */
export type CellValue = string | number | boolean | null;

/** An error in a cell. `message` is what our function said, null where the host did not keep it. */
export interface CellError {
  readonly error: string;
  readonly message: string | null;
}

export type ReadValue = CellValue | CellError;

export function isCellError(value: unknown): value is CellError {
  return typeof value === 'object' && value !== null && 'error' in value;
}

export interface Area {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/**
 * What a cell computes, host-neutral. `workbook/printFormula` writes it as an en-US formula;
 * `hosts/file/evaluate` computes it. Both must give the same value: a contract test holds them together.
 */
export type Expression =
  | { readonly value: string | number | boolean }
  /** The cell of that column in the same row of the table that the expression stands in. */
  | { readonly column: string }
  /** All cells of a table's column. */
  | { readonly table: string; readonly allOf: string }
  /** A named cell, or named cells under one another. */
  | { readonly input: string }
  /**
   * What somebody typed as an argument, in en-US: a value, a cell, a formula. Only a program that reads formulas knows
   * what it means; to the file host it is an unknown name.
   */
  | { readonly typed: string }
  /** One of our functions, by its id without the namespace. null is an omitted argument. */
  | { readonly call: string; readonly args: readonly (Expression | null)[] }
  /** A function that every spreadsheet program has. */
  | { readonly native: NativeFunction; readonly args: readonly Expression[] }
  | { readonly operator: Operator; readonly left: Expression; readonly right: Expression };

/** The built-in functions that templates may use. Each new one needs its case in evaluation/evaluateNative. */
export type NativeFunction =
  | 'IF'
  | 'AND'
  | 'OR'
  | 'IFERROR'
  | 'ISNUMBER'
  | 'ISERROR'
  | 'ISERR'
  | 'NA'
  | 'SUM'
  | 'COUNTIF'
  | 'COUNTIFS'
  | 'SUMIFS'
  | 'MINIFS'
  | 'MIN'
  | 'MAX'
  | 'COUNT'
  | 'MEDIAN'
  | 'INDEX'
  | 'MATCH'
  | 'DATE'
  | 'YEAR'
  | 'MONTH'
  | 'DAY'
  | 'INT'
  | 'ROUND'
  | 'ROUNDUP';

export type Operator = '+' | '-' | '*' | '/' | '=' | '<>' | '<' | '<=' | '>' | '>=' | '&';

/** What is written into a cell: a value, or a computation. */
export type CellContent = CellValue | Computation;

export interface Computation {
  readonly compute: Expression;
  /**
   * The rows and columns that a list may fill, this cell the first of them; nothing else stands there. Absent: the
   * result is one value. Never in a table: no program lets a result spill in one.
   */
  readonly spillsOver?: { readonly rows: number; readonly columns: number };
}

/** Where a named cell stands, or the first of several under one another. */
export type NamedPlace = readonly [row: number, column: number, rows?: number];

/**
 * What stands in that row of the same column before the change, a value or a formula. Where a formula names cells of
 * its own row it names those of its new row; all else it names stays. Looks stay where they are.
 */
export interface Carried {
  readonly carriedFrom: number;
}

export function isCarried(content: CellContent | Carried): content is Carried {
  return typeof content === 'object' && content !== null && 'carriedFrom' in content;
}

/** How a number is shown; `words` are texts that a formula gives. The codes are in `workbook/appearance`. */
export type Format =
  | 'general'
  | 'text'
  | 'words'
  | 'whole'
  | 'tenth'
  | 'hundredth'
  | 'percent'
  | 'percentTenth'
  | 'percentHundredth'
  | 'money'
  | 'price'
  | 'date'
  | 'day';

/** What a cell is for; the look is in `workbook/appearance`. */
export type Role =
  | 'plain'
  | 'title'
  | 'lead'
  | 'caution'
  | 'label'
  | 'remark'
  | 'header'
  | 'input'
  | 'computed'
  | 'prose'
  | 'unit';

/** Light to dark, in this order; the look is in `workbook/appearance`. */
export type Shade = 'pale' | 'middle' | 'deep';

/** A rectangle inside one sheet. */
export interface Span {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface Block {
  readonly row: number;
  readonly column: number;
  /** Rectangular. */
  readonly contents: readonly (readonly CellContent[])[];
}

export interface Dressing extends Span {
  readonly role: Role;
  readonly format: Format;
}

/** A drop-down list on input cells. Other entries are let in: functions say what is wrong with them. */
export interface PickList extends Span {
  readonly values: readonly string[];
}

/** Cells have the shade for as long as they hold the text. They may stand beyond what is filled in yet. */
export interface ShadeRule extends Span {
  readonly equals: string;
  readonly shade: Shade;
}

export interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** A table inside a new sheet. Its cells are in `blocks`; this names the range. */
export interface TableShape extends Span {
  readonly name: string;
  /** The header texts, as they stand in the first row of the span. */
  readonly headers: readonly string[];
  /** What a new row computes, per column; null for an input column. For tables that people add rows to. */
  readonly grows: readonly (Expression | null)[] | null;
}

export interface Mark {
  readonly template: string;
  readonly version: number;
}

export interface PageSetup {
  readonly landscape: boolean;
  /** Over how many pages side by side the sheet's width is fitted. */
  readonly pagesWide: number;
  /** Rows printed at the top of every page: [first, last]. */
  readonly repeatRows: readonly [number, number] | null;
  /** Columns printed at the left of every page: [first, last]. */
  readonly repeatColumns: readonly [number, number] | null;
}

export interface Picture {
  /** A picture of that name on that sheet goes when this one comes. */
  readonly name: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly png: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly altText: string;
}

export interface NewSheet {
  readonly name: string;
  readonly mark: Mark;
  readonly blocks: readonly Block[];
  readonly tables: readonly TableShape[];
  readonly dressings: readonly Dressing[];
  readonly lists: readonly PickList[];
  readonly rules: readonly ShadeRule[];
  readonly notes: readonly Note[];
  readonly names: Readonly<Record<string, NamedPlace>>;
  /** Width of each column in characters, from column 0. */
  readonly widths: readonly number[];
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly page: PageSetup;
}

/**
 * Everything that one action does to a workbook. A host checks all of it before its first write: sheet names
 * free, tables and sheets there, stamps unchanged, nothing locked. Then it writes all or nothing.
 */
export interface Change {
  /** What the undo entry is called. */
  readonly title: string;
  /** Sheets that must be as they were when they were read. */
  readonly expect: readonly { readonly sheet: string; readonly stamp: string }[];
  readonly newSheets: readonly NewSheet[];
  /** Cells rewritten in sheets that exist. An expression with `column` must stand inside a table. */
  readonly cells: readonly (Omit<Block, 'contents'> & {
    readonly sheet: string;
    /** Rectangular. */
    readonly contents: readonly (readonly (CellContent | Carried)[])[];
  })[];
  /** Rows put under the last row of a table that exists; the table's range grows with them. */
  readonly tableRows: readonly {
    readonly table: string;
    readonly rows: readonly (readonly (CellContent | Carried)[])[];
  }[];
  readonly pictures: readonly Picture[];
  /**
   * Rules that sheets which exist are to have; absent: none. Each comes after the rules that are there, and not where
   * a rule on that text holds for its first cell already, ours or somebody's own.
   */
  readonly rules?: readonly (ShadeRule & { readonly sheet: string })[];
  /** New marks of sheets of ours that exist: another version of their template has been written into them. */
  readonly marks: readonly { readonly sheet: string; readonly mark: Mark }[];
}

export interface SheetInfo {
  readonly name: string;
  /** Which template of ours made it; null for a sheet that is not ours. */
  readonly mark: Mark | null;
  readonly locked: boolean;
  /** The smallest area from A1 that holds all content; null for an empty sheet. */
  readonly used: Area | null;
}

export interface CellsRead {
  /** Raw values, never display text. */
  readonly values: readonly (readonly ReadValue[])[];
  /** The en-US formula with its "=", null where there is none. */
  readonly formulas: readonly (readonly (string | null)[])[];
}

export interface TableRead {
  readonly name: string;
  /** Headers included. */
  readonly area: Area;
  readonly headers: readonly string[];
  readonly rows: readonly (readonly ReadValue[])[];
}

/** Told while a change is applied: from 0 to 1. */
export type Progress = (done: number) => void;

export interface Unsettled {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface WorkbookPort {
  sheets(): Promise<readonly SheetInfo[]>;
  read(area: Area): Promise<CellsRead>;
  /** null when there is no such table. */
  readTable(name: string): Promise<TableRead | null>;
  /** Where a named cell is, or named cells are; null when there is no such name. */
  locate(name: string): Promise<Area | null>;
  /** Changes when a value or formula of the sheet changes. */
  stamp(sheet: string): Promise<string>;
  /** All or nothing. One at a time; a second waits. @throws HostError */
  apply(change: Change, progress?: Progress): Promise<void>;
  /** Waits until every result is readable; the cells that are still not after `timeoutMs` are given back. */
  settle(timeoutMs: number): Promise<readonly Unsettled[]>;
}

/** What came of entering our formulas again. */
export interface Reentered {
  readonly cells: number;
  /** Sheets left alone with our formulas in them, because they are protected. */
  readonly locked: readonly string[];
}

/** A workbook with a person in front of it. Each `on…` gives back what ends the listening. */
export interface LiveWorkbook extends WorkbookPort {
  /** Whether a change may put rows under a table; absent where it may. An older program leaves that to its people. */
  readonly cannotAddRows?: boolean;
  /**
   * Enters every formula that uses our functions again, on people's own sheets too, and touches nothing else. For
   * formulas that say #NAME? because they were calculated or saved where our functions were not known. Cut off
   * half-way, some are entered again and the rest are as they were. @throws HostError
   */
  reenterFormulas(title: string): Promise<Reentered>;
  /** What keeps the program from reading a formula, null when nothing does; absent where it does not say. */
  findFault?(formula: string): FormulaFault | null;
  selection(): Promise<Area | null>;
  onSelection(listener: (area: Area) => void): () => void;
  /** Some cell's content or result changed; told once for a run of changes. */
  onChange(listener: () => void): () => void;
  /** Brings the area into sight and selects it. */
  reveal(area: Area): Promise<void>;
}

/** Why a host refused or failed. The code is worded in `texts`; nothing was written. */
export type HostProblem =
  | { readonly code: 'sheetNameTaken'; readonly sheet: string }
  | { readonly code: 'noSuchSheet'; readonly sheet: string }
  | { readonly code: 'noSuchTable'; readonly table: string }
  | { readonly code: 'nameTaken'; readonly name: string }
  | { readonly code: 'tableNameTaken'; readonly table: string }
  | { readonly code: 'changedMeanwhile'; readonly sheet: string }
  | { readonly code: 'sheetLocked'; readonly sheet: string }
  | { readonly code: 'cellsInTheWay'; readonly sheet: string; readonly row: number; readonly column: number }
  /** A sheet of ours that lacks one of its tables, columns or named cells. */
  | { readonly code: 'sheetDamaged'; readonly sheet: string; readonly missing: string }
  /** A table lacks a column of ours. */
  | { readonly code: 'columnGone'; readonly sheet: string; readonly missing: string }
  /** Sheets can be neither added nor removed. */
  | { readonly code: 'workbookLocked' }
  /** Opened for reading only, or protected in another way. */
  | { readonly code: 'notWritable' }
  /** Our dates would stand in it as others. */
  | { readonly code: 'daysFrom1904' }
  | { readonly code: 'cellBeingEdited' }
  | { readonly code: 'noAnswer' }
  /** Another workbook has the program's attention. */
  | { readonly code: 'notInFront' }
  /** What was there a moment ago is not, or the other way round. */
  | { readonly code: 'changedByOthers' }
  /** Filtered, merged or part of something larger: such cells cannot be written one by one. */
  | { readonly code: 'cellsJoined' }
  | { readonly code: 'tooLarge' }
  /** This version of the program lacks what the change needs. */
  | { readonly code: 'programTooOld' }
  /** A change was cut off and could not be taken back yet; what was there before is kept in the workbook. */
  | { readonly code: 'cutOff'; readonly action: string }
  | { readonly code: 'fileExists'; readonly file: string }
  | { readonly code: 'fileNotWritable'; readonly file: string }
  /** Cut short, altered, or not what it says it is. */
  | { readonly code: 'fileDamaged' }
  /** Read no further: it goes beyond a limit. */
  | { readonly code: 'fileTooBig' }
  /** The same of a text file. */
  | { readonly code: 'fileLongList' }
  /** A sheet of ours goes on far below what is filled in. */
  | { readonly code: 'fileEmptyRows' }
  | { readonly code: 'fileEncrypted' }
  /** Another kind of file, which its program can save as one that can be read. */
  | { readonly code: 'fileOtherKind'; readonly kind: string }
  | { readonly code: 'fileNoWorkbook' }
  /** A workbook without a sheet of ours. */
  | { readonly code: 'fileNotOurs' }
  /** Its sheets of ours are in words of another language. */
  | { readonly code: 'fileOtherLanguage' }
  | { readonly code: 'failed'; readonly action: string };

export class HostError extends Error {
  constructor(
    readonly problem: HostProblem,
    options?: { cause?: unknown },
  ) {
    super(problem.code, options);
    this.name = 'HostError';
  }
}
