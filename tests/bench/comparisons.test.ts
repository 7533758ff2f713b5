/** What the bench measures, run once and not timed: that each case does the work its line names. */
import { describe, expect, test } from 'vitest';
import { comparisons, type Comparison } from './comparisons';

const named = (start: string): Comparison => {
  const found = comparisons.find(({ title }) => title.startsWith(start));
  if (found === undefined) throw new Error(`no comparison ${start}`);
  return found;
};
const resultsOf = ({ cases }: Comparison): Promise<unknown[]> => Promise.all(cases.map(({ run }) => run()));

describe('the cases of the bench', () => {
  test('10 to 100 years of days from 1926 on: 365 each and their leap days, counted by hand', () => {
    for (const title of ['FROST.LASTDATES', 'FROST.FIRSTDATES', 'HEAT.SUM', 'HEAT.DATE', 'HEAT.SUCCESSION']) {
      // 1928 and 1932; to 1944; to 1972; to 2024, 2000 among them.
      expect(named(title).cases.map(({ size }) => size)).toEqual([
        10 * 365 + 2,
        20 * 365 + 5,
        50 * 365 + 12,
        100 * 365 + 25,
      ]);
    }
  });

  test('a longer record of the same weather moves a frost date by days, has more heat and more sowings', async () => {
    const [short, ...longer] = (await resultsOf(named('FROST.LASTDATES'))).map(Number);
    for (const date of longer) expect(Math.abs(date - (short ?? NaN))).toBeLessThan(10);
    const [shortFall, ...longerFalls] = (await resultsOf(named('FROST.FIRSTDATES'))).map(Number);
    for (const date of longerFalls) expect(Math.abs(date - (shortFall ?? NaN))).toBeLessThan(10);
    const heats = (await resultsOf(named('HEAT.SUM'))).map(Number);
    expect(heats).toEqual([...heats].sort((a, b) => a - b));
    const sowings = (await resultsOf(named('HEAT.SUCCESSION'))).map((rows) => (rows as unknown[]).length);
    expect((sowings[3] ?? NaN) / (sowings[0] ?? NaN)).toBeCloseTo(10, 0);
  });

  test('HEAT.DATE walks to the last autumn of its record', async () => {
    const { cases } = named('HEAT.DATE');
    const dates = (await resultsOf(named('HEAT.DATE'))).map(Number);
    // Serial 9498 is 1 January 1926; the heat of a record ends in its last three months.
    dates.forEach((date, i) => expect(9498 + (cases[i]?.size ?? NaN) - date).toBeLessThan(92));
  });

  test('one call and a call a row give the same heat, the methods different ones', async () => {
    const [oneCall, manyCalls] = await resultsOf(named('Heat of 100 years'));
    expect(oneCall).toBeCloseTo(Number(manyCalls), 6);
    expect(new Set(await resultsOf(named('HEAT.SUM of 100 years'))).size).toBe(4);
  });

  test('more plants want more seed, and every plot is filled', async () => {
    for (const title of ['SEED.NEEDED', 'SEED.NEEDED, 400']) {
      const [first, second, third] = (await resultsOf(named(title))).map(Number);
      expect(second).toBeGreaterThan(first ?? NaN);
      expect(third).toBeGreaterThan(second ?? NaN);
    }
    expect(await resultsOf(named('All sheets'))).toEqual([100, 1000]);
  });

  test('an edit in the grid gives the plants of the edited plot', async () => {
    const [among] = named('A length edited').cases;
    const short = Number(await among.run());
    // 200 ft of row after 100 ft: twice the plants, and the row's end has one (PLANTS.INROWS, hand calculation).
    expect(Number(await among.run()) / short).toBeCloseTo(2, 1);
    const [ofCrop] = named('A crop edited').cases;
    expect(await ofCrop.run()).not.toBe(await ofCrop.run());
    const [ofName] = named('A name edited').cases;
    expect(await ofName.run()).toBe(await ofName.run());
  }, 240_000);
});
