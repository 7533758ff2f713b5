import { recordColumns, type RecordColumns } from './recordColumns';

export type Separator = ',' | ';' | '\t';

/** The cells of each record of a text; `line` is its first, from 1. */
export type Split = (
  text: string,
  separator: Separator,
) => readonly { readonly line: number; readonly cells: readonly string[]; readonly isQuoteOpen: boolean }[];

export interface RecordHead {
  /** From 1. */
  readonly line: number;
  readonly separator: Separator;
  readonly headers: readonly string[];
  readonly columns: RecordColumns;
  /** What stands below. */
  readonly body: string;
}

/** A service writes some lines about the station first, no more: judgement. */
const mostLinesBefore = 200;

/**
 * The first line whose cells name a day and a temperature, whatever stands before it.
 *
 * @returns null when none of the first 200 lines does
 */
export function findHead(text: string, split: Split): RecordHead | null {
  const lineEnd = /\r\n|\r|\n/g;
  let start = 0;
  for (let line = 1; line <= mostLinesBefore && start < text.length; line++) {
    const end = lineEnd.exec(text);
    const own = text.slice(start, end?.index ?? text.length);
    start = end === null ? text.length : lineEnd.lastIndex;
    const heads = ([',', ';', '\t'] as const).flatMap((separator): RecordHead[] => {
      const headers = (split(own, separator)[0]?.cells ?? []).map((cell) => cell.trim());
      const columns = recordColumns(headers);
      return columns === null ? [] : [{ line, separator, headers, columns, body: '' }];
    });
    const [head] = heads.sort((a, b) => b.headers.length - a.headers.length);
    if (head !== undefined) return { ...head, body: text.slice(start) };
  }
  return null;
}
