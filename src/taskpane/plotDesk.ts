/** What the parts of the plots section share: the list with its choice, what was read, and the one way to write. */
import { arrangeLines, type PlannedLine } from '../workbook/arrangeLines';
import type { LiveWorkbook } from '../workbook/port';
import type { LinesRead } from '../workbook/readLines';
import type { TableTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import type { Actions } from './actions';
import { element } from './elements';
import { createNotice, type Notice } from './notice';
import { createPlotList, type PlotList } from './plotList';
import { plotName } from './plotRow';
import { failureSentence } from './problemSentence';
import { readPlots, type PlotsState } from './readPlots';

export interface PlotDesk {
  readonly workbook: LiveWorkbook;
  readonly table: TableTemplate;
  readonly list: PlotList;
  readonly notice: Notice;
  /** As the person sees them; null while there is no sheet. */
  lines(): LinesRead | null;
  /** Whether the computed figures of these lines are theirs. */
  isSettled(): boolean;
  /** What was read, for everybody who shows it. */
  show(state: PlotsState): void;
  /** Told which line is chosen, of how many, whenever one of the two may have changed. */
  onPlace(listener: (chosen: number | null, count: number) => void): void;
  /** As the person calls the chosen plot; null when none is chosen. */
  chosenName(): string | null;
  /** An action that writes. */
  run(action: () => Promise<void>): void;
  /** On the plot that is chosen; says so when none is. */
  withChosen(action: (read: LinesRead, index: number, name: string) => void): void;
  /**
   * One change, then a new reading. Refuses when the sheet has changed since it was read.
   * @param chosen the line that is chosen afterwards
   * @throws HostError
   */
  write(
    read: LinesRead,
    planned: readonly PlannedLine[],
    title: string,
    chosen: number | null,
  ): Promise<void>;
  button(text: string, onClick: () => void): HTMLButtonElement;
  readonly bar: Actions['bar'];
}

/** @param onShow takes what was read */
export function createPlotDesk(
  workbook: LiveWorkbook,
  table: TableTemplate,
  actions: Actions,
  onShow: (state: PlotsState) => void,
): PlotDesk {
  const notice = createNotice(actions);
  const placeListeners: Parameters<PlotDesk['onPlace']>[0][] = [];
  const list = createPlotList(
    () => notice.say(''),
    (chosen, count) => {
      for (const tell of placeListeners) tell(chosen, count);
    },
  );
  let read: LinesRead | null = null;
  let isSettled = false;

  const show = (state: PlotsState): void => {
    const before = read?.stamp;
    read = typeof state === 'object' ? state.lines : null;
    isSettled = typeof state === 'object' && state.isSettled;
    if (read?.stamp !== before) notice.forgetGood();
    onShow(state);
  };
  const chosenName = (): string | null => {
    const index = list.chosen();
    const line = index === null ? undefined : read?.lines[index];
    return index === null || line === undefined ? null : plotName(line, index);
  };
  return {
    workbook,
    table,
    list,
    notice,
    lines: () => read,
    isSettled: () => isSettled,
    show,
    onPlace: (listener) => placeListeners.push(listener),
    chosenName,
    bar: actions.bar,
    run(action) {
      void actions.run(() => action().catch((cause: unknown) => notice.warn(failureSentence(cause))));
    },
    withChosen(action) {
      const index = list.chosen();
      const line = index === null ? undefined : read?.lines[index];
      if (actions.isBusy() || read === null) return;
      if (index === null || line === undefined) return notice.warn(catalogue.pane.plots.chooseFirst);
      action(read, index, plotName(line, index));
    },
    async write(from, planned, title, chosen) {
      await workbook.apply(arrangeLines(from, table, planned, title));
      const state = await readPlots(workbook, table, false);
      list.choose(null);
      show(state);
      list.choose(chosen);
    },
    button(text, onClick) {
      const made = element('button', { type: 'button' }, text);
      made.addEventListener('click', onClick);
      actions.add(made);
      return made;
    },
  };
}
