/** The chosen plot sown again and again: new plots, each with a day of its own. */
import { copyLine } from '../workbook/arrangeLines';
import type { LinesRead } from '../workbook/readLines';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { createAsks } from './asks';
import type { PaneTools } from './paneTools';
import type { PlotDesk } from './plotDesk';
import { createQuestion, type Values } from './question';
import { nameHeader, takeNextName, takenNames } from './readPlots';

const { succession: words, undo } = catalogue.pane;
const { lastSowing, startsOn } = catalogue.sheets.plots.columns;

/** More are asked for before they are written: a slip in a day or in the gap makes many. Source: judgement. */
const mostUnasked = 12;

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
    nearestNames: tools.nearestNames,
    onEdit: () => {
      asks.hide();
      desk.notice.say('');
    },
    onAsk: (values) => desk.withChosen((read, index, name) => addOrAsk(read, index, name, values)),
  });
  let asked: { readonly name: string; readonly dates: readonly number[] } = { name: '', dates: [] };
  const addThem = desk.button(words.addThem, () => {
    asks.hide();
    desk.withChosen((read, index, name) => desk.run(() => sowAgain(read, index, name, asked.dates)));
  });
  const leave = desk.button(words.leave, () => asks.hide());
  const asks = createAsks('succession', [addThem, leave]);
  question.element.append(asks.element);
  // Another plot is chosen, here or by a change in the sheet.
  desk.onPlace(() => {
    if (desk.chosenName() !== asked.name) asks.hide();
  });

  const addOrAsk = (read: LinesRead, index: number, name: string, values: Values): void => {
    asks.hide();
    if (values['succession last'] === null && !desk.isSettled()) return desk.notice.warn(words.calculating);
    const last = values['succession last'] ?? read.lines[index]?.values[lastSowing.header];
    if (typeof last !== 'number') return desk.notice.warn(words.noLast);
    const dates = tools.successionDates(
      Number(values['succession first']),
      last,
      Number(values['succession every']),
    );
    if ('wrong' in dates) return desk.notice.warn(dates.wrong);
    if (dates.value.length <= mostUnasked) return desk.run(() => sowAgain(read, index, name, dates.value));
    asked = { name, dates: dates.value };
    asks.ask(fill(words.many, { count: dates.value.length, name }), desk.list);
  };
  const sowAgain = async (
    read: LinesRead,
    index: number,
    name: string,
    dates: readonly number[],
  ): Promise<void> => {
    const taken = takenNames(read);
    const puts = dates.map((date) => ({
      [nameHeader]: takeNextName(name, taken),
      [startsOn.header]: date,
    }));
    await desk.write(read, copyLine(read, index, puts), undo.succession, index);
    const plots = puts.map((put) => String(put[nameHeader])).join(', ');
    desk.notice.say(fill(words.done, { count: puts.length, name, plots }));
  };
  return question.element;
}
