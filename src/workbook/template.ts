/**
 * A sheet as data: what it says, what it asks, what it computes. A template survives JSON unchanged; the engine in
 * `layOut` places it on rows and columns, the hosts write it.
 */
import type { Limits } from './limits';
import type { CellContent, CellValue, Expression, Format, PageSetup, Shade } from './port';
import type { DateWords } from './serialDate';

/** One line of a form: a label, one cell, and what to know about it. */
export interface FormLine {
  readonly label: string;
  /** The cell's name in formulas. Not cell-like, and unlike what people name their own cells. */
  readonly name: string;
  readonly kind: 'input' | 'computed';
  readonly content: CellContent;
  readonly format: Format;
  readonly choices: readonly string[];
  /** Where there are many, so that they are typed: those that are other words, each with the choice it is taken as. */
  readonly takenAs?: Readonly<Record<string, string>>;
  /** How people say and write a choice: the first is shown beside it, all are put into the cell as the choice. */
  readonly words?: Readonly<Record<string, readonly string[]>>;
  /** Of a date. */
  readonly dates?: DateWords;
  /** Stands to the right of the cell. */
  readonly remark: string;
  /** Of an input. The sheet takes any number; whoever asks for one holds to them. */
  readonly limits?: Limits;
  /** The cell of an optional sheet that this input may stand for by the formula =NAME. */
  readonly follows?: string;
}

export interface ConvertsByRow {
  /** The header of that column. */
  readonly by: string;
  /** A row that stands for none of these is left as it is. */
  readonly units: Readonly<Record<string, string>>;
}

export interface TableColumn {
  readonly header: string;
  /** Made: an action of ours puts its values there, of all rows at once. */
  readonly kind: 'input' | 'computed' | 'made';
  /** What each row computes; null for a column whose cells come with the rows. */
  readonly compute: Expression | null;
  readonly format: Format;
  /** In place of it, by what names the row. */
  readonly formats?: Readonly<Record<string, Format>>;
  /** In characters of what is read in it. */
  readonly width: number;
  readonly choices: readonly string[];
  /** As those of a form's line. */
  readonly takenAs?: FormLine['takenAs'];
  readonly words?: FormLine['words'];
  readonly dates?: FormLine['dates'];
  /** What its cells said in earlier versions where they name a row, with what they say now; a refresh mends them. */
  readonly formerly?: Readonly<Record<string, string>>;
  /** The note on the header: what goes in or comes out, in which unit, by which function. */
  readonly note: string;
  /** The unit shown above the header; null for none. */
  readonly unit: CellContent;
  /** In place of a unit. */
  readonly dated?: DatedColumn;
  /** Which texts shade the column's cells that hold them. */
  readonly shades?: Readonly<Record<string, Shade>>;
  /** Of a last column: its texts run on over the free cells to its right. */
  readonly runsOn?: boolean;
  /** Of a column that nobody types into: its texts run over as many lines as they need. */
  readonly wraps?: boolean;
  /**
   * What a change of units makes of the column's numbers, by the name that the converter knows; where rows differ, by
   * what stands in another column of the row. Absent: nothing.
   */
  readonly converts?: string | ConvertsByRow;
  /** As those of a form's line. */
  readonly limits?: Limits;
  /** What our functions call an input where they refuse it. */
  readonly quantity?: string;
}

/** What stands above the header of a column that is for a day, or for days from it on: two cells under one another. */
export interface DatedColumn {
  /** The month's name. */
  readonly month: CellContent;
  /** The date, of which its day of the month is shown. */
  readonly day: CellContent;
  /** Of the day's cell in formulas; "" for none. */
  readonly name: string;
}

export interface TableTemplate {
  readonly name: string;
  /** Stands above the table. */
  readonly heading: string;
  readonly columns: readonly TableColumn[];
  /** The rows that the template brings itself; null when rows are given at filling. */
  readonly rows: readonly (readonly CellContent[])[] | null;
  /** Whether a row typed under the table belongs to it. Only the last table of a sheet may grow. */
  readonly grows: boolean;
  /** The column whose cell names a row for `formats`; the first where absent. */
  readonly rowsNamedBy?: string;
  /**
   * Whether a figure typed over a formula goes along with the plan: where the formulas hang on no row that people
   * type. Elsewhere nobody can tell a figure typed in from one that a program without our functions left behind.
   */
  readonly keepsTypedOver?: boolean;
}

/** One column of a list that a single formula fills. */
export interface ListColumn {
  readonly header: string;
  /** Names the cells of the column in formulas; "" for none. The first column has one. */
  readonly name: string;
  readonly format: Format;
  /** In characters of what is read in it. */
  readonly width: number;
  readonly note: string;
  readonly unit: CellContent;
}

/** A list whose length nobody knows beforehand: one formula, whose result fills the cells below and beside it. */
export interface SpillingList {
  readonly heading: string;
  readonly compute: Expression;
  readonly columns: readonly ListColumn[];
  /** The most that it can have. */
  readonly rows: number;
}

export interface SheetTemplate {
  readonly id: string;
  readonly version: number;
  readonly sheet: string;
  readonly title: string;
  readonly lead: readonly string[];
  /** A line under the lead into which an action of ours writes what came of it; blank at first. */
  readonly report?: { readonly name: string; readonly content: CellContent };
  readonly cautions: readonly string[];
  readonly form: readonly FormLine[];
  readonly tables: readonly TableTemplate[];
  /** Side by side under everything else. */
  readonly lists?: readonly SpillingList[];
  /** Not part of every plan: made when asked for, kept up where it is. */
  readonly optional?: boolean;
  readonly page: {
    readonly landscape: boolean;
    readonly pagesWide: number;
    readonly repeatFirstColumn: boolean;
    /** Whether pages after the last table's first begin with its header; they do where absent. */
    readonly repeatHeader?: false;
  };
}

/** A row of input values, by the header of an input column. A header that is absent leaves its cell empty. */
export type InputRow = Readonly<Record<string, CellValue>>;

export type { CellContent, CellValue, Expression, Format, PageSetup, Shade };
