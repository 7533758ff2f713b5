/** Homework in words: every problem says all that its function is given, and its key is right by CHECK.SLIP. */
import { describe, expect, test } from 'vitest';
import { slipsOfFunctions, type KnownSlips } from '../../src/calc/check/slipsOfFunctions';
import { makeProblems } from '../../src/calc/homework/makeProblems';
import { problemKinds } from '../../src/calc/homework/problemKinds';
import { explainable } from '../../src/functions/explainable';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { answerFormats } from '../../src/templates/homework';
import { homeworkProblemTexts, homeworkProblemWords } from '../../src/texts/english/homeworkProblems';
import { homeworkProblemWords as inSpanish } from '../../src/texts/spanish/homeworkProblems';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { run } from './run';

const systems = ['us', 'metric'] as const;
const problemsOf = (number: number, count: number, units: (typeof systems)[number] = 'us') => {
  const answer = homeworkProblems(number, count, units);
  if ('wrong' in answer) throw new Error(answer.wrong);
  return answer.value;
};

/** Of each kind some: a homework has its families in turn, not all of their kinds. */
const allProblems = (units: (typeof systems)[number] = 'us') =>
  Array.from({ length: 12 }, (_, i) => problemsOf(i + 1, 100, units)).flat();

test('a function gives a problem, or it is said why not', () => {
  const inWords = 'answers in words: nothing to reckon';
  const inList = 'gives a list or a table: a problem has one answer';
  const withoutProblem: Readonly<Record<string, string>> = {
    'STAND.REPLANT': inWords,
    'SEED.STANDARD': 'looked up in a federal list',
    'SEED.TOLERANCE': 'looked up in a federal table',
    'SEED.PACKS': inList,
    'SEED.PACKCOST': 'reads a price list of all crops, for which a sentence has no room',
    'SEED.PACKLIST': inWords,
    'DATE.SUCCESSION': inList,
    'FROST.LASTDATES': inList,
    'FROST.FIRSTDATES': inList,
    'FROST.YEARS': inList,
    'HEAT.YEARS': inList,
    'HEAT.DATES': inList,
    'HEAT.SUCCESSION': inList,
    'SOIL.RANGE': 'gives a row, of which the first alone is checked: it is the same for every crop',
    'FLOWER.ISOLATE': inWords,
    'FLOWER.CROSSES': inWords,
    'HARVEST.SIZE': inWords,
    'BUDGET.SENSITIVITY': inList,
    'BEETLE.VERDICT': inWords,
    'CROP.NAME': inWords,
    'CROP.SOURCE': inWords,
    'CROP.LIST': inList,
    'CROP.TRAITS': inList,
  };
  const told = [...problemKinds.map(({ id }) => id), ...Object.keys(withoutProblem)];
  expect(told.sort()).toEqual([...explainable.keys()].sort());
});

