import { UTCDate } from '@date-fns/utc';
import { differenceInCalendarDays, eachWeekOfInterval } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plotTasks, taskCodes, type PlotDates, type Task } from '../../../src/calc/calendar/plotTasks';
import { tasksInOrder } from '../../../src/calc/calendar/tasksInOrder';
import { crops } from '../../../src/reference/crops';
import { anyDay, dayNumber, isoDate, seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';

/** Slicing cucumbers sown in the open at Invented garden: sown 9 May, in 60 days to 8 July, picked 21 days. */
const sown = {
  plot: 'Creek 2',
  crop: 'slicing cucumber',
  isTransplant: false,
  startUnderCover: null,
  inGround: dayNumber('2026-05-09'),
  isThinned: true,
  mayStayCovered: false,
  coverOff: dayNumber('2026-06-29'),
  firstPick: dayNumber('2026-07-08'),
  lastPick: dayNumber('2026-07-29'),
  lastSowing: dayNumber('2026-06-23'),
  firstFrost: null,
  everyDays: 3,
} satisfies PlotDates;
const setOut = {
  ...sown,
  isTransplant: true,
  startUnderCover: dayNumber('2026-04-25'),
  inGround: dayNumber('2026-05-16'),
};

const said = ({ code, day, lastDay, turn }: Task): string =>
  [
    code,
    ...(turn === null ? [] : [turn.nth]),
    isoDate(day),
    ...(lastDay === null ? [] : [isoDate(lastDay)]),
  ].join(' ');

describe('the work on one plot', () => {
  // By hand on a calendar. 14 to 21 days to thinning, 3 weeks to side-dressing: common practice, no source. A week to
  // emergence, 4 looks for beetles, 14 days to clear the plot: judgement.
  test('sown in the open', () => {
    expect(plotTasks(sown).map(said)).toEqual([
      'sow 2026-05-09',
      'coverOn 2026-05-09',
      'thin 2026-05-23 2026-05-30',
      'scout 1 2026-05-16',
      'scout 2 2026-05-23',
      'scout 3 2026-05-30',
      'scout 4 2026-06-06',
      'sideDress 2026-05-30',
      'coverOff 2026-06-29',
      'lastSowing 2026-06-23',
      'firstPick 2026-07-08 2026-07-29',
      'lastPick 2026-07-29',
      'cleanUp 2026-07-30 2026-08-12',
    ]);
  });

  test('set out: hardened off the week before, not thinned, scouted from setting out', () => {
    expect(plotTasks(setOut).map(said).slice(0, 8)).toEqual([
      'startUnderCover 2026-04-25',
      'hardenOff 2026-05-09 2026-05-15',
      'setOut 2026-05-16',
      'coverOn 2026-05-16',
      'scout 1 2026-05-16',
      'scout 2 2026-05-23',
      'scout 3 2026-05-30',
      'scout 4 2026-06-06',
    ]);
  });

  test('started less than a week before setting out, hardening begins with them; on the day itself there is none', () => {
    const late = { ...setOut, startUnderCover: setOut.inGround - 3 };
    expect(plotTasks(late).map(said)).toContain('hardenOff 2026-05-13 2026-05-15');
    expect(codesOf({ ...setOut, startUnderCover: setOut.inGround })).not.toContain('hardenOff');
  });

  test('a stand that is not over-sown is not thinned', () => {
    expect(codesOf({ ...sown, isThinned: false })).not.toContain('thin');
  });

  test('pumpkins and winter squash are side-dressed at 3 and 6 weeks (North Carolina HIL-24)', () => {
    const pumpkin = {
      ...sown,
      crop: 'pumpkin',
      firstPick: sown.inGround + 110,
      lastPick: sown.inGround + 110,
    };
    const dressings = plotTasks(pumpkin).filter(({ code }) => code === 'sideDress');
    expect(dressings.map(({ day, turn }) => [day - sown.inGround, turn?.nth, turn?.of])).toEqual([
      [3 * 7, 1, 2],
      [6 * 7, 2, 2],
    ]);
  });

  test('a crop picked once is harvested when ripe, and has no last pick', () => {
    const once = { ...sown, lastPick: sown.firstPick, everyDays: null };
    expect(codesOf(once)).toContain('harvestRipe');
    expect(codesOf(once)).not.toContain('firstPick');
    expect(codesOf(once)).not.toContain('lastPick');
  });

  test('picked every 3 days from 8 to 29 July: 8, 11, 14, 17, 20, 23, 26, 29 are 8 picks (counted)', () => {
    const first = plotTasks(sown).find(({ code }) => code === 'firstPick');
    expect(first?.picks).toEqual({ everyDays: 3, aWeek: 7 / 3, inAll: 8 });
    const ripe = plotTasks({ ...sown, everyDays: null }).find(({ code }) => code === 'firstPick');
    expect(ripe?.picks).toBeNull();
  });

  test('a parthenocarpic crop may stay covered; a cover that would come off at once does not go on', () => {
    const covered = codesOf({ ...sown, mayStayCovered: true, coverOff: null });
    expect(covered).toContain('coverStays');
    expect(covered).not.toContain('coverOff');
    const bare = codesOf({ ...sown, coverOff: sown.inGround });
    expect(bare.filter((code) => code.startsWith('cover'))).toEqual([]);
  });

  test('work in the growing crop stops before the first pick', () => {
    const quick = { ...sown, firstPick: sown.inGround + 20, lastPick: sown.inGround + 30 };
    expect(plotTasks(quick).map(said)).toContain('scout 2 2026-05-23');
    expect(codesOf(quick)).not.toContain('sideDress');
  });

  test('across New Year, as south of the equator', () => {
    const south = plotTasks({
      ...setOut,
      startUnderCover: dayNumber('2026-12-12'),
      inGround: dayNumber('2027-01-02'),
      firstPick: dayNumber('2027-02-20'),
      lastPick: dayNumber('2027-03-13'),
      coverOff: dayNumber('2027-02-11'),
      lastSowing: dayNumber('2027-01-20'),
    });
    expect(south.slice(0, 3).map(said)).toEqual([
      'startUnderCover 2026-12-12',
      'hardenOff 2026-12-26 2027-01-01',
      'setOut 2027-01-02',
    ]);
  });

  test('of the days that are known every task is dated, and none of those that hang on another', () => {
    // A first pick, no last one, and no frost known. The tasks are those of the whole plot above, less two.
    expect(plotTasks({ ...sown, lastPick: null }).map(said)).toEqual([
      ...plotTasks(sown).map(said).slice(0, 10),
      'firstPick 2026-07-08',
    ]);
    // Without days to maturity nobody knows when looking and dressing end.
    const noPicks = { ...sown, coverOff: null, firstPick: null, lastPick: null };
    expect(plotTasks({ ...noPicks, lastSowing: null }).map(said)).toEqual(
      plotTasks(sown).map(said).slice(0, 8),
    );
    expect(
      plotTasks({ ...setOut, startUnderCover: null })
        .map(said)
        .slice(0, 2),
    ).toEqual(['hardenOff 2026-05-09 2026-05-15', 'setOut 2026-05-16']);
    const lastOnly = { ...noPicks, isTransplant: true, inGround: null };
    expect(plotTasks(lastOnly).map(said)).toEqual(['lastSowing 2026-06-23']);
    expect(
      plotTasks({ ...lastOnly, lastPick: sown.lastPick })
        .map(said)
        .slice(1),
    ).toEqual(['lastPick 2026-07-29', 'cleanUp 2026-07-30 2026-08-12']);
  });

  test('without a last pick the plot is cleared after the first frost, where anything was planted', () => {
    const frost = { ...sown, lastPick: null, firstFrost: dayNumber('2026-10-10') };
    // 1 to 14 days after it, as after a last pick: judgement.
    expect(plotTasks(frost).map(said).at(-1)).toBe('cleanUp 2026-10-11 2026-10-24');
    expect(
      plotTasks({ ...frost, firstPick: null })
        .map(said)
        .at(-1),
    ).toBe('cleanUp 2026-10-11 2026-10-24');
    expect(codesOf({ ...frost, inGround: null })).not.toContain('cleanUp');
    expect(plotTasks({ ...sown, firstFrost: frost.firstFrost })).toEqual(plotTasks(sown));
  });

  test('days that are none or in the wrong order are refused', () => {
    expect(refusalOf(() => plotTasks({ ...sown, firstFrost: NaN }))).toMatchObject({ code: 'notADate' });
    expect(refusalOf(() => plotTasks({ ...sown, lastPick: null, firstPick: NaN }))).toMatchObject({
      code: 'notADate',
    });
    expect(refusalOf(() => plotTasks({ ...sown, inGround: NaN }))).toMatchObject({ code: 'notADate' });
    expect(refusalOf(() => plotTasks({ ...sown, lastSowing: 0.5 }))).toMatchObject({ code: 'notADate' });
    expect(refusalOf(() => plotTasks({ ...setOut, startUnderCover: NaN }))).toMatchObject({
      code: 'notADate',
    });
    expect(refusalOf(() => plotTasks({ ...sown, lastPick: sown.firstPick - 1 }))).toMatchObject({
      code: 'lastBeforeFirst',
    });
    expect(refusalOf(() => plotTasks({ ...sown, everyDays: 0 }))).toMatchObject({ code: 'outOfRange' });
  });
});

const codesOf = (dates: PlotDates): string[] => plotTasks(dates).map(({ code }) => code);

const anyPlot = fc
  .record({
    inGround: anyDay,
    crop: fc.constantFrom(...crops.map(({ name }) => name)),
    isThinned: fc.boolean(),
    weeks: fc.option(fc.integer({ min: 0, max: 6 })),
    toPick: fc.integer({ min: 1, max: 365 }),
    picking: fc.integer({ min: 0, max: 365 }),
    flowerToPick: fc.option(fc.integer({ min: 0, max: 120 })),
    everyDays: fc.option(fc.integer({ min: 1, max: 14 })),
    lastSowing: anyDay,
  })
  .map(({ inGround, weeks, toPick, picking, flowerToPick, ...rest }): PlotDates => {
    const firstPick = inGround + toPick;
    return {
      ...rest,
      plot: 'P',
      firstFrost: null,
      isTransplant: weeks !== null,
      mayStayCovered: flowerToPick === null,
      inGround,
      startUnderCover: weeks === null ? null : inGround - 7 * weeks,
      firstPick,
      lastPick: firstPick + picking,
      coverOff: flowerToPick === null ? null : firstPick - flowerToPick,
    };
  });

test('of any plot: it starts once, comes off what went on, is cleared after its last pick, and no span ends before it begins', () => {
  fc.assert(
    fc.property(anyPlot, (plot) => {
      const tasks = plotTasks(plot);
      const count = (...codes: string[]): number => tasks.filter(({ code }) => codes.includes(code)).length;
      expect(count('setOut', 'sow')).toBe(1);
      expect(count('startUnderCover')).toBe(count('setOut'));
      expect(count('coverOff')).toBe(count('coverOn'));
      expect(count('coverOn') * count('coverStays')).toBe(0);
      expect(count('harvestRipe', 'lastPick')).toBe(1);
      for (const { day, lastDay } of tasks) if (lastDay !== null) expect(lastDay).toBeGreaterThanOrEqual(day);
      const last = Math.max(...tasks.flatMap(({ code, day }) => (code === 'lastSowing' ? [] : [day])));
      expect(tasks.find(({ code }) => code === 'cleanUp')?.day).toBe(last);
    }),
    seeded,
  );
});

test('of any plot: a day that is not known takes away tasks and moves or adds none', () => {
  const days = ['startUnderCover', 'inGround', 'coverOff', 'firstPick', 'lastPick', 'lastSowing'] as const;
  fc.assert(
    fc.property(anyPlot, fc.subarray([...days]), (plot, unknown) => {
      const known = { ...plot, ...Object.fromEntries(unknown.map((day) => [day, null])) };
      const whole = plotTasks(plot);
      const ofField = ['thin', 'scout', 'sideDress'];
      // What stops at the first pick goes on, and harvest and cover are named without it as they begin.
      const free = [...ofField, 'hardenOff', 'coverOn', 'coverOff', 'firstPick', 'lastPick'];
      for (const task of plotTasks(known)) {
        if (!free.includes(task.code)) expect(whole).toContainEqual(task);
      }
    }),
    seeded,
  );
});

test('scouting falls each week, as date-fns 4.4.0 eachWeekOfInterval counts weeks', () => {
  fc.assert(
    fc.property(anyDay, (inGround) => {
      const plot = {
        ...sown,
        inGround,
        firstPick: inGround + 60,
        lastPick: inGround + 80,
        lastSowing: inGround,
      };
      const looks = plotTasks(plot).filter(({ code }) => code === 'scout');
      const first = new UTCDate(`${isoDate(looks[0]?.day ?? NaN)}T00:00:00Z`);
      const end = new UTCDate(`${isoDate(looks.at(-1)?.day ?? NaN)}T00:00:00Z`);
      const weekStartsOn = first.getUTCDay() as 0 | 1 | 2 | 3 | 4 | 5 | 6;
      const weeks = eachWeekOfInterval({ start: first, end }, { weekStartsOn });
      expect(looks.map(({ day }) => day)).toEqual(
        weeks.map((week) => differenceInCalendarDays(week, new UTCDate(1970, 0, 1))),
      );
    }),
    seeded,
  );
});

describe('the work on all plots', () => {
  test('by day, then by plot as given, then in the order of the work', () => {
    const other = { ...sown, plot: 'Alder' };
    const tasks = tasksInOrder([plotTasks(sown), plotTasks(other)]).map(
      ({ plot, code, day }) => `${isoDate(day)} ${plot} ${code}`,
    );
    expect(tasks.slice(0, 6)).toEqual([
      '2026-05-09 Creek 2 sow',
      '2026-05-09 Creek 2 coverOn',
      '2026-05-09 Alder sow',
      '2026-05-09 Alder coverOn',
      '2026-05-16 Creek 2 scout',
      '2026-05-16 Alder scout',
    ]);
  });

  test('loses none, and orders like a plain comparison of texts', () => {
    fc.assert(
      fc.property(fc.array(anyPlot, { maxLength: 5 }), (plots) => {
        const byPlot = plots.map((plot, i) => plotTasks({ ...plot, plot: String(i) }));
        const key = ({ day, plot, code }: Task): string =>
          [isoDate(day), plot, String.fromCharCode(65 + taskCodes.indexOf(code))].join();
        expect(tasksInOrder(byPlot).map(key)).toEqual(byPlot.flat().map(key).sort());
      }),
      { ...seeded, numRuns: 100 },
    );
  });
});
