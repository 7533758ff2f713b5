/** The form of one plot, from opening to the change in the sheet. */
import { addLines, countUsed, linesAsTheyAre } from '../workbook/arrangeLines';
import { HostError, type CellValue } from '../workbook/port';
import { readLines, type Line, type LinesRead } from '../workbook/readLines';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { PlotDesk } from './plotDesk';
import { createPlotForm } from './plotForm';
import { nameHeader, nameOf, readPlots, type PlotsRead } from './readPlots';

const { pane } = catalogue;
const words = pane.plots;

export interface PlotEditor {
  readonly element: HTMLElement;
  /** Opens a line, or a new one; one with changes in it stays open. */
  open(of: { readonly read: LinesRead; readonly index: number } | null): void;
  show(plots: PlotsRead): void;
}

/** The line that the form is over, by place and name. */
interface Target {
  readonly index: number;
  readonly name: string;
}

/** @param onClose takes the focus; told whether it was a new plot */
export function createPlotEditor(
  desk: PlotDesk,
  nearestNames: NearestNames,
  onClose: (wasNew: boolean) => void,
): PlotEditor {
  const { workbook, table, notice } = desk;
  const form = createPlotForm(
    table,
    nearestNames,
    () => desk.run(put),
    () => close(),
  );
  let target: Target | null = null;

  const close = (): void => {
    form.close();
    onClose(target === null);
  };
  const put = async (): Promise<void> => {
    const read = await readLines(workbook, table);
    if (read === null) throw new HostError({ code: 'noSuchTable', table: table.name });
    const index = target === null ? null : follow(read, target);
    const line = index === null ? undefined : read.lines[index];
    if (target !== null && line === undefined) return notice.warn(fill(words.gone, { name: target.name }));
    const otherNames = read.lines.flatMap((each, i) => (i === index ? [] : [nameOf(each)]));
    const seen = form.touched().map((field) => [field.line.label, field.shown()] as const);
    const values = form.demandRight(otherNames);
    if (values === null) return notice.warn(words.toMend);
    if (index === null || line === undefined) return add(read, values);
    if (seen.some(([header, shown]) => !isSame(line.values[header], shown))) {
      desk.show(await readPlots(workbook, table, false));
      return notice.warn(pane.season.otherMeanwhile);
    }
    await change(read, index, line, values);
  };
  const add = async (read: LinesRead, values: Readonly<Record<string, CellValue>>): Promise<void> => {
    await desk.write(read, addLines(read, [values]), pane.undo.addPlot, countUsed(read));
    notice.say(fill(words.added, { name: String(values[nameHeader]) }));
    close();
  };
  const change = async (
    read: LinesRead,
    index: number,
    line: Line,
    values: Readonly<Record<string, CellValue>>,
  ): Promise<void> => {
    const kept = Object.keys(values).filter((header) => line.formulas.has(header));
    const changed = Object.entries(values).filter(([header]) => !kept.includes(header));
    const labels = changed.map(([header]) => header).join(', ');
    if (changed.length > 0) {
      const put = Object.fromEntries(changed);
      target = { index, name: String(put[nameHeader] ?? nameOf(line)) };
      const planned = linesAsTheyAre(read).map((each, i) => (i === index ? { ...each, put } : each));
      await desk.write(read, planned, pane.undo.putPlot, index);
    }
    const said = changed.length > 0 ? fill(pane.season.written, { labels }) : pane.season.nothingDiffers;
    if (kept.length > 0) {
      const left = fill(pane.season.kept, { labels: kept.join(', ') });
      return notice.warn(changed.length > 0 ? `${said} ${left}` : left);
    }
    notice.say(said);
    close();
  };

  return {
    element: form.element,
    open(of) {
      if (form.isOpen() && form.touched().length > 0) {
        notice.warn(words.formOpen);
        return form.focus();
      }
      const line = of?.read.lines[of.index];
      target = of === null ? null : { index: of.index, name: nameOf(line) };
      form.open(line ?? null);
      notice.say('');
    },
    show({ lines, figures }) {
      const index = target === null ? null : follow(lines, target);
      const line = index === null ? undefined : lines.lines[index];
      // A line that is gone leaves the form as it is: what was typed may still be wanted.
      if (form.isOpen() && target !== null && line === undefined) return;
      if (target !== null && index !== null) target = { ...target, index };
      form.show(lines, line ?? null, figures);
    },
  };
}

/** Only under its name: what was typed for one plot must not go into another. */
function follow({ lines }: LinesRead, { index, name }: Target): number | null {
  if (nameOf(lines[index]) === name) return index;
  const same = lines.flatMap((line, i) => (nameOf(line) === name ? [i] : []));
  return same.length === 1 ? (same[0] ?? null) : null;
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one ?? null) === JSON.stringify(other ?? null);
}
