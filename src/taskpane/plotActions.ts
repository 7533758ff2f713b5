/** What is done with the chosen plot, besides changing what stands in it. */
import { copyLine, countUsed, removeLine, swapLines } from '../workbook/arrangeLines';
import type { LinesRead } from '../workbook/readLines';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { createAsks } from './asks';
import { element } from './elements';
import type { PlotDesk } from './plotDesk';
import { nameHeader, takeNextName, takenNames } from './readPlots';

const { plots: words, undo } = catalogue.pane;

/** @param onEdit opens the chosen plot; @param onEmpty takes the focus when the last plot is gone */
export function createPlotActions(
  desk: PlotDesk,
  onEdit: (read: LinesRead, index: number) => void,
  onEmpty: () => void,
): HTMLElement {
  const { list, notice } = desk;

  const duplicate = async (read: LinesRead, index: number, name: string): Promise<void> => {
    const copy = takeNextName(name, takenNames(read));
    await desk.write(read, copyLine(read, index, [{ [nameHeader]: copy }]), undo.copyPlot, index + 1);
    notice.say(fill(words.copied, { name, copy }));
  };
  const move = async (read: LinesRead, index: number, to: number, name: string): Promise<void> => {
    const count = countUsed(read);
    if (to < 0 || to >= count) return notice.say(fill(to < 0 ? words.isFirst : words.isLast, { name }));
    await desk.write(read, swapLines(read, index, to), undo.movePlot, to);
    notice.say(fill(words.moved, { name, line: to + 1, count }));
  };
  const remove = async (read: LinesRead, index: number, name: string): Promise<void> => {
    const left = countUsed(read) - 1;
    const next = left === 0 ? null : Math.min(index, left - 1);
    await desk.write(read, removeLine(read, index), undo.removePlot, next);
    notice.say(fill(words.removed, { name }));
    if (next === null) onEmpty();
    else list.focus();
  };
  const reveal = ({ area }: LinesRead, index: number): Promise<void> =>
    desk.workbook.reveal({ ...area, row: area.row + 1 + index, rows: 1, columns: 1 });

  let asked = '';
  const removeIt = desk.button(words.removeIt, () => {
    removal.hide();
    desk.withChosen((read, index, name) => desk.run(() => remove(read, index, name)));
  });
  const keepIt = desk.button(words.keepIt, () => removal.hide());
  const removal = createAsks('remove-plot', [removeIt, keepIt]);
  const askRemoval = (name: string): void => {
    asked = name;
    removal.ask(fill(words.removeAsk, { name }), list);
  };

  const onChosen = (text: string, action: Parameters<PlotDesk['withChosen']>[0]): HTMLButtonElement =>
    desk.button(text, () => desk.withChosen(action));
  const up = onChosen(words.up, (read, index, name) => desk.run(() => move(read, index, index - 1, name)));
  const down = onChosen(words.down, (read, index, name) =>
    desk.run(() => move(read, index, index + 1, name)),
  );
  desk.onPlace((chosen, count) => {
    // Another plot is chosen, here or by a change in the sheet.
    if (desk.chosenName() !== asked) removal.hide();
    desk.bar(up, chosen === 0);
    desk.bar(down, chosen === count - 1);
  });
  return element(
    'div',
    {},
    element(
      'div',
      { class: 'buttons', role: 'group', 'aria-label': words.withChosen },
      onChosen(words.edit, onEdit),
      ...(desk.workbook.cannotAddRows === true
        ? []
        : [onChosen(words.copy, (read, index, name) => desk.run(() => duplicate(read, index, name)))]),
      up,
      down,
      onChosen(words.remove, (_, __, name) => askRemoval(name)),
      onChosen(words.show, (read, index) => desk.run(() => reveal(read, index))),
    ),
    removal.element,
  );
}
