/** Every task of the calendar by every name that it can have in this language, with one that no language changes. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';

const mostTurns = 9;
const turns = Array.from({ length: mostTurns ** 2 }, (_, i) => ({
  nth: (i % mostTurns) + 1,
  of: Math.floor(i / mostTurns) + 1,
}));

export const taskKeys: ReadonlyMap<string, string> = new Map(
  Object.entries(catalogue.calendar.tasks).flatMap(([key, task]): [string, string][] => [
    [task, key],
    ...turns.map(({ nth, of }): [string, string] => [
      fill(catalogue.calendar.turn, { task, nth, of }),
      `${key}-${nth}-${of}`,
    ]),
  ]),
);
