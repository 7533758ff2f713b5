/** The tasks of all plots, without cells: serial dates in and out; what one plot is refused spoils no other. */
import { plotTasks, type PlotDates, type Task } from '../calc/calendar/plotTasks';
import { tasksInOrder } from '../calc/calendar/tasksInOrder';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import { answering } from './answering';

export interface CalendarTasks {
  readonly tasks: readonly Task[];
  /** Plots left out, by their place among those given, and the advice. */
  readonly refused: readonly { readonly index: number; readonly advice: string }[];
}

/** What is no date becomes NaN, which is refused with advice. */
const dayOf = (serial: number): number => Math.floor(dayOfSerial(serial) ?? NaN);
const orNull = (serial: number | null): number | null => (serial === null ? null : dayOf(serial));

const tasksOfPlot = answering((plot: PlotDates) =>
  plotTasks({
    ...plot,
    startUnderCover: orNull(plot.startUnderCover),
    inGround: orNull(plot.inGround),
    coverOff: orNull(plot.coverOff),
    firstPick: orNull(plot.firstPick),
    lastPick: orNull(plot.lastPick),
    lastSowing: orNull(plot.lastSowing),
  }),
);

export function calendarTasks(plots: readonly PlotDates[]): CalendarTasks {
  const answers = plots.map(tasksOfPlot);
  const tasks = tasksInOrder(answers.map((answer) => ('value' in answer ? answer.value : [])));
  return {
    tasks: tasks.map((task) => ({
      ...task,
      day: serialOfDay(task.day),
      lastDay: task.lastDay === null ? null : serialOfDay(task.lastDay),
    })),
    refused: answers.flatMap((answer, index) => ('wrong' in answer ? [{ index, advice: answer.wrong }] : [])),
  };
}
