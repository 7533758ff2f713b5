/** CHECK.SLIP: the slip that gives just that answer, a right one never accused. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownOf } from '../../src/calc/check/slip';
import { functionsWithoutSlips, slipsOfFunctions } from '../../src/calc/check/slipsOfFunctions';
import { CalcError } from '../../src/calc/errors';
import { problemKinds } from '../../src/calc/homework/problemKinds';
import { explainable } from '../../src/functions/explainable';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { answerOf, wrongFigures } from '../../src/functions/saySlip';
import { slips } from '../../src/texts/english/slips';
import { serialOfDay } from '../../src/workbook/serialDate';
import { seeded } from '../calc/dates/calendar';
import { normalCalls } from '../functionsRuntime/normalCalls';
import { anyCallOf, idsWithSlips, type AnyCall } from './anyCall';
import { leftOut, run } from './run';

/** A call as its function reads it, with the right answer and the wrong ones; null where it is refused. */
function open({ id, args }: AnyCall) {
  const definition = explainable.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  try {
    const values = definition.read(args);
    const right = Number(answerOf(definition, values));
    const inCell = (figure: number): number => (definition.result === 'day' ? serialOfDay(figure) : figure);
    const given = Object.fromEntries(definition.parameters.map(({ name }, i) => [name, values[i]]));
    const constants = slipsOfFunctions[id]?.constants?.(knownOf(given, right));
    const known = knownOf({ ...constants, ...given }, right);
    return { right, inCell, known, figures: wrongFigures(definition, values, right) };
  } catch (error) {
    if (error instanceof CalcError) return null;
    throw error;
  }
}
type Figure = NonNullable<ReturnType<typeof open>>['figures'][number];

const nameOf = ({ slip: { name, about, taken } }: Figure): string => `${name} ${about} ${taken}`;

/** Whether an answer of the one figure could be the other's: equal, or the other one rounded to what it shows. */
function isShared({ figure: answer }: Figure, { figure, isOfWhole }: Figure): boolean {
  if (Math.abs(answer - figure) <= 1e-9 * Math.max(1, Math.abs(figure))) return true;
  if ((isOfWhole && Number.isInteger(answer)) || String(answer).includes('e')) return false;
  const unit = 10 ** -(String(answer).split('.')[1]?.length ?? 0);
  return Math.abs(answer) >= 10 * unit && Math.abs(answer - figure) <= unit * 0.500000001;
}

const slipOf = (...args: unknown[]): unknown => run('CHECK.SLIP', ...args);

