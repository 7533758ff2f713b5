/// <reference types="office-js" />

/**
 * What a change needs to be taken back, on a very hidden sheet of the workbook itself: it is there before the first
 * cell is touched and goes with the last write, so that a change cut off at any request can be taken back later.
 */
import type { Area, Block, Mark, Span } from '../../workbook/port';
import { enterText, type Standing } from './cellContents';
import { readCells } from './readCells';
import { cellSteps, type WriteStep } from './writeSteps';

export interface Journal {
  /** What the change is called. */
  readonly title: string;
  /** The sheet of our long lists, that stays hidden; null for none. By the name it has when the change is whole. */
  readonly lists: string | null;
  /** Names that a deleted sheet had left behind; some get cells of new sheets. */
  readonly deadNames: readonly string[];
  /** What stood in cells that were there. `sheet` counts the touched sheets. */
  readonly cells: readonly (Omit<Block, 'contents'> & {
    readonly sheet: number;
    readonly contents: readonly (readonly Standing[])[];
  })[];
  /** Tables made longer, as they were. */
  readonly tables: readonly (Span & { readonly table: string; readonly added: number })[];
  /** Rules that were not there. */
  readonly rules: readonly {
    readonly sheet: number;
    readonly row: number;
    readonly column: number;
    readonly equals: string;
  }[];
  /** The marks of sheets that get another one. */
  readonly marks: readonly { readonly sheet: number; readonly mark: Mark }[];
  /** Pictures put on sheets that were there, by their names until the change is whole and from then on. */
  readonly pictures: readonly { readonly sheet: number; readonly name: string; readonly becomes: string }[];
}

/** Before it is ready nothing but the journal was written; when it is done only tidying is left. */
export type JournalState = 'unready' | 'ready' | 'done';

/** Short, so that as many cells as are read at once fit into one answer. */
const pieceLength = 150;

/** The cell that holds the state. */
export function stateSteps(at: string, state: JournalState): WriteStep[] {
  return cellSteps({ sheet: at, row: 0, column: 0, rows: 1, columns: 1 }, [[state]]);
}

/** All of the journal but its state. */
export function journalSteps(at: string, journal: Journal): WriteStep[] {
  // In plain characters no piece ends inside one.
  const text = JSON.stringify(journal).replace(
    /[\u0080-\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  const pieces = text.match(new RegExp(`[^]{1,${pieceLength}}`, 'g')) ?? [];
  const area: Area = { sheet: at, row: 1, column: 0, rows: pieces.length, columns: 1 };
  return cellSteps(
    area,
    pieces.map((piece) => [enterText(piece)]),
  );
}

export interface JournalRead {
  readonly state: JournalState;
  /** null while it is not ready. */
  readonly journal: Journal | null;
}

/** @throws HostError */
export async function readJournal(excel: typeof Excel, used: Area | null): Promise<JournalRead> {
  if (used === null) return { state: 'unready', journal: null };
  const [cells] = await readCells(excel, [{ ...used, columns: 1 }]);
  const [state = '', ...pieces] = (cells?.values ?? []).map(([text]) => String(text));
  if (state !== 'ready' && state !== 'done') return { state: 'unready', journal: null };
  return { state, journal: JSON.parse(pieces.join('')) as Journal };
}
