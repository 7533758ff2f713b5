/** The plots: a list over the lines of the Plots sheet, which stays the only place they are kept in. */
import {
  addLines,
  arrangeLines,
  copyLine,
  countUsed,
  linesAsTheyAre,
  removeLine,
  swapLines,
  type PlannedLine,
} from '../workbook/arrangeLines';
import { takeFreeName } from '../workbook/fillSheets';
import { HostError, isCellError, type LiveWorkbook, type ReadValue } from '../workbook/port';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { TableTemplate } from '../workbook/template';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section, setText } from './elements';
import { createNotice } from './notice';
import type { PaneTools } from './paneTools';
import { createPastePart } from './pastePart';
import { createPlotForm } from './plotForm';
import { createPlotList, followName } from './plotList';
import { plotName, plotRow } from './plotRow';
import { failureSentence } from './problemSentence';
import { createQuestion, type Values } from './question';
import { readCropFigures, type CropFigures } from './standIns';

const { pane } = english;
const words = pane.plots;
const plotHeaders = english.sheets.plots.columns;

export interface PlotsRead {
  readonly lines: LinesRead;
  readonly figures: CropFigures;
}

export type PlotsState = PlotsRead | 'absent' | 'unreadable';

export interface PlotsSection {
  readonly element: HTMLElement;
  show(state: PlotsState): void;
}

/** @throws HostError */
export async function readPlots(workbook: LiveWorkbook, table: TableTemplate): Promise<PlotsState> {
  const lines = await readLines(workbook, table);
  return lines === null ? 'absent' : { lines, figures: await readCropFigures(workbook) };
}

export interface PlotsParts {
  readonly workbook: LiveWorkbook;
  readonly table: TableTemplate;
  readonly actions: Actions;
  readonly tools: PaneTools;
}

