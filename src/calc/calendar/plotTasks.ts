import { taskDays } from '../../reference/tasks';
import { checkDay } from '../dates/dayLimits';
import { hardeningStartDate } from '../dates/hardeningStartDate';
import { picksInHarvest } from '../harvest/picksInHarvest';
import { daysPerWeek } from '../units/units';

/** In the order of the work on one day. */
export const taskCodes = [
  'startUnderCover',
  'hardenOff',
  'setOut',
  'sow',
  'coverOn',
  'coverStays',
  'thin',
  'scout',
  'sideDress',
  'coverOff',
  'lastSowing',
  'firstPick',
  'harvestRipe',
  'lastPick',
  'cleanUp',
] as const;
export type TaskCode = (typeof taskCodes)[number];

/** What a plot's calendar stands on. Days are whole day numbers. */
export interface PlotDates {
  readonly plot: string;
  /** A crop of reference/crops. */
  readonly crop: string;
  /** Sowing for transplants; null for seed sown where it grows. */
  readonly startUnderCover: number | null;
  /** Setting out or sowing. */
  readonly inGround: number;
  /** More seed is sown than plants are to stand. */
  readonly isThinned: boolean;
  /** null where a cover may stay on. */
  readonly coverOff: number | null;
  readonly firstPick: number;
  readonly lastPick: number;
  /** Last day of sowing in the open. */
  readonly lastSowing: number;
  /** From one pick to the next [days]; null where the crop goes by ripeness. */
  readonly everyDays: number | null;
}

export interface Task {
  readonly plot: string;
  readonly crop: string;
  readonly code: TaskCode;
  /** Which of several of its kind, from 1, and of how many; null where there is one. */
  readonly turn: { readonly nth: number; readonly of: number } | null;
  readonly day: number;
  /** Of a task that is a span; null for a day. */
  readonly lastDay: number | null;
  readonly picks: { readonly everyDays: number; readonly aWeek: number; readonly inAll: number } | null;
}

/**
 * The work on a plot through its season.
 *
 * Under cover, hardened off a week, set out or sown, covered until the first flowers, thinned, scouted, side-dressed,
 * picked and cleared. Work in the growing crop that would fall on the first pick or later is left out.
 *
 * @param dates of the plot
 * @returns tasks in the order of the work
 * @throws notADate, outOfRange, lastBeforeFirst, tooManyPicks
 * Source: reference/tasks, which names the ground of each; the dates are those of calc/dates.
 * @example plotTasks(plot).map(({ code }) => code) // ['sow', 'coverOn', 'scout', ...]
 */
export function plotTasks(dates: PlotDates): Task[] {
  const { plot, crop, startUnderCover, inGround, coverOff, firstPick, lastPick, lastSowing } = dates;
  checkDay('start', inGround);
  checkDay('last_planting', lastSowing);
  const at = (code: TaskCode, day: number, more: Partial<Task> = {}): Task => ({
    plot,
    crop,
    code,
    day,
    turn: null,
    lastDay: null,
    picks: null,
    ...more,
  });
  const growing = inTheField(dates, at).filter(({ day }) => day < firstPick);
  const isCovered = coverOff === null || coverOff > inGround;
  return [
    ...(startUnderCover === null ? [] : underCover(startUnderCover, inGround, at)),
    at(startUnderCover === null ? 'sow' : 'setOut', inGround),
    ...(isCovered ? [at(coverOff === null ? 'coverStays' : 'coverOn', inGround)] : []),
    ...growing,
    ...(coverOff !== null && isCovered ? [at('coverOff', coverOff)] : []),
    at('lastSowing', lastSowing),
    ...harvest(dates, at),
    at('cleanUp', lastPick + taskDays.cleaningUp.from, { lastDay: lastPick + taskDays.cleaningUp.to }),
  ];
}

type At = (code: TaskCode, day: number, more?: Partial<Task>) => Task;

function underCover(start: number, setOut: number, at: At): Task[] {
  checkDay('start', start);
  const hardening = Math.max(start, hardeningStartDate(setOut, undefined));
  return [
    at('startUnderCover', start),
    ...(hardening < setOut ? [at('hardenOff', hardening, { lastDay: setOut - 1 })] : []),
  ];
}

function inTheField({ crop, startUnderCover, inGround, isThinned }: PlotDates, at: At): Task[] {
  const { thinning, scouting, sideDressing, sideDressingOfPumpkins: ofPumpkins } = taskDays;
  const isSown = startUnderCover === null;
  const firstLook = inGround + (isSown ? scouting.afterSowing : 0);
  const dressings = ofPumpkins.crops.includes(crop) ? ofPumpkins.days : sideDressing.days;
  return [
    ...(isSown && isThinned
      ? [at('thin', inGround + thinning.from, { lastDay: inGround + thinning.to })]
      : []),
    ...Array.from({ length: scouting.times }, (_, i) =>
      at('scout', firstLook + i * scouting.everyDays, { turn: { nth: i + 1, of: scouting.times } }),
    ),
    ...dressings.map((days, i) =>
      at('sideDress', inGround + days, {
        turn: dressings.length === 1 ? null : { nth: i + 1, of: dressings.length },
      }),
    ),
  ];
}

/** A crop picked once has its first pick for its last. */
function harvest({ firstPick, lastPick, everyDays }: PlotDates, at: At): Task[] {
  // The interval is of no matter where there is but one pick; the days are checked all the same.
  const inAll = picksInHarvest(firstPick, lastPick, everyDays ?? daysPerWeek);
  if (lastPick === firstPick) return [at('harvestRipe', firstPick)];
  const picks = everyDays === null ? null : { everyDays, aWeek: daysPerWeek / everyDays, inAll };
  return [at('firstPick', firstPick, { lastDay: lastPick, picks }), at('lastPick', lastPick)];
}
