/** How the figure in the selected cell comes about. Does nothing while it is closed. */
import type { Area, LiveWorkbook } from '../workbook/port';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, section, setText } from './elements';
import { problemSentence } from './problemSentence';
import type { FoundWorking, ReadWorking, Working } from './readWorking';
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
  const offer = element('button', { type: 'button', hidden: true });
  const box = element('details', {}, element('summary', {}, words.summary), state, trouble, offer, content);
  all.append(element('p', { class: 'lead' }, words.lead), box);

  /** The cell whose working is shown: it stays when the selection moves to an input of it. */
  let kept: Area | null = null;
  let drawn = '';
  /** Whose working tells the answer of a problem and was asked for all the same. */
  let asked: Area | null = null;
  let onOffer: () => void = () => undefined;
  offer.addEventListener('click', () => onOffer());

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

  const offerTo = (act: () => void, name: string): void => {
    onOffer = act;
    setText(offer, fill(words.offer, { name }));
    offer.hidden = false;
  };
  const ask = (at: Area): void => {
    asked = at;
    // The button goes, and must not take the focus with it.
    void refresher.now().then(() => content.focus({ preventScroll: true }));
  };

  /** What is said of the selected cell; draws its working, or once more that of the cell before. */
  const look = async (): Promise<string> => {
    const selected = await workbook.selection();
    const at = selected && { ...selected, rows: 1, columns: 1 };
    const found = at && (await readWorking(workbook, at));
    offer.hidden = true;
    if (found === 'noFunctions') return words.noFunctions;
    if (isWorking(found)) {
      const name = found.problem?.position ?? nameCells([found.at]);
      const isHeldBack = found.tellsAnswer && !isSame(asked, found.at);
      kept = isHeldBack ? null : found.at;
      await draw(isHeldBack ? null : found);
      if (!isHeldBack) return fill(words.announced, { name });
      offerTo(() => ask(found.at), name);
      return fill(words.tellsAnswer, { name });
    }
    const filledBy = typeof found === 'object' && found !== null ? found.filledBy : null;
    if (filledBy !== null && !isSame(kept, filledBy)) kept = null;
    const before = kept && (await readWorking(workbook, kept));
    const still = isWorking(before) ? before : null;
    if (still === null) kept = null;
    await draw(still);
    if (at === null) return still === null ? words.nothingSelected : '';
    const cell = nameCells([at]);
    if (filledBy !== null) {
      const origin = nameCells([filledBy]);
      if (still === null) offerTo(() => reveal(filledBy), origin);
      return fill(words.filledBy, { cell, origin });
    }
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

function isWorking(found: FoundWorking | 'noFunctions'): found is Working {
  return typeof found === 'object' && found !== null && 'calls' in found;
}

function isSame(one: Area | null, { sheet, row, column }: Area): boolean {
  return one !== null && one.sheet === sheet && one.row === row && one.column === column;
}
