/** The keys that work on both sides of the page. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, setText } from './elements';

const words = catalogue.pane.undone;

/** What the keys are for. */
export interface KeyedWorkbook {
  /** Gives the keyboard to the grid. */
  takeFocus(): void;
  /** @returns the title of the change; "" for one that has none, null when there was nothing to undo */
  undo(): Promise<string | null>;
  redo(): Promise<string | null>;
}

/**
 * F6 leads from the grid to the pane, to what had the keyboard there last, and back. The grid keeps Tab for its
 * cells, so without it nobody could leave it by keyboard alone. Ctrl+Z and Ctrl+Y (Cmd on a Mac) undo and redo in
 * the workbook also from the pane, where its own changes are made; a text field keeps them for its text. What came of
 * it is said over the foot of the pane until the next key or click: it may be on another sheet than the one in front.
 */
export function listenForKeys(pane: HTMLElement, workbook: KeyedWorkbook): void {
  const said = element('p', { role: 'status', class: 'cucurbit-pane undone' });
  // Beside the pane, which is made anew with every plan.
  pane.after(said);
  document.addEventListener('pointerdown', () => setText(said, ''));
  const step = async (
    take: () => Promise<string | null>,
    { named, typed, none }: StepWords,
  ): Promise<void> => {
    // Emptied first: the same words again must be spoken again.
    setText(said, '');
    const title = await take();
    setText(said, title === null ? none : title === '' ? typed : fill(named, { title }));
  };
  const undo = (): Promise<void> => step(workbook.undo, words.undo);
  const redo = (): Promise<void> => step(workbook.redo, words.redo);
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
    if (key === 'y' || (key === 'z' && event.shiftKey)) return redo;
    return key === 'z' ? undo : null;
  };
  // The grid takes keys before they come up to the document.
  document.addEventListener(
    'keydown',
    (event) => {
      if (!modifiers.has(event.key)) setText(said, '');
      const action = actionOf(event);
      if (action === null) return;
      event.preventDefault();
      event.stopPropagation();
      void action();
    },
    { capture: true },
  );
}

const modifiers: ReadonlySet<string> = new Set(['Alt', 'Control', 'Meta', 'Shift']);

interface StepWords {
  readonly named: string;
  readonly typed: string;
  readonly none: string;
}

/** Whether the element has an undo of its own. */
function keepsText(element: Element | null): boolean {
  if (element instanceof HTMLTextAreaElement) return true;
  return (
    element instanceof HTMLInputElement && !['button', 'checkbox', 'file', 'radio'].includes(element.type)
  );
}
