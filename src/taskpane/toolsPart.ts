/** What is needed now and then: repairs, and what is handed to others. Closed until somebody looks for it. */
import { copyValues, type CopyReport } from '../workbook/copyValues';
import type { LiveWorkbook, Reentered, Unsettled } from '../workbook/port';
import type { SheetTemplate } from '../workbook/template';
import { withLaterHomework } from '../templates/homework';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element } from './elements';
import { nameCells } from './nameCells';
import { createNotice } from './notice';
import { failureSentence, problemSentence } from './problemSentence';
import { today } from '../workbook/today';

const { pane } = catalogue;
const words = pane.tools;

const settleMs = 15000;

export interface ToolsParts {
  readonly workbook: LiveWorkbook;
  readonly templates: readonly SheetTemplate[];
  readonly actions: Actions;
  readonly refresh: () => Promise<void>;
}

export function createToolsPart({ workbook, templates, actions, refresh }: ToolsParts): HTMLElement {
  const notice = createNotice(actions);
  /** @param run gives back what is said when it is done */
  const tool = (
    { button: label, help, working }: (typeof words)['formulas' | 'copy'],
    run: () => Promise<string>,
    sayFailure: (cause: unknown) => string,
  ): HTMLElement[] => {
    const button = element('button', { type: 'button' }, label);
    actions.add(button);
    button.addEventListener('click', () => {
      void actions.run(async () => {
        notice.say(working);
        await run().then(
          (said) => notice.say(said),
          (cause: unknown) => notice.warn(sayFailure(cause)),
        );
      });
    });
    return [element('div', { class: 'buttons' }, button), element('p', { class: 'help' }, help)];
  };
  const enterAgain = async (): Promise<string> => {
    const reentered = await workbook.reenterFormulas(pane.undo.formulas);
    await refresh();
    return sayReentered(reentered);
  };
  const copy = async (): Promise<string> => {
    const copyWords = {
      title: pane.undo.copy,
      nameOf: (sheet: string) => fill(words.copyName, { sheet }),
      line: fill(words.copyLine, { day: today() }),
    };
    const known = withLaterHomework(templates, await workbook.sheets());
    return sayCopied(await copyValues(workbook, known, copyWords, settleMs));
  };
  return element(
    'details',
    {},
    element('summary', {}, words.heading),
    ...tool(words.formulas, enterAgain, (cause) =>
      fill(words.enteringCut, { problem: problemSentence(cause) }),
    ),
    ...tool(words.copy, copy, failureSentence),
    notice.element,
  );
}

function sayReentered({ cells, locked }: Reentered): string {
  if (cells === 0 && locked.length === 0) return words.noneToEnter;
  const entered = cells === 0 ? [] : [fill(words.entered, { count: cells })];
  const left = locked.length === 0 ? [] : [fill(words.leftLocked, { sheets: locked.join(', ') })];
  return [...entered, ...left].join(' ');
}

function sayCopied(report: CopyReport): string {
  if ('unsettled' in report) return sayUnsettled(report.unsettled);
  const { made, errors } = report;
  if (made.length === 0) return words.nothingToCopy;
  const copied = fill(words.copied, { sheets: made.join(', '), made: made.length });
  return errors === 0 ? copied : `${copied} ${fill(words.copiedErrors, { count: errors })}`;
}

function sayUnsettled(unsettled: readonly Unsettled[]): string {
  return fill(words.copyUnsettled, { cells: nameCells(unsettled), count: unsettled.length });
}
