/** The keys that work on both sides of the page. */

/** What the keys are for. */
export interface KeyedWorkbook {
  /** Gives the keyboard to the grid. */
  takeFocus(): void;
  undo(): Promise<unknown>;
  redo(): Promise<unknown>;
}

/**
 * F6 leads from the grid to the pane, to what had the keyboard there last, and back. The grid keeps Tab for its
 * cells, so without it nobody could leave it by keyboard alone. Ctrl+Z and Ctrl+Y (Cmd on a Mac) undo and redo in
 * the workbook also from the pane, where its own changes are made; a text field keeps them for its text.
 */
export function listenForKeys(pane: HTMLElement, workbook: KeyedWorkbook): void {
  let last = pane;
  pane.addEventListener('focusin', (event) => {
    if (event.target instanceof HTMLElement) last = event.target;
  });
  const actionOf = (event: KeyboardEvent): (() => unknown) | null => {
    const isInPane = pane.contains(document.activeElement);
    if (event.key === 'F6')
      return isInPane ? workbook.takeFocus : () => (last.isConnected ? last : pane).focus();
    const isWithControl = (event.ctrlKey || event.metaKey) && !event.altKey;
    if (!isInPane || !isWithControl || keepsText(document.activeElement)) return null;
    const key = event.key.toLowerCase();
    if (key === 'y' || (key === 'z' && event.shiftKey)) return workbook.redo;
    return key === 'z' ? workbook.undo : null;
  };
  // The grid takes keys before they come up to the document.
  document.addEventListener(
    'keydown',
    (event) => {
      const action = actionOf(event);
      if (action === null) return;
      event.preventDefault();
      event.stopPropagation();
      void action();
    },
    { capture: true },
  );
}

/** Whether the element has an undo of its own. */
function keepsText(element: Element | null): boolean {
  if (element instanceof HTMLTextAreaElement) return true;
  return (
    element instanceof HTMLInputElement && !['button', 'checkbox', 'file', 'radio'].includes(element.type)
  );
}
