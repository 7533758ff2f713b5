/** The desk of a page: its grid, its database, its tabs. */
import { createDesk, type PageDesk } from './createDesk';
import { openHeadless } from './openHeadless';
import { openPage, type PageOptions, type PageWorkbook } from './openPage';
import { openSnapshotStore } from './snapshotStore';
import { tabLock } from './tabLock';

export interface GridDesk extends PageDesk {
  /** Gives the keyboard to the grid. */
  takeFocus(): void;
  /** In the workbook that is open. @returns what `PageWorkbook` says of it */
  undo(): Promise<string | null>;
  redo(): Promise<string | null>;
}

/** @param name of what is kept, in this browser at this address */
export function openDesk(options: PageOptions, container: HTMLElement, name: string): GridDesk {
  let shown: PageWorkbook | null = null;
  const desk = createDesk({
    open(snapshot) {
      const grid = document.createElement('div');
      container.replaceChildren(grid);
      shown = openPage({ ...options, snapshot }, grid);
      return shown;
    },
    openEmpty: () => openHeadless(options),
    openStore: () => openSnapshotStore(name),
    // Not in an old browser, nor at an address without encryption.
    lock: 'locks' in navigator ? tabLock(navigator.locks, name) : null,
    now: Date.now,
  });
  // The last that a page surely hears of; then it may be thrown away without another word.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') desk.flush();
  });
  window.addEventListener('pagehide', desk.flush);
  return {
    ...desk,
    takeFocus: () => shown?.takeFocus(),
    undo: async () => shown?.undo() ?? null,
    redo: async () => shown?.redo() ?? null,
  };
}
