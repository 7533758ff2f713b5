/** Rows of a text file as spreadsheet programs save it: comma, semicolon or tab between the cells. */
import { longestText } from './limits';
import { plainWord } from './plainWord';
import { splitRecords, type FileRecord, type Separator } from './splitRecords';

/** Lines count from 1, as in an editor; a record that runs over several lines is named by its first. */
export type DelimitedProblem =
  | { readonly code: 'empty' }
  | {
      readonly code: 'duplicateHeader';
      readonly line: number;
      readonly header: string;
      /** Both count from 1. */
      readonly column: number;
      readonly firstColumn: number;
    }
  /** More cells than columns. */
  | { readonly code: 'raggedLine'; readonly line: number; readonly expected: number; readonly found: number }
  /** More than a cell can hold; columns count from 1. */
  | {
      readonly code: 'longCell';
      readonly line: number;
      readonly column: number;
      readonly length: number;
      readonly most: number;
    }
  /** A quote that never closes, or closes in the middle of a cell. */
  | { readonly code: 'openQuote'; readonly line: number };

export interface Delimited {
  /** None when the header line is missing or cannot be relied on; then there are no rows either. */
  readonly headers: readonly string[];
  readonly headerLine: number;
  /** Whether the headers stand in the text. */
  readonly isHeaded: boolean;
  /** As many cells as headers: a line may end with its last cell. A record with a problem is not among them. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly problems: readonly DelimitedProblem[];
  /** Whether a number may be written with a comma: not where the comma stands between cells. */
  readonly decimalComma: boolean;
}

export interface KnownHeaders {
  /** In their order. */
  readonly headers: readonly string[];
  /** Whether a text without any of them has its columns in that order; else its first line has the headers. */
  readonly mayBeBare: boolean;
  /** Those by one of which alone a first line is told; all when absent. Another may also be a value: rows, Rows. */
  readonly telling?: readonly string[];
  /** Headers of the same columns in other languages, each with the one that it is read as. */
  readonly elsewhere?: Readonly<Record<string, string>>;
}

/** A sheet that is saved as text has its title and what else stands above the headers. */
const mostLinesAbove = 30;

export function readDelimited(text: string, known?: KnownHeaders): Delimited {
  const content = text.replace(/^\uFEFF/, '');
  const elsewhere = new Map(
    Object.entries(known?.elsewhere ?? {}).map(([there, header]) => [plainWord(there), header]),
  );
  const here = new Set(known?.headers.map(plainWord));
  /** As it stands, or as this language has it. */
  const headerOf = (cell: string): string => {
    const plain = plainWord(cell);
    return here.has(plain) ? cell.trim() : (elsewhere.get(plain) ?? cell.trim());
  };
  const isHead = (cells: readonly string[], names = known?.headers ?? [], least = 2): boolean => {
    const plain = names.map(plainWord);
    return cells.filter((cell) => plain.includes(plainWord(headerOf(cell)))).length >= least;
  };
  const separator = detectSeparator(content, (cells) => isHead(cells));
  const all = splitRecords(content, separator);
  const decimalComma = separator !== ',';
  // One name that is known could be anything further down, but not in the first line.
  const found = isHead(all[0]?.cells ?? [], known?.telling, 1)
    ? 0
    : all.slice(0, mostLinesAbove).findIndex(({ cells }) => isHead(cells));
  const isHeaded = found >= 0 || known?.mayBeBare !== true;
  const [head, ...below] = all.slice(Math.max(0, found));
  const firstLine = head?.cells.map(headerOf) ?? [];
  const headers = isHeaded ? firstLine : bareHeaders(all, known.headers);
  const records = isHeaded || head === undefined ? below : [head, ...below];
  const headProblems = problemsOfHead(head, headers);
  const headerLine = head?.line ?? 1;
  if (head === undefined || headProblems.length > 0) {
    return { headers: [], headerLine, isHeaded, rows: [], problems: headProblems, decimalComma };
  }
  const problems: DelimitedProblem[] = [];
  const rows: { line: number; cells: readonly string[] }[] = [];
  for (const { line, cells, isQuoteOpen } of records) {
    const long = longCell(line, cells);
    if (isQuoteOpen) {
      problems.push({ code: 'openQuote', line });
    } else if (long !== null) {
      problems.push(long);
    } else if (cells.slice(headers.length).some((cell) => cell.trim() !== '')) {
      problems.push({ code: 'raggedLine', line, expected: headers.length, found: cells.length });
    } else {
      rows.push({ line, cells: headers.map((_, index) => cells[index] ?? '') });
    }
  }
  return { headers, headerLine, isHeaded, rows, problems, decimalComma };
}

/** The text without the records that begin on these lines; nothing where only headers would be left. */
export function withoutRecords(
  text: string,
  { rows, problems }: Delimited,
  taken: ReadonlySet<number>,
): string {
  const records = [...rows, ...problems].flatMap((each) => ('line' in each ? [each.line] : []));
  if (records.every((line) => taken.has(line))) return '';
  const starts = new Set(records);
  let isOut = false;
  const kept = text.split(/\r\n|\r|\n/).filter((_, index) => {
    if (starts.has(index + 1)) isOut = taken.has(index + 1);
    return !isOut;
  });
  return kept.join('\n');
}

/** The first line may have more columns than are known, and a later one more than the first. */
function bareHeaders(records: readonly FileRecord[], known: readonly string[]): string[] {
  const [first = 0, ...widths] = records.map(({ cells }) => cells.length);
  const longest = widths.reduce((most, width) => Math.max(most, width), first);
  const length = Math.max(first, Math.min(longest, known.length));
  return Array.from({ length }, (_, index) => known[index] ?? '');
}

function problemsOfHead(head: FileRecord | undefined, headers: readonly string[]): DelimitedProblem[] {
  if (head === undefined) return [{ code: 'empty' }];
  const { line } = head;
  if (head.isQuoteOpen) return [{ code: 'openQuote', line }];
  const long = longCell(line, headers);
  if (long !== null) return [long];
  const keys = headers.map(plainWord);
  return headers.flatMap((header, index) => {
    const first = keys.indexOf(keys[index] ?? '');
    if (header === '' || first === index) return [];
    return [{ code: 'duplicateHeader' as const, line, header, column: index + 1, firstColumn: first + 1 }];
  });
}

function longCell(line: number, cells: readonly string[]): DelimitedProblem | null {
  const index = cells.findIndex(({ length }) => length > longestText);
  const length = cells[index]?.length ?? 0;
  return index < 0 ? null : { code: 'longCell', line, column: index + 1, length, most: longestText };
}

const separators = ['\t', ';', ','] as const;

/** What separates the headers. A comma may stand inside a header of a semicolon file, hardly the other way round. */
function detectSeparator(content: string, isHead: (cells: readonly string[]) => boolean): Separator {
  const top = content.split(/\r\n|\r|\n/, 2 * mostLinesAbove).map((line) => line.replaceAll('"', ''));
  const found = separators.find((separator) => top.some((line) => isHead(line.split(separator))));
  if (found !== undefined) return found;
  const firstLine = /[^\r\n]*\S[^\r\n]*/.exec(content)?.[0] ?? '';
  const outsideQuotes = firstLine.replace(/"[^"]*"/g, '');
  const count = (character: string): number => outsideQuotes.split(character).length - 1;
  if (count('\t') > 0) return '\t';
  return count(';') > 0 && count(';') >= count(',') ? ';' : ',';
}