describe('a slip is named by what it gives', () => {
  // Right answers are those of tests/calc; the wrong ones are hand computed as the sentence says.
  const seeds = ['SEED.NEEDED', 100, 0.8] as const;
  const density = ['PLANTS.DENSITY', 2, 36] as const;
  const inRows = ['PLANTS.INROWS', 100, 20, 5, 12] as const;
  const season = ['SEASON.DAYS', '2026-05-02', '2026-10-10'] as const;
  const setOut = ['DATE.SETOUT', '2026-05-02'] as const;
  const transplants = ['DATE.FIRSTPICK', '2026-05-16', 60, 'transplant', 'seed'] as const;
  const picks = ['HARVEST.PICKS', '2026-07-05', '2026-07-26', 2] as const;
  const chance = ['SEED.CHANCE', 5, 3, 0.8] as const;
  const plantsOfRow = ['ROW.FORPLANTS', 290, 30] as const;
  const lastSowing = ['DATE.LASTSOWING', '2026-10-10', 60, 21, 14, 0] as const;
  const heat = ['HEAT.SUM', '80; 70; 60', '50; 40; 30', 50] as const;
  const frosts = [
    'FROST.SPRINGDATE',
    '2022-05-06; 2023-04-28; 2024-05-02; 2025-04-20; 2026-04-24',
    0.25,
    2027,
  ] as const;
  const chanceOfFrost = [
    'FROST.CHANCE',
    '2027-10-05',
    '2022-10-05; 2023-10-01; 2024-10-20; 2025-09-28; 2026-10-05',
    'fall',
  ] as const;
  test.each([
    // 100 x 0.8; 100 / 80, as it comes and rounded up; 100 x 1.2; 100 / 0.2.
    [80, seeds, 'You multiplied by the germination instead of dividing by it.'],
    [1.25, seeds, 'You put in 80 for the germination: 80% is 0.8.'],
    [2, seeds, 'You put in 80 for the germination: 80% is 0.8.'],
    [120, seeds, 'You added the share that fails: divide by the germination instead.'],
    [100, seeds, 'You left the germination out.'],
    [500, seeds, 'You took what the germination leaves of 100% in its place.'],
    // 100 / 0.72 is 138.9, 100 / 0.8 125; 100 x 0.72.
    [138.9, [...seeds, 0.9], 'You did not round to a whole number.'],
    [125, [...seeds, 0.9], 'You left the field emergence out.'],
    [72, [...seeds, 0.9], 'You multiplied by the share of seeds that stand instead of dividing by it.'],
    [125, [...seeds, '', 0.95], 'You left the assurance out.'],
    // 1200 x (8 - 2).
    [
      7200,
      ['BUDGET.BREAKEVENYIELD', 1200, 8, 2],
      'You multiplied by the price left after harvest cost instead of dividing by it.',
    ],
    // 125 / 0.95 is 131.6.
    [132, [...seeds, '', 0.95], 'You divided by the assurance: it is a chance, not a share that stands.'],
    // 43,560 / (2 x 36); 43,560 / (24 x 36); 1 / 6; 43,560 x 6.
    [605, density, 'You forgot to turn the plant spacing from in into ft.'],
    [50.4, density, 'You put both spacings in in, so that the area per plant is not in sq ft.'],
    [0.167, density, 'You gave the plants on 1 sq ft, not on 1 acre.'],
    [261_360, density, 'You multiplied by the area per plant instead of dividing by it.'],
    // 4 rows of 100: 4 x 8 with 12 ft; 4 x 101 and 5 x 101; 100.
    [32, inRows, 'You forgot to turn the plant spacing from in into ft.'],
    [404, inRows, 'You put a plant at both ends: half a spacing stays free at each edge.'],
    [505, inRows, 'You put a plant at both ends: half a spacing stays free at each edge.'],
    [100, inRows, 'You counted one row only.'],
    [162, season, 'You counted both ends: count only one of them.'],
    [160, season, 'You counted neither end: count one of them.'],
    [-161, season, 'You subtracted the wrong way round.'],
    // 14 days after 2 May is 16 May.
    ['2026-05-15', setOut, 'You counted the first day as day 1: count from the day after it.'],
    ['2026-04-18', setOut, 'You counted the days the other way from the date.'],
    ['2026-05-02', setOut, 'You left the number of days after the last frost out.'],
    [
      '2027-05-16',
      setOut,
      'You gave the date of another year. A date typed without its year is filled in by the program.',
    ],
    [
      '2026-05-16',
      [...setOut, 21],
      'You took the usual number of days after the last frost instead of the one given.',
    ],
    // 16 May + 60 days is 15 July; less 10 right, plus 10 wrong.
    ['2026-07-15', transplants, 'You left the transplant gain out.'],
    ['2026-07-25', transplants, slips.sentences.gainTheOtherWay],
    // 21 / 2 is 10.5.
    [10, picks, 'You did not count the first pick.'],
    [11.5, picks, 'You did not round to a whole number.'],
    [12, picks, 'You rounded up where it must be rounded down.'],
    // 10 0.8^3 0.2^2; 5 0.8^4 0.2 + 0.8^5; 0.8^3; the right 0.94208 in percent.
    [0.2048, chance, 'You gave the chance of exactly that many: more than that is enough too.'],
    [0.7373, chance, 'You gave the chance of more than that many: exactly that many is enough too.'],
    [0.512, chance, slips.sentences.everyOne],
    [94.2, chance, 'You gave percent as a plain number: put a % sign after it, or divide by 100.'],
    // 1 to 3 is 1/4.
    [0.333, ['FLOWER.SHARE', 1, 3], 'You mixed up a ratio and a share: 1 to 3 is 25% of all, not 33%.'],
    [0.75, ['FLOWER.SHARE', 1, 3], 'You gave what is left of 100%: take it from 100%.'],
    // 400 / 4; 100 x 1.2; 100 / 0.8.
    [100, ['FLOWER.POLLENIZERS', 400, 0.25, 0.2], 'You left the share of losses out.'],
    [
      120,
      ['FLOWER.POLLENIZERS', 400, 0.25, 0.2],
      'You added the share of losses: divide by what they leave instead.',
    ],
    [125, ['FLOWER.POLLENIZERS', 400, 0.25, 0.2], slips.sentences.lossesOnAll],
    // 400 x 138.
    [55_200, ['HARVEST.YIELD', 400, 138], 'You forgot that the figure given is for a length of 100.'],
    // 12 gaps in each of 2 rows: 26 posts.
    [24, ['SUPPLY.TRELLIS', 96, 8, 2], 'You counted the gaps: a row has one post more than gaps.'],
    [25, ['SUPPLY.TRELLIS', 96, 8, 2], slips.sentences.postForAllRows],
    // 4 x 103; 4 x 100 + 6.
    [412, ['SUPPLY.COVER', 4, 100, 3], 'You added one buried end to a row: it has two.'],
    [406, ['SUPPLY.COVER', 4, 100, 3], 'You added the buried ends once: each row has two.'],
    [3, ['ROTATION.YEARS', 2026, [[2019], [2023]]], slips.sentences.yearCountedToo],
    // (65 + 40) / 2 - 50 is 2.5; 52.5; 55; 15.
    [52.5, ['HEAT.DAY', 65, 40, 50], 'You left the base temperature out.'],
    [55, ['HEAT.DAY', 65, 40, 50], 'You did not halve the sum of the high and the low.'],
    [15, ['HEAT.DAY', 65, 40, 50], slips.sentences.highAlone],
    // Highs 80, 70, 60, lows 50, 40, 30, base 50: means 65, 55, 45 give 15 + 5 + 0 = 20.
    [15, heat, 'You counted heat below zero: a day below the base counts as none.'],
    [115, heat, 'You took the base off once: take it off the mean of each day.'],
    [165, heat, 'You left the base temperature out.'],
    [60, heat, slips.sentences.highAlone],
    [6.667, heat, 'You gave the mean of the days: add them up.'],
    // Last frosts in order 20, 24, 28 April, 2, 6 May: 25% later than 2 May; 75% after 24 April.
    ['2027-04-24', frosts, 'You took what the risk leaves of 100% in its place.'],
    ['2027-05-06', frosts, slips.sentences.worstYear],
    // The mean is 28 April; as they are listed the fourth of five is 20 April.
    ['2027-04-28', frosts, slips.sentences.meanOfDates],
    ['2027-04-20', frosts, 'You did not put the dates in order first.'],
    // First frosts: two of five before 5 October, two on it.
    [0.8, chanceOfFrost, 'You counted a frost on the very date: the date itself does not count.'],
    [2, chanceOfFrost, 'You gave how many years, not which share of all of them.'],
    // 13 days at 59 F, 6 at 68 F: 64 F is 5/9 of the way. 13 - 7 x 5/9; 1 / (4/9 x 1/6 + 5/9 x 1/13).
    [9.111, ['EMERGENCE.DAYS', 'cucumber', 64], slips.sentences.daysForRates],
    [8.561, ['EMERGENCE.DAYS', 'cucumber', 64], slips.sentences.fromOtherEnd],
    // 4.38 x 72; / 12.
    [315.36, ['TRAY.MIX', 72, 4.38], 'You did not turn the volume into the larger unit.'],
    [26.28, ['TRAY.MIX', 72, 4.38], 'You turned the unit as if it were one of length.'],
    // 1 yd is 3 ft.
    [6, ['AREA.FROM', 2, 'sq yd'], 'You turned the unit as if it were one of length.'],
    [7, ['PICKLE.JARS', 14, 'pint'], 'You reckoned with "quart" as the size of the jar.'],
    // 270 x 11 / 130 is 22.846; 71 F is a third of the way from 0.38 to 0.94, at 0.56667.
    [23, ['BUDGET.PICKHOURS', 270, 11, 130], 'You rounded too far: give one digit more.'],
    [0.57, ['EMERGENCE.PERCENT', 'muskmelon', 71], 'You rounded too far: give one digit more.'],
    // 1,144 / 9.77; / 13.82.
    [117.1, ['BUDGET.BREAKEVENYIELD', 1144, 9.77, 4.05], 'You left the harvest cost of a unit out.'],
    [
      82.78,
      ['BUDGET.BREAKEVENYIELD', 1144, 9.77, 4.05],
      'You added the harvest cost of a unit where it is taken off.',
    ],
    // Each factor the other way round: 43,560 / 1.5; 290 x 12 / 30; 2.5 / 290; 290 x 30 x 12.
    [
      29_040,
      ['AREA.FROM', 1.5, 'acre'],
      'You divided by the area in its own unit instead of multiplying by it.',
    ],
    [116, plantsOfRow, 'You divided by the plant spacing instead of multiplying by it.'],
    [0.00862, plantsOfRow, 'You divided by the number of plants instead of multiplying by it.'],
    [104_400, plantsOfRow, 'You multiplied by 12, the spacing units in one length unit: divide by it.'],
    // 43,560 x 2 / 3 with 36 in as 3 ft; 43,560 / 2; 43,560 / 4; 43,560 / 9.
    [29_040, density, 'You multiplied by the row spacing instead of dividing by it.'],
    [21_780, density, 'You left the plant spacing out.'],
    [10_890, density, 'You took the row spacing both ways.'],
    [4840, density, 'You took the plant spacing both ways.'],
    // 4 rows of 100 plants: 20 x 5 rows; 20 / 5 x 100 x 12 x 12 is 57,600, forgotten once 100 x 12.
    [10_000, inRows, 'You multiplied by the row spacing instead of dividing by it.'],
    // 400 x 100 x 138; 400 / 100 / 138.
    [
      5_520_000,
      ['HARVEST.YIELD', 400, 138],
      'You multiplied by 100, the row length that the yield is for: divide by it.',
    ],
    [
      0.029,
      ['HARVEST.YIELD', 400, 138],
      'You divided by the yield per 100 of row instead of multiplying by it.',
    ],
    // 500 x 2 in place of 500 / 2.
    [
      1000,
      ['PICKLE.JARS', 500],
      'You multiplied by the weight of cucumbers in a jar instead of dividing by it.',
    ],
    // 43,560 sq ft at 50 lb of an acre, a twentieth of it N: 50 x 0.05; 50 x 43,560 x 43,560 / 0.05 is beyond all.
    [
      2.5,
      ['SUPPLY.FERTILIZER', 43_560, 50, 0.05],
      'You multiplied by the grade of the fertilizer instead of dividing by it.',
    ],
    // 2 May + 14 days counted from 3 May as day 0.
    ['2026-05-17', setOut, 'You counted a day too many: the day after the first one is day 1.'],
    // 10 October - 60 - 21 - 14 days is 7 July; 21 days the other way 42 later, 60 days 120.
    ['2026-08-18', lastSowing, 'You added the number of harvest days where it is taken off.'],
    ['2026-11-04', lastSowing, 'You added the number of days to maturity where it is taken off.'],
    // May to October is 5 months of 30 and 8 days; four months from 2 March.
    [158, season, 'You reckoned with 30 days in every month: some have 31.'],
    ['2026-07-02', ['DATE.AFTERMANURE', '2026-03-02', true], 'You counted whole months: count the days.'],
    // Of the table 13 days at 59 F; (65 + 40 - 50) / 2; 4 x (100 - 6); 1728 cu in a cu ft.
    [13, ['EMERGENCE.DAYS', 'cucumber', 64], slips.sentences.notBetween],
    [27.5, ['HEAT.DAY', 65, 40, 50], slips.sentences.halvedAtEnd],
    [376, ['SUPPLY.COVER', 4, 100, 3], 'You took the length buried at one end off where it is added.'],
    [2.19, ['TRAY.MIX', 72, 4.38], 'You turned the unit as if it were one of area.'],
    // 43,560 sq ft x 12 x 12 x 1 in of water.
    [6_272_640, ['SUPPLY.WATER', 43_560, 1], 'You gave cubic inches: turn them into gallons.'],
  ] as const)('%s for %j: %s', (answer, call, said) => {
    expect(slipOf(answer, ...call)).toBe(said);
    expect(
      slipOf([[answer]], call[0], ...call.slice(1).map((one) => (Array.isArray(one) ? one : [[one]]))),
    ).toBe(said);
  });

  test('metric calls speak of metric units', () => {
    // 10,000 / (1.5 x 30).
    expect(slipOf(222.2, 'PLANTS.DENSITY', 1.5, 30, 'metric')).toBe(
      'You forgot to turn the plant spacing from cm into m.',
    );
  });
});

