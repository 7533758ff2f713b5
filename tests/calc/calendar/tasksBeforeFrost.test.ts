import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plotTasks, type PlotDates, type Task } from '../../../src/calc/calendar/plotTasks';
import { tasksBeforeFrost } from '../../../src/calc/calendar/tasksBeforeFrost';
import { dayNumber, isoDate, seeded } from '../dates/calendar';

/** Slicing cucumbers sown on 20 September before a frost on 10 October: 60 days to 19 November, never picked. */
const late: PlotDates = {
  plot: 'Creek 2',
  crop: 'slicing cucumber',
  isTransplant: false,
  startUnderCover: null,
  inGround: dayNumber('2026-09-20'),
  isThinned: true,
  mayStayCovered: false,
  coverOff: dayNumber('2026-11-10'),
  firstPick: dayNumber('2026-11-19'),
  lastPick: null,
  lastSowing: dayNumber('2026-06-23'),
  firstFrost: dayNumber('2026-10-10'),
  everyDays: 3,
};
const frost = Number(late.firstFrost);

const said = ({ code, day, lastDay }: Task): string =>
  [code, isoDate(day), ...(lastDay === null ? [] : [isoDate(lastDay)])].join(' ');
const split = (plot: PlotDates) => {
  const { coming, lost } = tasksBeforeFrost(plotTasks(plot), plot);
  return { coming: coming.map(said), lost: lost.map(said) };
};

describe('the work that frost lets come', () => {
  // By hand on a calendar, with the days of reference/tasks; that frost kills the vines: project convention.
  test('taken before its first pick, a plot is tended until frost and cleared after it', () => {
    expect(split(late)).toEqual({
      coming: [
        'sow 2026-09-20',
        'coverOn 2026-09-20',
        // To 11 October otherwise.
        'thin 2026-10-04 2026-10-09',
        'scout 2026-09-27',
        'scout 2026-10-04',
        'lastSowing 2026-06-23',
        'cleanUp 2026-10-11 2026-10-24',
      ],
      lost: [
        'scout 2026-10-11',
        'scout 2026-10-18',
        'sideDress 2026-10-11',
        'coverOff 2026-11-10',
        'firstPick 2026-11-19',
      ],
    });
  });

  test('work on the day of the frost does not come', () => {
    expect(split({ ...late, firstFrost: dayNumber('2026-10-04') }).lost).toContain(
      'thin 2026-10-04 2026-10-11',
    );
  });

  test('planted on the day of the frost or later, nothing of a plot comes', () => {
    for (const inGround of [frost, frost + 40]) {
      const { coming, lost } = split({ ...late, inGround });
      expect(coming).toEqual([]);
      expect(lost).toContain(`sow ${isoDate(inGround)}`);
    }
  });

  test('where no frost is known, and where a last pick on it or later says that it is kept off, all comes', () => {
    for (const plot of [
      { ...late, firstFrost: null },
      { ...late, lastPick: dayNumber('2026-12-01') },
      { ...late, inGround: frost + 1, lastPick: dayNumber('2026-12-20') },
    ]) {
      expect(split(plot)).toEqual({ coming: plotTasks(plot).map(said), lost: [] });
    }
  });

  test('of any frost: each task comes or is lost, those that come before it and those that are lost not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -30, max: 120 }),
        fc.option(fc.integer({ min: 0, max: 60 })),
        (days, picking) => {
          const firstFrost = Number(late.inGround) + days;
          const lastPick = picking === null ? null : Number(late.firstPick) + picking;
          const plot = { ...late, firstFrost, lastPick };
          const tasks = plotTasks(plot);
          const { coming, lost } = tasksBeforeFrost(tasks, plot);
          const key = ({ code, day }: Task): string => `${code} ${day}`;
          expect([...coming, ...lost].map(key).sort()).toEqual(tasks.map(key).sort());
          if (lastPick !== null && lastPick >= firstFrost) {
            expect(lost).toEqual([]);
            return;
          }
          for (const task of coming) {
            if (task.code !== 'cleanUp')
              expect(Math.max(task.day, task.lastDay ?? 0)).toBeLessThan(firstFrost);
          }
          const isPlanted = Number(late.inGround) < firstFrost;
          expect(coming.some(({ code }) => code === 'cleanUp')).toBe(isPlanted);
          for (const { day } of lost) if (isPlanted) expect(day).toBeGreaterThanOrEqual(firstFrost);
        },
      ),
      seeded,
    );
  });
});
