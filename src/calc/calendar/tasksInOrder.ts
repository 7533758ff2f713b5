import { taskCodes, type Task } from './plotTasks';

/**
 * The tasks of all plots as they come: by day, on one day by plot as the plots were given, and of one plot in the order
 * of the work.
 *
 * @param byPlot the tasks of each plot
 * @returns all of them
 * Source: arithmetic.
 * @example tasksInOrder([[sowing, picking], [earlierSowing]]) // [earlierSowing, sowing, picking]
 */
export function tasksInOrder(byPlot: readonly (readonly Task[])[]): Task[] {
  return byPlot
    .flatMap((tasks, plot) => tasks.map((task) => ({ task, plot })))
    .sort(
      (a, b) =>
        a.task.day - b.task.day ||
        a.plot - b.plot ||
        taskCodes.indexOf(a.task.code) - taskCodes.indexOf(b.task.code),
    )
    .map(({ task }) => task);
}
