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

/** What a plot's calendar stands on. Days are whole day numbers; null is a day that nobody knows. */
export interface PlotDates {
  readonly plot: string;
  /** A crop of reference/crops. */
  readonly crop: string;
  /** Else seed is sown where it grows. */
  readonly isTransplant: boolean;
  /** Sowing for transplants. */
  readonly startUnderCover: number | null;
  /** Setting out or sowing. */
  readonly inGround: number | null;
  /** More seed is sown than plants are to stand. */
  readonly isThinned: boolean;
  readonly mayStayCovered: boolean;
  readonly coverOff: number | null;
  readonly firstPick: number | null;
  readonly lastPick: number | null;
  /** Last day of sowing in the open. */
  readonly lastSowing: number | null;
  /** Of the season's end. */
  readonly firstFrost: number | null;
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
 * picked and cleared: after the last pick, or where none is known after the first frost, which kills the vines. Work in
 * the growing crop that would fall on the first pick or later is left out, and so is what hangs on a day that is not
 * known.
 *
 * @param dates of the plot
 * @returns tasks in the order of the work
 * @throws notADate, outOfRange, lastBeforeFirst, tooManyPicks
 * Source: reference/tasks, which names the ground of each; the dates are those of calc/dates.
 * @example plotTasks(plot).map(({ code }) => code) // ['sow', 'coverOn', 'scout', ...]
 */
export function plotTasks(dates: PlotDates): Task[] {
  const { plot, crop, isTransplant, inGround, firstPick, lastPick, lastSowing, firstFrost } = dates;
  if (inGround !== null) checkDay('start', inGround);
  if (lastSowing !== null) checkDay('last_planting', lastSowing);
  if (firstFrost !== null) checkDay('first_frost', firstFrost);
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
  const { on, off } = cover(dates, at);
  const end = lastPick ?? (inGround === null ? null : firstFrost);
  return [
    ...(isTransplant ? underCover(dates, at) : []),
    ...(inGround === null ? [] : [at(isTransplant ? 'setOut' : 'sow', inGround)]),
    ...on,
    ...(inGround === null ? [] : inTheField(dates, inGround, at)).filter(
      ({ day }) => firstPick === null || day < firstPick,
    ),
    ...off,
    ...(lastSowing === null ? [] : [at('lastSowing', lastSowing)]),
    ...harvest(dates, at),
    ...(end === null
      ? []
      : [at('cleanUp', end + taskDays.cleaningUp.from, { lastDay: end + taskDays.cleaningUp.to })]),
  ];
}

type At = (code: TaskCode, day: number, more?: Partial<Task>) => Task;

function underCover({ startUnderCover: start, inGround: setOut }: PlotDates, at: At): Task[] {
  if (start !== null) checkDay('start', start);
  const hardening =
    setOut === null ? null : Math.max(start ?? -Infinity, hardeningStartDate(setOut, undefined));
  return [
    ...(start === null ? [] : [at('startUnderCover', start)]),
    ...(setOut !== null && hardening !== null && hardening < setOut
      ? [at('hardenOff', hardening, { lastDay: setOut - 1 })]
      : []),
  ];
}

/** A cover that would come off at once does not go on. */
function cover(
  { inGround, mayStayCovered, coverOff }: PlotDates,
  at: At,
): { readonly on: Task[]; readonly off: Task[] } {
  if (coverOff !== null && inGround !== null && coverOff <= inGround) return { on: [], off: [] };
  return {
    on: inGround === null ? [] : [at(mayStayCovered ? 'coverStays' : 'coverOn', inGround)],
    off: coverOff === null ? [] : [at('coverOff', coverOff)],
  };
}

function inTheField({ crop, isTransplant, isThinned }: PlotDates, inGround: number, at: At): Task[] {
  const { thinning, scouting, sideDressing, sideDressingOfPumpkins: ofPumpkins } = taskDays;
  const isSown = !isTransplant;
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
  if (firstPick === null || lastPick === null) {
    if (firstPick !== null) checkDay('first_pick', firstPick);
    if (lastPick !== null) checkDay('last_pick', lastPick);
    return [
      ...(firstPick === null ? [] : [at('firstPick', firstPick)]),
      ...(lastPick === null ? [] : [at('lastPick', lastPick)]),
    ];
  }
  // The interval is of no matter where there is but one pick; the days are checked all the same.
  const inAll = picksInHarvest(firstPick, lastPick, everyDays ?? daysPerWeek);
  if (lastPick === firstPick) return [at('harvestRipe', firstPick)];
  const picks = everyDays === null ? null : { everyDays, aWeek: daysPerWeek / everyDays, inAll };
  return [at('firstPick', firstPick, { lastDay: lastPick, picks }), at('lastPick', lastPick)];
}
