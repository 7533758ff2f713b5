/**
 * Where one workbook after another is opened and kept between visits: in a page of our own. Inside a spreadsheet
 * program that is the program's business.
 */
import type { LiveWorkbook, Mark, WorkbookPort } from './port';

/** Whether what is typed now will be there on the next visit. */
export type Keeping =
  /** Up to that moment, in milliseconds since 1970. */
  | { readonly code: 'kept'; readonly at: number }
  /** Another tab has it open and keeps it. */
  | { readonly code: 'otherTab' }
  /** That tab is closed; what it kept can be opened here. */
  | { readonly code: 'otherTabClosed' }
  | { readonly code: 'storageFull' }
  /** The browser gave up a write and said no reason. */
  | { readonly code: 'brokenOff' }
  | { readonly code: 'noStorage' };

export interface Started {
  readonly workbook: LiveWorkbook;
  /** What was kept from the last visit. What cannot be read is put aside, not thrown away. */
  readonly found: 'kept' | 'nothing' | 'unreadable';
}

/** Fills an empty workbook. */
export type Filling = (workbook: WorkbookPort) => Promise<unknown>;

/** What came of reading a file. */
export type FileRead =
  | { readonly fill: Filling; readonly said: readonly string[] }
  /** Why nothing can be opened, and what to do. */
  | { readonly refused: string };

export interface Desk {
  /**
   * Opens what is kept, or else an example. To be called once, first. @throws what `filling` throws
   *
   * @param isOld by the marks of its sheets: a kept example that nobody has changed since makes way for a new one,
   *   unopened
   */
  start(filling: Filling, isOld: (marks: readonly (Mark | null)[]) => boolean): Promise<Started>;
  /** Opens a new workbook in place of what is open. @throws what `filling` throws; then nothing has changed */
  replace(filling: Filling, isExample?: boolean): Promise<LiveWorkbook>;
  /** Whether there is one that was open before this one. */
  hasBefore(): boolean;
  /** Opens the one before; what is open now is then the one before. */
  bringBack(): Promise<LiveWorkbook>;
  /** How many could not be opened. */
  countAside(): number;
  /** As they are kept, for whoever can read them. */
  asideText(): string;
  /** Opens the latest of them that can be read by now; else what was open stays so, and all stay put aside. */
  openAside(): Promise<{ readonly workbook: LiveWorkbook; readonly isOpened: boolean }>;
  /** Opens what another tab kept; null when yet another has taken it. */
  takeOver(): Promise<LiveWorkbook | null>;
  keeping(): Keeping;
  /** Gives back what ends the listening. */
  onKeeping(listener: () => void): () => void;
}
