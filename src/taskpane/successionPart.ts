/** The chosen plot sown again and again: new plots, each with a day of its own. */
import { copyLine } from '../workbook/arrangeLines';
import type { LinesRead } from '../workbook/readLines';
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import type { PaneTools } from './paneTools';
import type { PlotDesk } from './plotDesk';
import { createQuestion, type Values } from './question';
import { nameHeader, takeNextName, takenNames } from './readPlots';

const { succession: words, undo } = english.pane;
const { lastSowing, startsOn } = english.sheets.plots.columns;

export function createSuccessionPart(desk: PlotDesk, tools: PaneTools): HTMLElement {
  const question = createQuestion({
    name: 'succession',
    heading: words.heading,
    button: words.button,
    fields: [
      { ...words.first, name: 'succession first', format: 'date', isWanted: true },
      { ...words.last, name: 'succession last', format: 'date', isWanted: false },
      {
        ...words.every,
        name: 'succession every',
        format: 'whole',
        limits: { atLeast: 0, isWhole: true },
        isWanted: true,
      },
    ],
    wanted: words.wanted,
    onEdit: () => desk.notice.say(''),
    onAsk: (values) =>
      desk.withChosen((read, index, name) => desk.run(() => sowAgain(read, index, name, values))),
  });
  const sowAgain = async (read: LinesRead, index: number, name: string, values: Values): Promise<void> => {
    const last = values['succession last'] ?? read.lines[index]?.values[lastSowing.header];
    if (typeof last !== 'number') return desk.notice.warn(words.noLast);
    const dates = tools.successionDates(
      Number(values['succession first']),
      last,
      Number(values['succession every']),
    );
    if ('wrong' in dates) return desk.notice.warn(dates.wrong);
    const taken = takenNames(read);
    const puts = dates.value.map((date) => ({
      [nameHeader]: takeNextName(name, taken),
      [startsOn.header]: date,
    }));
    await desk.write(read, copyLine(read, index, puts), undo.succession, index);
    const plots = puts.map((put) => String(put[nameHeader])).join(', ');
    desk.notice.say(fill(words.done, { count: puts.length, name, plots }));
  };
  return question.element;
}
