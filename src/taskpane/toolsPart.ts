/** What is needed now and then: repairs, and what is handed to others. Closed until somebody looks for it. */
import type { LiveWorkbook, Reentered } from '../workbook/port';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element } from './elements';
import { createNotice } from './notice';
import { problemSentence } from './problemSentence';

const { pane } = english;
const words = pane.tools;

export function createToolsPart(
  workbook: LiveWorkbook,
  actions: Actions,
  refresh: () => Promise<void>,
): HTMLElement {
  const notice = createNotice();
  const formulas = element('button', { type: 'button' }, words.formulas);
  actions.add(formulas);
  formulas.addEventListener('click', () => {
    void actions.run(async () => {
      notice.say(words.entering);
      try {
        const reentered = await workbook.reenterFormulas(pane.undo.formulas);
        await refresh();
        notice.say(sayReentered(reentered));
      } catch (cause) {
        notice.warn(fill(words.enteringCut, { problem: problemSentence(cause) }));
      }
    });
  });
  return element(
    'details',
    {},
    element('summary', {}, words.heading),
    element('p', { class: 'help' }, words.formulasHelp),
    element('div', { class: 'buttons' }, formulas),
    notice.element,
  );
}

function sayReentered({ cells, locked }: Reentered): string {
  if (cells === 0 && locked.length === 0) return words.noneToEnter;
  const entered = cells === 0 ? [] : [fill(words.entered, { count: cells })];
  const left = locked.length === 0 ? [] : [fill(words.leftLocked, { sheets: locked.join(', ') })];
  return [...entered, ...left].join(' ');
}
