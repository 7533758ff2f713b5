/** The desk of a page: its grid, its database, its tabs. */
import { createDesk, type PageDesk } from './createDesk';
import type { WorkbookOptions } from './engine';
import { openHeadless } from './openHeadless';
import { openPage } from './openPage';
import { openSnapshotStore } from './snapshotStore';
import { tabLock } from './tabLock';

/** @param name of what is kept, in this browser at this address */
export function openDesk(options: WorkbookOptions, container: HTMLElement, name: string): PageDesk {
  const desk = createDesk({
    open(snapshot) {
      const grid = document.createElement('div');
      container.replaceChildren(grid);
      return openPage({ ...options, snapshot }, grid);
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
  return desk;
}
