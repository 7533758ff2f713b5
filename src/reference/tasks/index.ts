/** When the work on a plot falls, in days from sowing or setting out; of cleaning up, in days from the last pick. */
import data from './data.json';

for (const task of Object.values(data)) {
  Object.values(task).forEach(Object.freeze);
  Object.freeze(task);
}

export const taskDays = Object.freeze(data);