describe('what is not named', () => {
  test('what cannot be read as the number wanted, with what keeps it from being one', () => {
    const read = (answer: unknown): unknown => slipOf(answer, 'SEED.NEEDED', 100, 0.8);
    const { notRead } = slips;
    expect(read('125,5')).toBe(notRead.commaInNumber);
    expect(read('1,250')).toBe(notRead.commaInNumber);
    expect(read('22.85 hours')).toBe(notRead.unitBehind);
    expect(read('125seeds')).toBe(notRead.unitBehind);
    expect(read('$125')).toBe(notRead.currencySign);
    for (const sum of ['500/690', '500 / 690', '12.5*10']) expect(read(sum), sum).toBe(notRead.sum);
    for (const odd of ['many', '5/16/2026', '1e400', '-1e400', true]) {
      expect(read(odd), String(odd)).toBe(notRead.notANumber);
    }
    expect(slipOf('soon', 'DATE.SETOUT', '2026-05-02')).toBe(slips.dateWanted);
    const unread =
      '5/16/2026; 16 May 26; 2026-05-16T08:00; 46,158; May 16; 16 May; May 16th; 16th of May; 16 May.';
    for (const typed of [...unread.split('; '), 'May', 'the sixteenth of May', 'May 32']) {
      expect(slipOf(typed, 'DATE.SETOUT', '2026-05-02'), typed).toBe(slips.dateNotRead);
    }
    expect(read('')).toMatch(/^#VALUE! .*missing/);
  });

  test('a right answer is right, by the same rule as CHECK.ANSWER', () => {
    expect(slipOf(125, 'SEED.NEEDED', 100, 0.8)).toBe('right');
    expect(slipOf(0.942, 'SEED.CHANCE', 5, 3, 0.8)).toBe('right');
    // 2026-05-16 is day 46158 of a spreadsheet; noon of it is half a day more.
    for (const said of [
      '2026-05-16',
      '16 May 2026',
      'May 16, 2026',
      '16-may-2026',
      46_158,
      '46158',
      46_158.5,
    ]) {
      expect(slipOf(said, 'DATE.SETOUT', '2026-05-02'), String(said)).toBe('right');
      expect(run('CHECK.ANSWER', typeof said === 'number' ? 46_158 : said, 46_158), String(said)).toBe(
        'right',
      );
    }
    expect(slipOf(' Fill Gaps', 'STAND.REPLANT', 0.66, '2026-06-01', '2026-07-07')).toBe('right');
  });

  test('an answer that no slip gives has CHECK.ANSWER’s sentence', () => {
    expect(slipOf(145, 'SEED.NEEDED', 100, 0.8)).toBe(
      'too high by 20 (16 %). No slip that is known here gives this answer.',
    );
    // 14 days after 2 May is 16 May.
    expect(slipOf('2026-05-19', 'DATE.SETOUT', '2026-05-02')).toBe(
      '3 days late. No slip that is known here gives this answer.',
    );
    expect(slipOf('2026-05-13', 'DATE.SETOUT', '2026-05-02')).toMatch(/^3 days early\. /);
    expect(slipOf('keep', 'STAND.REPLANT', 0.66, '2026-06-01', '2026-07-07')).toBe(
      'not right: another word is wanted',
    );
    expect(slipOf(14, 'DATE.SETOUT', '2026-05-02')).toBe('not right: a date is wanted, such as 2026-05-16');
    expect(slipOf('2026-05-19', 'SEED.NEEDED', 100, 0.8)).toMatch(
      /^too high by .*\. If that is a date: a number is wanted, 0\.75 and not 3\/4\.$/,
    );
    // 3 April of this year, as a program reads 3/4 in Europe.
    expect(slipOf('2026-04-03', 'SEED.TEST', 150, 200)).toBe(slips.shareWanted);
    // Three days after 16 May, in the year before: 365 - 3 days.
    expect(slipOf('2025-05-19', 'DATE.SETOUT', '2026-05-02')).toBe(
      '362 days early, and in another year. A date typed without its year is filled in by the program.',
    );
    // A square of 200 ft has 40,000 sq ft: no date is meant where the right number is as large.
    expect(slipOf(40_000, 'AREA.FROM', 1, 'acre')).toBe(
      'too low by 3560 (8.2 %). No slip that is known here gives this answer.',
    );
  });

  test('of two slips with one answer none is named: 100 / 0.8 x 1.1 and 100 / 0.72 rounded down are 138', () => {
    expect(slipOf(138, 'SEED.NEEDED', 100, 0.8, 0.9)).toBe(
      'too low by 1 (0.72 %). Several known slips give this answer: it could be any of them.',
    );
  });

  test('refusals say what to do', () => {
    expect(slipOf(1, 'SEED.NEEDED', 100, 85)).toMatch(/^#VALUE! .*write 85 percent as 85%/);
    expect(slipOf(1, 'SEED.NEDED', 100, 0.85)).toMatch(/^#N\/A .*Near it: SEED.NEEDED/);
    expect(slipOf(1, 'CHECK.ANSWER', 1, 1)).toMatch(/^#N\/A There is no function called/);
    expect(slipOf(1, 'DATE.SUCCESSION', '2026-05-09', '2026-07-07', 14)).toMatch(
      /^#VALUE! DATE.SUCCESSION gives several rows. Check one cell of them with CHECK.ANSWER/,
    );
    expect(slipOf('', 'SEED.NEEDED', 100, 0.8)).toBe('#VALUE! The answer is missing. Fill it in.');
    expect(slipOf(' ', 'SEED.NEEDED', 100, 0.8)).toBe('blank: no answer yet');
    expect(slipOf(1, 'SEED.WEIGHT', 1e300, 1e-300)).toMatch(/^#NUM!/);
    for (const nothing of leftOut) expect(slipOf(1, nothing)).toMatch(/name of the function is missing/);
  });
});

/** Makes each known slip of the call, and none. Gives how many answers had a slip of their own; none where refused. */
function expectSlipsNamed(call: AnyCall): number {
  const opened = open(call);
  if (opened === null) return 0;
  const { right, inCell, figures } = opened;
  const told = `${call.id} ${JSON.stringify(call.args)}`;
  expect(slipOf(inCell(right), call.id, ...call.args), told).toBe('right');
  let own = 0;
  for (const one of figures) {
    const said = slipOf(inCell(one.figure), call.id, ...call.args);
    const sharing = new Set(figures.filter((other) => isShared(one, other)).map(nameOf));
    if (sharing.size > 1) {
      expect(said, told).toMatch(/Several known slips give this answer/);
    } else {
      own += 1;
      const [before = '', ...after] = slips.sentences[one.slip.name].split(/\{\w+\}/);
      expect(said, told).toSatisfy((sentence: string) => sentence.startsWith(before));
      expect(said, told).toSatisfy((sentence: string) => sentence.endsWith(after.at(-1) ?? ''));
      expect(said, told).not.toMatch(/[{}]|NaN|undefined/);
    }
  }
  return own;
}

test('in two thousand problems of homework each slip made gets its own name, right answers none', () => {
  const made = new Map(problemKinds.map(({ id }) => [id, 0]));
  let count = 0;
  for (const units of ['us', 'metric'] as const) {
    for (let number = 1; number <= 10; number++) {
      const problems = homeworkProblems(number, 100, units);
      if ('wrong' in problems) throw new Error(problems.wrong);
      for (const { id, args } of problems.value) {
        made.set(id, (made.get(id) ?? 0) + expectSlipsNamed({ id, args }));
        count += 1;
      }
    }
  }
  expect(count).toBe(2000);
  expect([...made].filter(([, own]) => own === 0)).toEqual([]);
});

/**
 * Multiplied for divided and the other way round, in US units, in each problem that has a product or a quotient: written
 * out by hand, one factor, or one area or share of several, turned at a time.
 */
const turnedByHand: Readonly<
  Record<string, (args: readonly number[], right: number) => readonly (number | undefined)[]>
> = {
  'PLANTS.DENSITY': ([r = 0, p = 0]) => [
    (43_560 * r) / (p / 12),
    (43_560 * (p / 12)) / r,
    (43_560 * r * p) / 12,
  ],
  'PLANTS.INROWS': ([l = 0, w = 0, r = 0, p = 0]) => [
    Math.floor(w * r) * Math.floor((l * 12) / p),
    Math.floor(w / r) * Math.floor((l * p) / 12),
  ],
  'PLANTS.INHILLS': ([, , , plants = 0], right) => [right / plants ** 2],
  'PLANTS.INBEDS': ([l = 0, , , , rows = 0, p = 0], right) => [
    right / rows ** 2,
    (right / Math.floor((l * 12) / p)) * Math.floor((l * p) / 12),
  ],
  'PLANTS.INAREA': ([a = 0, r = 0, p = 0]) => [(a * r) / (p / 12), (a * (p / 12)) / r, (a * r * p) / 12],
  'PLANTS.FORYIELD': ([wanted = 0, each = 0]) => [wanted * each],
  'AREA.FORPLANTS': ([n = 0, r = 0, p = 0]) => [n / ((r * p) / 12), (n * r) / (p / 12), (n * (p / 12)) / r],
  'AREA.FROM': ([value = 0]) => [43_560 / value, value / 43_560],
  'ROW.FORPLANTS': ([n = 0, p = 0]) => [(n * 12) / p, n * p * 12, p / 12 / n],
  'ROW.INAREA': ([a = 0, r = 0]) => [a * r],
  'ROW.FORDEMAND': ([w = 0, y = 0, weeks = 0]) => [
    w * weeks * 100 * y,
    ((w / weeks) * 100) / y,
    (w * weeks) / 100 / y,
  ],
  // At 12 in, which is 1 ft.
  'STAND.COUNT': ([n = 0, l = 0]) => [n * l],
  'SEED.NEEDED': ([n = 0, g = 0, f = 0]) => [(n * g) / f, (n * f) / g, n * g * f],
  'SEED.PERHILL': ([n = 0, g = 0, f = 0]) => [n * g * f],
  'SEED.WEIGHT': ([seeds = 0, each = 0]) => [seeds * each],
  'SEED.TEST': ([up = 0, of = 0]) => [up * of],
  'TRAY.CELLS': ([n = 0, g = 0, , culls = 0]) => [(n * g) / (1 - culls), n * g * (1 - culls)],
  'TRAY.COUNT': ([cells = 0, tray = 0]) => [cells * tray],
  'TRAY.MIX': ([cells = 0, each = 0]) => [cells / each / 1728, cells * each * 1728],
  'FLOWER.HIVES': ([a = 0, each = 0]) => [each === 1 ? undefined : a / 43_560 / each, a * 43_560 * each],
  'HARVEST.YIELD': ([l = 0, y = 0, share = 0]) => [
    ((l / 100) * y) / share,
    (l / 100 / y) * share,
    l * 100 * y * share,
  ],
  'HARVEST.FORECAST': ([fruit = 0, n = 0, w = 0]) => [(fruit / n) * w, (fruit * n) / w, (n * w) / fruit],
  'HARVEST.BUSHELS': ([pounds = 0]) => [pounds * 48],
  'PICKLE.JARS': ([pounds = 0]) => [pounds * 2],
  'PICKLE.POUNDS': ([jars = 0]) => [jars / 2],
  'BUDGET.BREAKEVENPRICE': ([cost = 0, sold = 0]) => [cost * sold],
  'BUDGET.BREAKEVENYIELD': ([costs = 0, price = 0, each = 0]) => [costs * (price - each)],
  'BUDGET.PICKHOURS': ([l = 0, picks = 0, rate = 0]) => [l * picks * rate, l / picks / rate],
  'SUPPLY.HILLSOIL': ([hills = 0], right) => [right / hills ** 2, right * 1728 ** 2],
  'SUPPLY.FERTILIZER': ([a = 0, rate = 0, grade = 0]) => [
    (a / 43_560) * rate * grade,
    a / 43_560 / rate / grade,
    (a * 43_560 * rate) / grade,
  ],
  'SUPPLY.WATER': ([a = 0, depth = 0]) => [((a / depth) * 144) / 231],
  'SUPPLY.WATERNEED': ([et = 0, kc = 0, days = 0, rain = 0]) => [
    kc === 1 ? undefined : (et / kc) * days - rain,
    (et * kc) / days - rain,
  ],
  'SUPPLY.DRIPRUNTIME': ([, wide = 0, flow = 0], right) => [
    right * flow ** 2,
    (right / wide ** 2) * 144,
    right / 100 ** 2,
  ],
  'SUPPLY.COVER': ([rows = 0, l = 0, tuck = 0]) => [(l + 2 * tuck) / rows],
  'SUPPLY.TRELLIS': ([l = 0, between = 0, rows = 0], right) => [
    right / rows ** 2,
    rows * (Math.ceil(l * between) + 1),
  ],
};

test('each factor multiplied by for divided, or the other way round, is known, and named where nothing else gives it', () => {
  const named = new Map(Object.keys(turnedByHand).map((id) => [id, new Set<number>()]));
  for (let number = 1; number <= 12; number++) {
    const problems = homeworkProblems(number, 100, 'us');
    if ('wrong' in problems) throw new Error(problems.wrong);
    for (const { id, args } of problems.value) {
      const right = open({ id, args })?.right ?? NaN;
      turnedByHand[id]?.(args.map(Number), right).forEach((answer, i) => {
        // A factor of 1, or near it, changes nothing.
        if (answer === undefined || Math.abs(answer - right) < 0.01 * right) return;
        const said = slipOf(answer, id, ...args);
        expect(said, `${answer} for ${id} ${args.join()}`).toMatch(
          /^You (multiplied|divided) by|Several known slips give this answer/,
        );
        if (String(said).startsWith('You ')) named.get(id)?.add(i);
      });
    }
  }
  for (const [id, of] of Object.entries(turnedByHand)) {
    expect(named.get(id)?.size, id).toBe(of([], NaN).length);
  }
});

describe('every function', () => {
  test('has its slips, or is named as one without', () => {
    const told = [...Object.keys(slipsOfFunctions), ...functionsWithoutSlips];
    expect(told.sort(), 'add it to calc/check/slipsOfFunctions').toEqual([...explainable.keys()].sort());
    for (const [id, { args }] of Object.entries(normalCalls)) {
      if (slipsOfFunctions[id] === undefined) continue;
      expect(open({ id, args })?.figures.length, id).toBeGreaterThan(0);
    }
  });

  test.each(idsWithSlips)(
    '%s: each slip made gets its own name, right answers and shared ones none',
    (id) => {
      let made = 0;
      fc.assert(
        fc.property(anyCallOf(id), (call) => {
          made += expectSlipsNamed(call);
        }),
        { ...seeded, numRuns: 60 },
      );
      expect(made).toBeGreaterThan(0);
    },
  );

  test('each sentence is somebody’s slip', () => {
    const calls = idsWithSlips.flatMap((id) => fc.sample(anyCallOf(id), { ...seeded, numRuns: 40 }));
    const named = calls.flatMap((call) => open(call)?.figures.map(({ slip }) => slip.name) ?? []);
    expect([...new Set(named)].sort()).toEqual(Object.keys(slips.sentences).sort());
  });

  const idsOnPaper = idsWithSlips.filter((id) => {
    const { formula, whole } = slipsOfFunctions[id] ?? {};
    return formula !== undefined && whole !== 'inParts';
  });
  test.each(idsOnPaper)('%s: the sum on paper, rounded, is what the function gives', (id) => {
    const known = slipsOfFunctions[id];
    let compared = 0;
    fc.assert(
      fc.property(anyCallOf(id), (call) => {
        const opened = open(call);
        const formula = opened === null ? NaN : known?.formula?.(opened.known);
        if (opened === null || formula === undefined || Number.isNaN(formula)) return;
        const { right } = opened;
        compared += 1;
        if (known?.whole === 'up') expect(right).toBe(Math.ceil(Number(formula.toFixed(9))));
        else if (known?.whole === 'down') expect(right).toBe(Math.floor(Number(formula.toFixed(9))));
        else expect(right).toBeCloseTo(Math.max(0, formula), 6);
      }),
      { ...seeded, numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(10);
  });
});
