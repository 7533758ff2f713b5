import { sameDateIn, yearOfDay } from '../dates/calendar';
import { ceilWhole, floorWhole } from '../whole/wholeNumbers';
import type { Quantity } from '../working';
import { judgeAnswer } from './judgeAnswer';
import { knownOf, type Given, type Slip } from './slip';
import { slipsOfArguments, type NamedParameter } from './slipsOfArguments';
import { slipsOfFactors } from './slipsOfFactors';
import { slipsOfFunctions } from './slipsOfFunctions';

/** A call as it was meant. */
export interface MeantCall {
  readonly id: string;
  readonly parameters: readonly NamedParameter[];
  readonly given: Given;
  /** What the function gives for other arguments, null when it refuses them. */
  compute(given: Given): Quantity | null;
  /** It gives a day. */
  readonly isDay: boolean;
  readonly right: number;
}

/** What somebody gets who makes a slip. */
export interface WrongFigure {
  readonly slip: Slip;
  readonly figure: number;
  /** The function gives whole numbers, so that a whole answer was rounded as it rounds. */
  readonly isOfWhole: boolean;
}

/** Days that a date is counted by together with others, each added or taken off. */
const daysOnTheWay = ['harvest_days', 'fall_days', 'frost_margin'];

/**
 * What the known slips give with a call, by computing each wrong way on purpose.
 *
 * @param call whose right result is a number, or a whole day number
 * @returns wrong figures only; a slip may give several (as it was rounded), and several slips may give the same
 * Source: common practice, no source: what teachers of the trade see.
 */
export function findSlips(call: MeantCall): WrongFigure[] {
  const known = slipsOfFunctions[call.id];
  if (known === undefined) return [];
  const { right } = call;
  const isOfWhole = known.whole !== undefined || call.isDay;
  const found: WrongFigure[] = [];
  const add = (slip: Slip, ...figures: readonly (Quantity | null)[]): void => {
    for (const figure of figures) {
      if (typeof figure !== 'number' || !Number.isFinite(figure)) continue;
      if (judgeAnswer(figure, right, undefined).verdict !== 'right') found.push({ slip, figure, isOfWhole });
    }
  };

  const constantsOf = (given: Given): Given => known.constants?.(knownOf(given, right)) ?? {};
  const onPaper = (given: Given): number =>
    known.formula?.(knownOf({ ...constantsOf(given), ...given }, right)) ?? NaN;
  const exact = onPaper(call.given);
  /** The figure as it comes, and rounded from some size on; none where the slip changes nothing. */
  const addOnPaper = (slip: Slip, given: Given, roundedFrom = -Infinity): void => {
    const figure = onPaper(given);
    if (figure === exact) return;
    add(slip, figure);
    if (figure < roundedFrom) return;
    if (known.whole === 'up') add(slip, ceilWhole(figure));
    if (known.whole === 'down') add(slip, floorWhole(figure));
  };

  for (const { slip, given, onPaper: isOnPaperOnly } of slipsOfArguments(call.parameters, call.given)) {
    if (slip.taken !== undefined && known.choicesAside?.includes(slip.about ?? '') === true) continue;
    if (isOnPaperOnly !== true) add(slip, call.compute(given));
    addOnPaper(slip, given);
  }
  for (const { slip, given } of slipsOfFactors(onPaper, { ...constantsOf(call.given), ...call.given })) {
    // The function refuses a part of a plant in a hill; on paper its parts are left as they were rounded.
    if (known.whole === 'inParts') add(slip, call.compute(given) ?? (right * onPaper(given)) / exact);
    // Less than one of what is counted is no count that anybody rounds.
    addOnPaper(slip, given, 1);
  }
  for (const [name, figure, about] of known.own?.(knownOf(call.given, right)) ?? []) {
    add({ name, ...(about !== undefined && { about }) }, figure);
  }
  if (isOfWhole) add({ name: 'notRounded' }, exact);
  // Two digits: three are near enough to be right, and one says too little.
  else add({ name: 'roundedTooFar' }, Number(right.toPrecision(2)));
  if (known.whole === 'up') add({ name: 'roundedDown' }, floorWhole(exact));
  if (known.whole === 'down') add({ name: 'roundedUp' }, ceilWhole(exact));
  if (known.isShare === true) {
    add({ name: 'percentAnswer' }, right * 100);
    add({ name: 'restOfAnswer' }, 1 - right);
  }
  if (call.isDay) addDays(call, known.start, add);

  // Where the usual value is none at all, taking it is leaving the argument out.
  const isLeftOut = ({ slip, figure }: WrongFigure): boolean =>
    slip.name === 'usual' &&
    found.some(
      (one) => one.slip.name === 'leftOut' && one.slip.about === slip.about && one.figure === figure,
    );
  return found.filter((one) => !isLeftOut(one));
}

function addDays(
  { given, right, compute }: MeantCall,
  start: string | undefined,
  add: (slip: Slip, figure: number) => void,
): void {
  const year = yearOfDay(right);
  for (const other of [year - 1, year + 1]) add({ name: 'otherYear' }, sameDateIn(other, right));
  if (start === undefined) return;
  const from = Number(given[start]);
  // Where a frost ends the harvest, say, the date does not hang on the day that is counted from.
  if (compute({ ...given, [start]: from + 1 }) !== right + 1) return;
  const otherWay = 2 * from - right;
  add({ name: 'countedOtherWay' }, otherWay);
  // The day counted from is day 1, so that the count ends a day short; or the day after it is day 0.
  const forward = Math.sign(right - from);
  add({ name: 'startCountedIn' }, right - forward);
  add({ name: 'dayTooMany' }, right + forward);
  for (const about of daysOnTheWay) {
    const without = typeof given[about] === 'number' ? compute({ ...given, [about]: 0 }) : null;
    if (typeof without !== 'number' || 2 * without - right === otherWay) continue;
    add({ name: without < right ? 'subtracted' : 'added', about }, 2 * without - right);
  }
}