export function createPlotsSection({ workbook, table, actions, tools }: PlotsParts): PlotsSection {
  const { element: all, heading } = section('plots', words.heading);
  const hint = element('p', { class: 'hint' });
  const list = createPlotList();
  const notice = createNotice();
  const form = createPlotForm(
    table,
    () => run(putForm),
    () => closeForm(),
  );
  const nameHeader = table.columns[0]?.header ?? '';
  let state: PlotsState = 'absent';
  /** The line that the form is open over, by place and name; null for a new one. */
  let target: { readonly index: number; readonly name: string } | null = null;

  const run = (action: () => Promise<void>): void =>
    void actions.run(() => action().catch((cause: unknown) => notice.warn(failureSentence(cause))));
  const withChosen = (action: (read: LinesRead, index: number, name: string) => void) => (): void => {
    const index = list.chosen();
    const read = typeof state === 'object' ? state.lines : null;
    const line = index === null ? undefined : read?.lines[index];
    if (actions.isBusy() || read === null) return;
    if (index === null || line === undefined) return notice.warn(words.chooseFirst);
    action(read, index, plotName(line, index));
  };
  const write = async (
    read: LinesRead,
    planned: readonly PlannedLine[],
    title: string,
    chosen: number | null,
  ): Promise<void> => {
    await workbook.apply(arrangeLines(read, table, planned, title));
    const next = await readPlots(workbook, table);
    list.choose(null);
    show(next);
    list.choose(chosen);
  };

  const button = (text: string, onClick: () => void): HTMLButtonElement => {
    const made = element('button', { type: 'button' }, text);
    made.addEventListener('click', onClick);
    actions.add(made);
    return made;
  };
  const add = button(words.add, () => openForm(null));
  const onChosen = element(
    'div',
    { class: 'buttons', role: 'group', 'aria-label': words.withChosen },
    button(
      words.edit,
      withChosen((read, index) => openForm({ index, line: read.lines[index] })),
    ),
    button(
      words.copy,
      withChosen((read, index, name) => run(() => duplicate(read, index, name))),
    ),
    button(
      words.up,
      withChosen((read, index, name) => run(() => move(read, index, index - 1, name))),
    ),
    button(
      words.down,
      withChosen((read, index, name) => run(() => move(read, index, index + 1, name))),
    ),
    button(
      words.remove,
      withChosen((_, __, name) => askRemoval(name)),
    ),
    button(
      words.show,
      withChosen(({ area }, index) =>
        run(() => workbook.reveal({ ...area, row: area.row + 1 + index, rows: 1, columns: 1 })),
      ),
    ),
  );

  const duplicate = async (read: LinesRead, index: number, name: string): Promise<void> => {
    const copy = takeFreeName(name, takenNames(read), Infinity);
    await write(read, copyLine(read, index, [{ [nameHeader]: copy }]), pane.undo.copyPlot, index + 1);
    notice.say(fill(words.copied, { name, copy }));
  };
  const move = async (read: LinesRead, index: number, to: number, name: string): Promise<void> => {
    const count = countUsed(read);
    if (to < 0 || to >= count) return notice.say(fill(to < 0 ? words.isFirst : words.isLast, { name }));
    await write(read, swapLines(read, index, to), pane.undo.movePlot, to);
    notice.say(fill(words.moved, { name, line: to + 1, count }));
  };

  const question = element('p', {});
  const removal = element(
    'div',
    { class: 'asks', role: 'group', 'aria-label': words.remove, hidden: true },
    question,
    element(
      'div',
      { class: 'buttons' },
      button(
        words.removeIt,
        withChosen((read, index, name) => {
          removal.hidden = true;
          // Another plot was chosen since, here or by a change in the sheet.
          if (question.textContent !== fill(words.removeAsk, { name })) return notice.warn(words.askAgain);
          run(() => remove(read, index, name));
        }),
      ),
      button(words.keepIt, () => {
        removal.hidden = true;
        list.focus();
      }),
    ),
  );
  const askRemoval = (name: string): void => {
    setText(question, fill(words.removeAsk, { name }));
    removal.hidden = false;
    removal.querySelector('button')?.focus();
  };

  const remove = async (read: LinesRead, index: number, name: string): Promise<void> => {
    const left = countUsed(read) - 1;
    const next = left === 0 ? null : Math.min(index, left - 1);
    await write(read, removeLine(read, index), pane.undo.removePlot, next);
    notice.say(fill(words.removed, { name }));
    if (next === null) add.focus();
    else list.focus();
  };

  const paste = createPastePart({
    table,
    nearestNames: tools.nearestNames,
    takenNames: () => (typeof state === 'object' ? takenNames(state.lines) : new Set()),
    addButton: actions.add,
    put: (inputs) => {
      const read = typeof state === 'object' ? state.lines : null;
      if (read === null) return;
      run(async () => {
        await write(read, addLines(read, inputs), pane.undo.pastePlots, countUsed(read));
        notice.say(fill(pane.paste.done, { count: inputs.length }));
        paste.clear();
      });
    },
  });

  const succession = createQuestion({
    name: 'succession',
    heading: pane.succession.heading,
    button: pane.succession.button,
    fields: [
      { ...pane.succession.first, name: 'succession first', format: 'date', isWanted: true },
      { ...pane.succession.last, name: 'succession last', format: 'date', isWanted: false },
      { ...pane.succession.every, name: 'succession every', format: 'whole', isWanted: true },
    ],
    onAsk: (values) => withChosen((read, index, name) => run(() => sowAgain(read, index, name, values)))(),
  });
  actions.add(succession.button);
  const sowAgain = async (read: LinesRead, index: number, name: string, values: Values): Promise<void> => {
    const last = values['succession last'] ?? read.lines[index]?.values[plotHeaders.lastSowing.header];
    if (typeof last !== 'number') return notice.warn(pane.succession.noLast);
    const dates = tools.successionDates(
      Number(values['succession first']),
      last,
      Number(values['succession every']),
    );
    if ('wrong' in dates) return notice.warn(dates.wrong);
    const taken = takenNames(read);
    const puts = dates.value.map((date) => ({
      [nameHeader]: takeFreeName(name, taken, Infinity),
      [plotHeaders.startsOn.header]: date,
    }));
    await write(read, copyLine(read, index, puts), pane.undo.succession, index);
    const plots = puts.map((put) => String(put[nameHeader])).join(', ');
    notice.say(fill(pane.succession.done, { count: puts.length, name, plots }));
  };

  const openForm = (of: { readonly index: number; readonly line: Line | undefined } | null): void => {
    if (form.isOpen() && form.touched().length > 0) {
      notice.warn(words.formOpen);
      return form.focus();
    }
    target = of === null ? null : { index: of.index, name: nameOf(of.line) };
    form.open(of?.line ?? null);
    notice.say('');
  };
  const closeForm = (): void => {
    form.close();
    if (target === null) add.focus();
    else list.focus();
  };

  const putForm = async (): Promise<void> => {
    const read = await readLines(workbook, table);
    if (read === null) throw new HostError({ code: 'noSuchTable', table: table.name });
    const seen = new Map(form.touched().map((field) => [field, field.shown()]));
    const index = target === null ? null : follow(read, target);
    const line = index === null ? undefined : read.lines[index];
    if (target !== null && line === undefined) return notice.warn(fill(words.gone, { name: target.name }));
    const otherNames = read.lines.flatMap((each, i) => (i === index ? [] : [nameOf(each)]));
    const values = form.demandRight(otherNames);
    if (values === null) return notice.warn(words.toMend);
    if ([...seen].some(([field, was]) => line !== undefined && !isSame(line.values[field.line.label], was))) {
      show(await readPlots(workbook, table));
      return notice.warn(pane.season.otherMeanwhile);
    }
    if (index === null || line === undefined) {
      const at = countUsed(read);
      await write(read, addLines(read, [values]), pane.undo.addPlot, at);
      notice.say(fill(words.added, { name: String(values[nameHeader]) }));
      return closeForm();
    }
    const kept = Object.keys(values).filter((header) => line.formulas.has(header));
    const put = Object.fromEntries(Object.entries(values).filter(([header]) => !kept.includes(header)));
    const labels = Object.keys(put).join(', ');
    const said: string[] = [];
    if (labels === '') said.push(...(kept.length === 0 ? [pane.season.nothingDiffers] : []));
    else {
      const planned = linesAsTheyAre(read).map((each, i) => (i === index ? { ...each, put } : each));
      await write(read, planned, pane.undo.putPlot, index);
      said.push(fill(pane.season.written, { labels }));
    }
    if (kept.length > 0) {
      return notice.warn([...said, fill(pane.season.kept, { labels: kept.join(', ') })].join(' '));
    }
    notice.say(said.join(' '));
    closeForm();
  };

  const show = (next: PlotsState): void => {
    state = next;
    const isThere = typeof next === 'object';
    const used = isThere ? countUsed(next.lines) : 0;
    setText(heading, used === 0 ? words.heading : fill(words.headingCount, { count: used }));
    setText(
      hint,
      isThere
        ? words.none
        : next === 'absent'
          ? fill(words.noSheet, { fill: pane.sheets.fill })
          : words.damaged,
    );
    hint.hidden = used > 0;
    add.hidden = !isThere;
    paste.element.hidden = !isThere;
    onChosen.hidden = used === 0;
    list.element.hidden = used === 0;
    succession.element.hidden = used === 0;
    if (!isThere) return;
    list.show(next.lines.lines.slice(0, used).map((line, index) => plotRow(line, index, next.lines.units)));
    if (form.isOpen()) {
      const index = target === null ? null : follow(next.lines, target);
      if (target !== null && index !== null) target = { index, name: nameOf(next.lines.lines[index]) };
      const line = index === null ? undefined : next.lines.lines[index];
      if (target !== null && line === undefined) return;
      form.show(next.lines, line ?? null, next.figures);
    } else form.show(next.lines, null, next.figures);
  };

  all.append(
    element('p', { class: 'lead' }, words.lead),
    hint,
    list.element,
    onChosen,
    removal,
    element('div', { class: 'buttons' }, add),
    form.element,
    succession.element,
    paste.element,
    notice.element,
  );
  show('absent');
  return { element: all, show };

  function takenNames(read: LinesRead): Set<string> {
    return new Set(read.lines.map((line) => nameOf(line).toLowerCase()).filter((name) => name !== ''));
  }
  function nameOf(line: Line | undefined): string {
    const name: ReadValue = line?.values[nameHeader] ?? null;
    return name === null || isCellError(name) ? '' : String(name);
  }
  function follow(read: LinesRead, { index, name }: { index: number; name: string }): number | null {
    const used = read.lines.slice(0, countUsed(read)).map((line) => ({ name: nameOf(line) }));
    return followName(used, index, name);
  }
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one ?? null) === JSON.stringify(other ?? null);
}
