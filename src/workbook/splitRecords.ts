/** The records of a text between whose cells a separator stands; a quoted cell may hold separators and line ends. */
import Papa from 'papaparse';

export type Separator = ',' | ';' | '\t';

export interface FileRecord {
  /** Its first, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
  readonly isQuoteOpen: boolean;
}

/** Blank lines are passed over, also those of separators only. */
export function splitRecords(content: string, separator: Separator): FileRecord[] {
  const records: FileRecord[] = [];
  let start = 0;
  let line = 1;
  Papa.parse<string[]>(content, {
    delimiter: separator,
    step: ({ data, errors, meta }) => {
      const isQuoteOpen = errors.some((error) => error.type === 'Quotes');
      const isBlank = data.every((cell) => cell.trim() === '');
      if (isQuoteOpen || !isBlank) records.push({ line, cells: data, isQuoteOpen });
      line += content.slice(start, meta.cursor).match(/\r\n|\r|\n/g)?.length ?? 0;
      start = meta.cursor;
    },
  });
  return records;
}
