/** How the figure in the selected cell comes about. Does nothing while it is closed. */
import type { Area, LiveWorkbook } from '../workbook/port';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, section, setText } from './elements';
import { problemSentence } from './problemSentence';
import type { ReadWorking, Working } from './readWorking';
import { createRefresher } from './refresher';
import { nameCells } from './nameCells';

const words = catalogue.pane.working;

/** While the selection moves on within it, nothing is read. */
const pauseAfterSelectionMs = 150;

export interface WorkingSection {
  readonly element: HTMLElement;
  /** Another cell is selected, or what stands in the cells is other than it was. */
  follow(): void;
  stop(): void;
}

export function createWorkingSection(workbook: LiveWorkbook, readWorking: ReadWorking): WorkingSection {
  const { element: all } = section('working', words.heading);
  const state = element('p', { role: 'status', class: 'hint' });
  const trouble = element('p', { role: 'alert', class: 'notice notice-bad' });
  const content = element('div', { class: 'working', tabindex: -1 });
  const box = element('details', {}, element('summary', {}, words.summary), state, trouble, content);
  all.append(element('p', { class: 'lead' }, words.lead), box);

  /** The cell whose working is shown: it stays when the selection moves to an input of it. */
  let kept: Area | null = null;
  let drawn = '';

  const reveal = (area: Area): void => {
    workbook.reveal(area).then(
      () => setText(trouble, ''),
      (cause: unknown) => setText(trouble, fill(words.goneThere, { problem: problemSentence(cause) })),
    );
  };
  const foldedParts = (): HTMLDetailsElement[] => [...content.querySelectorAll('details')];
  const sayPart = (part: HTMLDetailsElement): string => part.querySelector('summary')?.textContent ?? '';
  const draw = async (working: Working | null): Promise<void> => {
    const next = JSON.stringify(working);
    if (next === drawn) return;
    drawn = next;
    // Heavy for a pane in which nobody asks for it.
    const { workingView } = await import('./workingView');
    const unfolded = foldedParts()
      .filter(({ open }) => open)
      .map(sayPart);
    const focused = content.contains(document.activeElement) ? document.activeElement?.textContent : null;
    content.replaceChildren(...(working === null ? [] : workingView(working, reveal)));
    for (const part of foldedParts()) part.open = unfolded.includes(sayPart(part));
    if (focused == null) return;
    const again = [...content.querySelectorAll('button')].find(({ textContent }) => textContent === focused);
    (again ?? content).focus({ preventScroll: true });
  };

  /** What is said of the selected cell; draws its working, or once more that of the cell before. */
  const look = async (): Promise<string> => {
    const selected = await workbook.selection();
    const at = selected && { ...selected, rows: 1, columns: 1 };
    const found = at && (await readWorking(workbook, at));
    if (found === 'noFunctions') return words.noFunctions;
    if (at !== null && typeof found === 'object' && found !== null) {
      kept = at;
      await draw(found);
      return fill(words.announced, { cell: nameCells([at]) });
    }
    const before = kept && (await readWorking(workbook, kept));
    const isKept = typeof before === 'object' && before !== null;
    if (!isKept) kept = null;
    await draw(isKept ? before : null);
    if (at === null) return isKept ? '' : words.nothingSelected;
    const cell = nameCells([at]);
    if (found === 'unreadable') return fill(words.unreadable, { cell });
    return kept === null
      ? fill(words.notOurs, { cell })
      : fill(words.notOursKept, { cell, kept: nameCells([kept]) });
  };

  const read = async (): Promise<void> => {
    if (!box.open) return;
    try {
      setText(state, await look());
      setText(trouble, '');
    } catch (cause) {
      setText(trouble, fill(words.failed, { problem: problemSentence(cause) }));
    }
  };
  const refresher = createRefresher(read, pauseAfterSelectionMs, () => false);
  box.addEventListener('toggle', () => {
    if (!box.open) return;
    if (drawn === '') setText(state, words.reading);
    void refresher.now();
  });
  return {
    element: all,
    follow: () => {
      if (box.open) refresher.soon();
    },
    stop: refresher.stop,
  };
}
