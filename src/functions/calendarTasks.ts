/** The tasks of all plots, without cells: serial dates in and out; what one plot is refused spoils no other. */
import { plotTasks, type PlotDates, type Task, type TaskCode } from '../calc/calendar/plotTasks';
import { tasksBeforeFrost } from '../calc/calendar/tasksBeforeFrost';
import { tasksInOrder } from '../calc/calendar/tasksInOrder';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import { answering } from './answering';

export interface CalendarTasks {
  readonly tasks: readonly Task[];
  /** Work that the first frost comes before, of which plot among those given, and whether nothing of it is left. */
  readonly lost: readonly {
    readonly index: number;
    readonly codes: readonly TaskCode[];
    readonly isWhole: boolean;
  }[];
  /** Plots left out, by their place among those given, and the advice. */
  readonly refused: readonly { readonly index: number; readonly advice: string }[];
}

/** What is no date becomes NaN, which is refused with advice. */
const dayOf = (serial: number): number => Math.floor(dayOfSerial(serial) ?? NaN);
const orNull = (serial: number | null): number | null => (serial === null ? null : dayOf(serial));

const tasksOfPlot = answering((plot: PlotDates) => {
  const dates: PlotDates = {
    ...plot,
    startUnderCover: orNull(plot.startUnderCover),
    inGround: orNull(plot.inGround),
    coverOff: orNull(plot.coverOff),
    firstPick: orNull(plot.firstPick),
    lastPick: orNull(plot.lastPick),
    lastSowing: orNull(plot.lastSowing),
    firstFrost: orNull(plot.firstFrost),
  };
  return tasksBeforeFrost(plotTasks(dates), dates);
});

export function calendarTasks(plots: readonly PlotDates[]): CalendarTasks {
  const answers = plots.map(tasksOfPlot);
  const tasks = tasksInOrder(answers.map((answer) => ('value' in answer ? answer.value.coming : [])));
  return {
    tasks: tasks.map((task) => ({
      ...task,
      day: serialOfDay(task.day),
      lastDay: task.lastDay === null ? null : serialOfDay(task.lastDay),
    })),
    lost: answers.flatMap((answer, index) => {
      if (!('value' in answer) || answer.value.lost.length === 0) return [];
      const { coming, lost } = answer.value;
      return [{ index, codes: [...new Set(lost.map(({ code }) => code))], isWhole: coming.length === 0 }];
    }),
    refused: answers.flatMap((answer, index) => ('wrong' in answer ? [{ index, advice: answer.wrong }] : [])),
  };
}
