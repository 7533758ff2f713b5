import type { PlotDates, Task } from './plotTasks';

/** Done on what frost has killed. */
const afterFrost: readonly Task['code'][] = ['cleanUp'];

/**
 * What of a plot's work comes: frost kills the vines, so that nothing is picked, dressed or thinned from its day on.
 * A plot that would be planted on it or later has no work. A last pick on it or later says that the plot is kept from
 * frost: then all comes.
 *
 * @param tasks of the plot
 * @param dates of the plot
 * @returns what comes, spans cut off the day before frost, and what does not
 * Source: project convention, that of calc/dates/lastPickDate: cucurbits are killed by frost.
 * @example tasksBeforeFrost(plotTasks(plot), plot).lost.map(({ code }) => code) // ['firstPick']
 */
export function tasksBeforeFrost(
  tasks: readonly Task[],
  { inGround, lastPick, firstFrost: frost }: PlotDates,
): { readonly coming: readonly Task[]; readonly lost: readonly Task[] } {
  if (frost === null || (lastPick !== null && lastPick >= frost)) return { coming: tasks, lost: [] };
  if (inGround !== null && inGround >= frost) return { coming: [], lost: tasks };
  const isAfter = ({ code }: Task): boolean => afterFrost.includes(code);
  const comes = (task: Task): boolean => isAfter(task) || task.day < frost;
  return {
    coming: tasks
      .filter(comes)
      .map((task) =>
        isAfter(task) || task.lastDay === null
          ? task
          : { ...task, lastDay: Math.min(task.lastDay, frost - 1) },
      ),
    lost: tasks.filter((task) => !comes(task)),
  };
}