test.each(systems)(
  'in %s the text of a problem says each argument that its function is given, unless it is the same in all',
  (units) => {
    const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
    const ids = problemKinds.map(({ id }) => id);
    expect(Object.keys(texts).filter((id) => !id.endsWith(' metric'))).toEqual(ids);
    const drawn = allProblems(units);
    const left = ids.filter((id) => !drawn.some((one) => one.id === id));
    expect(left).toEqual(units === 'us' ? [] : ['HARVEST.BUSHELS']);
    for (const { id, args, text } of drawn) {
      const names = explainable.get(id)?.parameters.map(({ name }) => name) ?? [];
      const template = texts[`${id} ${units}`] ?? texts[id] ?? '';
      const asked = new Set([...template.matchAll(/\{(\w+)/g)].map(([, name]) => name));
      expect(
        [...asked].filter(
          (name) => !names.slice(0, args.length).includes(name ?? '') && !name?.endsWith('_unit'),
        ),
        id,
      ).toEqual([]);
      for (const name of names.slice(0, args.length).filter((name) => !asked.has(name))) {
        const values = drawn.filter((one) => one.id === id).map((one) => one.args[names.indexOf(name)]);
        expect(new Set(values).size, `${id} says nothing of ${name}`).toBe(1);
      }
      expect(text, id).not.toMatch(/[{}]|undefined|NaN/);
      // It stands in one line, with the answer in sight beside it: letters are narrower than the digits of a width.
      expect(text.length, text).toBeLessThanOrEqual(105);
      if (units === 'metric') expect(text, id).not.toMatch(/(\d|many|of|per) (ft|acres?|sq ft|gal|°F)\b/);
      else expect(text, id).not.toMatch(/(\d|many|of|per) (m|cm|mm|kg|ha|litres|°C)\b/);
    }
  },
);

test('figures of the reference that a text states are those of the function', () => {
  // Harrington and Minges 1954 for emergence; the seed's life and the bushel as in reference/seedLife and bushels.
  const stated = (id: string, ...figures: readonly string[]): void => {
    const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
    for (const figure of figures) expect(texts[id]).toContain(figure);
  };
  stated('EMERGENCE.DAYS', '13 days at 59 °F', '6 at 68');
  stated('EMERGENCE.DAYS metric', '13 days at 15 °C', '6 at 20');
  for (const [temperature, days, units] of [
    [59, 13, 'us'],
    [68, 6, 'us'],
    [15, 13, 'metric'],
    [20, 6, 'metric'],
  ] as const) {
    expect(run('EMERGENCE.DAYS', 'cucumber', temperature, units)).toBeCloseTo(days, 9);
  }
  stated('EMERGENCE.PERCENT', '38% is normal at 68 °F', '94% at 77 °F');
  stated('EMERGENCE.PERCENT metric', '38% is normal at 20 °C', '94% at 25 °C');
  for (const [temperature, share, units] of [
    [68, 0.38, 'us'],
    [77, 0.94, 'us'],
    [20, 0.38, 'metric'],
    [25, 0.94, 'metric'],
  ] as const) {
    expect(run('EMERGENCE.PERCENT', 'muskmelon', temperature, units)).toBeCloseTo(share, 9);
  }
  stated('SEED.STORAGELEFT', 'for 5 years');
  expect(run('SEED.STORAGELEFT', 'cucumber', 2027, 2027)).toBe(5);
  stated('HARVEST.BUSHELS', '48 lb');
  expect(run('HARVEST.BUSHELS', 48, 'cucumber')).toBe(1);
  stated('PICKLE.POUNDS', '14 lb of cucumbers fill 7 quarts');
  expect(run('PICKLE.POUNDS', 7, 'quart')).toMatchObject([[14, expect.anything()]]);
});

test('the sheet shows each answer as what its problem asks', () => {
  const asked = problemKinds.flatMap(({ id }) => {
    if (explainable.get(id)?.result === 'day') return [[id, 'date']];
    const known: Readonly<Record<string, KnownSlips>> = slipsOfFunctions;
    return known[id]?.isShare === true ? [[id, 'percentHundredth']] : [];
  });
  expect(answerFormats).toEqual(Object.fromEntries(asked));
});

test('the words in a problem are those of its language', () => {
  const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
  const said = new Set<unknown>();
  for (let number = 1; number <= 60; number++) {
    for (const { id, args } of makeProblems(number, 100, 'us')) {
      explainable.get(id)?.parameters.forEach(({ name }, i) => {
        const argument = args[i];
        if (argument?.as === 'word' && texts[id]?.includes(`{${name}}`) === true) said.add(argument.value);
      });
    }
  }
  for (const words of [homeworkProblemWords, inSpanish]) expect(new Set(Object.keys(words))).toEqual(said);
});

// Brute force: of so many plants the fewest pollenizers that are the share of what is left when some of them die.
test('the problem of pollenizers asks what its function answers', () => {
  const asked = allProblems().filter(({ id }) => id === 'FLOWER.POLLENIZERS');
  expect(asked.length).toBeGreaterThan(5);
  for (const { args, answer, text } of asked) {
    const [plants = NaN, share = NaN, losses = NaN] = args.map(Number);
    const counts = Array.from({ length: plants + 1 }, (_, count) => count);
    const isEnough = (count: number): boolean => {
      const living = count * (1 - losses);
      return living / (living + plants - count) >= share - 1e-12;
    };
    expect(answer, text).toBe(counts.find(isEnough));
  }
});

test('a problem has slips to name', () => {
  for (const { id } of problemKinds) expect(Object.keys(slipsOfFunctions)).toContain(id);
});

describe('thousands of problems', () => {
  test('none is refused by its function, and the key is right', () => {
    let count = 0;
    for (const units of systems) {
      for (let number = 1; number <= 60; number++) {
        for (const { id, args, answer } of problemsOf(number, 100, units)) {
          expect(run('CHECK.SLIP', answer, id, ...args), `${number}: ${id} ${args.join()}`).toBe('right');
          count += 1;
        }
      }
    }
    expect(count).toBe(12_000);
  });
});

// 100 / (0.8 x 0.9) and so on are checked with the functions; here by hand, one of each kind of answer.
test('answers are numbers to six digits, or serials of dates', () => {
  const all = allProblems();
  const density = all.find(({ id }) => id === 'PLANTS.DENSITY');
  const [row, plant] = [Number(density?.args[0]), Number(density?.args[1])];
  expect(density?.answer).toBe(Number(((43_560 * 12) / (row * plant)).toPrecision(6)));
  const setOut = all.find(({ id }) => id === 'DATE.SETOUT');
  expect(setOut?.answer).toBe(
    serialOfDay((dayOfIso(String(setOut?.args[0])) ?? NaN) + Number(setOut?.args[1])),
  );
});

test('what is no number of a homework is refused with advice', () => {
  expect(homeworkProblems(0, 10, 'us')).toEqual({
    wrong: 'The number of the homework is 0. It must be at least 1 and at most 9999.',
  });
});
