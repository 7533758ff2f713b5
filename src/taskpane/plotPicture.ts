/** The picture of the chosen plot: follows the plot, and goes into a sheet when asked. */
import { countUsed } from '../workbook/arrangeLines';
import { plotToDraw, type PlotToDraw } from '../templates/plotToDraw';
import { putPlotPictures, type DrawnPlot, type PlotPictureState } from '../templates/plotPictures';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, setText } from './elements';
import { createLargerPicture } from './largerPicture';
import type { PlotDesk } from './plotDesk';
import { failureSentence } from './problemSentence';
import { nameOf, type PlotsRead, type PlotsState } from './readPlots';
import { showDrawing, widthFor, type Drawn } from './showDrawing';
import { figureOf } from './standIns';

const { pane: words, refused } = catalogue.plotPictures;
const { length } = catalogue.sheets.plots.columns;
const { sameName } = catalogue.sheets.plots.remarks;
const { unnamedLine } = catalogue.pane.plots;
/** As the Plots sheet has it above its lengths. */
const metricLength = 'm';

type PlotPng = { readonly value: DrawnPlot } | { readonly wrong: string };

export interface PlotPictureTools {
  drawPlotForPane(plot: PlotToDraw, widthPx: number): Promise<Drawn>;
  drawPlotForSheet(plot: PlotToDraw): Promise<PlotPng>;
  /** Large enough to be hung up. */
  drawPlotForFile(plot: PlotToDraw): Promise<PlotPng>;
}

export interface PlotPicture {
  readonly element: HTMLElement;
  show(state: PlotsState): void;
  /** What the sheet of pictures says of itself. */
  showSheet(pictures: readonly PlotPictureState[]): void;
}

/** The plot, or the advice that stands in place of its picture. */
type Asked = ReturnType<typeof plotToDraw>;

export function createPlotPicture(desk: PlotDesk, tools: PlotPictureTools): PlotPicture {
  const { list, notice } = desk;
  const place = element('div', { class: 'pictures' });
  const older = element('p', { class: 'note', hidden: true });
  let read: PlotsRead | null = null;
  /** What was asked for last: of several drawings at once it is the one that is shown. */
  let latest = '';

  const askOf = ({ lines, figures }: PlotsRead, index: number): Asked => {
    const line = lines.lines[index];
    if (line === undefined) return { wrong: refused.notChosen };
    const units = lines.units[length.header] === metricLength ? 'metric' : 'us';
    return plotToDraw(line, units, (crop, figure) => figureOf(figures, crop, figure));
  };
  const askOfChosen = (): Asked => {
    const chosen = list.chosen();
    if (read === null || chosen === null) return { wrong: refused.notChosen };
    return read.isSettled ? askOf(read, chosen) : { wrong: refused.waiting };
  };
  const redraw = async (): Promise<void> => {
    if (!all.open) return;
    const asked = askOfChosen();
    const widthPx = widthFor(place);
    const key = JSON.stringify([asked, widthPx]);
    if (key === latest) return;
    latest = key;
    const drawn = await ('wrong' in asked
      ? asked
      : tools
          .drawPlotForPane(asked.value, widthPx)
          .catch((cause: unknown) => ({ wrong: failureSentence(cause) })));
    if (latest === key) place.replaceChildren(showDrawing(drawn));
  };
  const put = async (from: PlotsRead, indexes: readonly number[]): Promise<void> => {
    const pictures: DrawnPlot[] = [];
    const left: string[] = [];
    let why = '';
    const { lines } = from.lines;
    const names = lines.map((line) => nameOf(line).toLowerCase());
    for (const index of indexes) {
      // A picture is known by its plot's name, and the first plot of a name has it.
      const name = names[index] ?? '';
      const isSecond = name !== '' && names.indexOf(name) < index;
      const asked: Asked = isSecond ? { wrong: sameName } : askOf(from, index);
      const drawn = 'wrong' in asked ? asked : await tools.drawPlotForSheet(asked.value);
      if ('value' in drawn) pictures.push(drawn.value);
      else {
        why = drawn.wrong;
        left.push(nameOf(lines[index]) || fill(unnamedLine, { line: index + 1 }));
      }
    }
    if (pictures.length === 0) return notice.warn(indexes.length === 1 ? why : words.nothing);
    const { area, stamp } = from.lines;
    const sheet = await putPlotPictures(desk.workbook, pictures, { sheet: area.sheet, stamp }, words.undo);
    if (sheet === null) return notice.warn(words.full);
    const sentence = left.length === 0 ? words.done : words.doneSome;
    notice.say(fill(sentence, { count: pictures.length, sheet, plots: left.join(', ') }));
  };
  const larger = createLargerPicture();
  const enlarge = (): void => {
    const asked = askOfChosen();
    if ('wrong' in asked) return notice.warn(asked.wrong);
    const plot = asked.value;
    void larger
      .open({
        fileName: fill(words.larger.fileName, { plot: plot.plot }),
        draw: (widthPx) => tools.drawPlotForPane(plot, widthPx),
        drawFile: () => tools.drawPlotForFile(plot),
      })
      .catch((cause: unknown) => notice.warn(failureSentence(cause)));
  };
  const enlargeButton = element('button', { type: 'button' }, words.larger.open);
  enlargeButton.addEventListener('click', enlarge);
  const putWhenSettled = (indexesOf: (from: PlotsRead) => readonly number[]): void => {
    const from = read;
    if (from === null) return;
    if (!from.isSettled) return notice.warn(words.waiting);
    desk.run(() => put(from, indexesOf(from)));
  };

  const all = element(
    'details',
    {},
    element('summary', {}, words.heading),
    place,
    element(
      'div',
      { class: 'buttons' },
      enlargeButton,
      desk.button(words.put, () => desk.withChosen((_, index) => putWhenSettled(() => [index]))),
      desk.button(words.putAll, () =>
        putWhenSettled(({ lines }) => Array.from({ length: countUsed(lines) }, (_, index) => index)),
      ),
    ),
  );
  all.addEventListener('toggle', () => void redraw());
  desk.onPlace(() => void redraw());

  return {
    element: element('div', {}, all, older, larger.element),
    show(state) {
      read = typeof state === 'object' ? state : null;
      void redraw();
    },
    showSheet(pictures) {
      const plots = pictures.filter(({ isCurrent }) => !isCurrent).map(({ plot }) => plot);
      setText(older, fill(words.older, { plots: plots.join(', ') }));
      older.hidden = plots.length === 0;
    },
  };
}
