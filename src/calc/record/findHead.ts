import { lackingOf, recordColumns, type RecordColumns } from './recordColumns';
import type { Measure } from './recordDoubts';

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

/** The line that comes nearest to a header, and what it does not name. */
export interface HeadLacking {
  readonly line: number;
  readonly lacking: readonly Measure[];
}

/**
 * The first line whose cells name a day and a temperature, whatever stands before it; else the first that names either.
 *
 * @returns null when none of the first 200 lines does
 */
export function findHead(text: string, split: Split): RecordHead | HeadLacking | null {
  const lineEnd = /\r\n|\r|\n/g;
  let start = 0;
  let near: HeadLacking | null = null;
  for (let line = 1; line <= mostLinesBefore && start < text.length; line++) {
    const end = lineEnd.exec(text);
    const own = text.slice(start, end?.index ?? text.length);
    start = end === null ? text.length : lineEnd.lastIndex;
    const heads = ([',', ';', '\t'] as const)
      .map((separator) => {
        const headers = (split(own, separator)[0]?.cells ?? []).map((cell) => cell.trim());
        return { line, separator, headers, columns: recordColumns(headers), body: '' };
      })
      .sort((a, b) => b.headers.length - a.headers.length);
    const head = heads.find(({ columns }) => lackingOf(columns).length === 0);
    if (head !== undefined) return { ...head, body: text.slice(start) };
    const [widest] = heads;
    if (near !== null || widest === undefined || widest.headers.length === 1) continue;
    const lacking = lackingOf(widest.columns);
    if (lacking.length < everything) near = { line, lacking };
  }
  return near;
}

/** The date, the high and the low. */
const everything = 3;
