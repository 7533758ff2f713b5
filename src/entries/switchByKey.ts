/**
 * F6 leads from the grid to the pane, to what had the keyboard there last, and back. The grid keeps Tab for its
 * cells, so without it nobody could leave it by keyboard alone.
 */
export function switchByKey(pane: HTMLElement, toGrid: () => void): void {
  let last = pane;
  pane.addEventListener('focusin', (event) => {
    if (event.target instanceof HTMLElement) last = event.target;
  });
  // The grid takes keys before they come up to the document.
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6') return;
      event.preventDefault();
      event.stopPropagation();
      if (pane.contains(document.activeElement)) toGrid();
      else (last.isConnected ? last : pane).focus();
    },
    { capture: true },
  );
}
