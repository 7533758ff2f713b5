/** Homework in words: every problem says all that its function is given, and its key is right by CHECK.SLIP. */
import { describe, expect, test } from 'vitest';
import { slipsOfFunctions } from '../../src/calc/check/slipsOfFunctions';
import { problemKinds } from '../../src/calc/homework/problemKinds';
import { explainable } from '../../src/functions/explainable';
import { homeworkProblems } from '../../src/functions/homeworkProblems';
import { homeworkProblemTexts } from '../../src/texts/english/homeworkProblems';
import { run } from './run';

const problemsOf = (number: number, count: number) => {
  const answer = homeworkProblems(number, count);
  if ('wrong' in answer) throw new Error(answer.wrong);
  return answer.value;
};

test('the text of a problem says each argument that its function is given, unless it is the same in all', () => {
  const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
  expect(Object.keys(texts)).toEqual(problemKinds.map(({ id }) => id));
  for (const { id, args, text } of problemsOf(3, problemKinds.length)) {
    const names = explainable.get(id)?.parameters.map(({ name }) => name) ?? [];
    const asked = new Set([...(texts[id] ?? '').matchAll(/\{(\w+)\}/g)].map(([, name]) => name));
    expect(
      [...asked].filter((name) => !names.slice(0, args.length).includes(name ?? '')),
      id,
    ).toEqual([]);
    const unsaid = names.slice(0, args.length).filter((name) => !asked.has(name));
    for (const name of unsaid) {
      const values = [1, 2, 3, 4, 5].map((number) => {
        const drawn = problemsOf(number, problemKinds.length).find((one) => one.id === id);
        return drawn?.args[names.indexOf(name)];
      });
      expect(new Set(values).size, `${id} says nothing of ${name}`).toBe(1);
    }
    expect(text, id).not.toMatch(/[{}]|undefined|NaN/);
    // It stands in one line, with the answer in sight beside it: letters are narrower than the digits of a width.
    expect(text.length, id).toBeLessThanOrEqual(105);
  }
});

test('a problem has slips to name', () => {
  for (const { id } of problemKinds) expect(Object.keys(slipsOfFunctions)).toContain(id);
});

describe('thousands of problems', () => {
  test('none is refused by its function, and the key is right', () => {
    let count = 0;
    for (let number = 1; number <= 100; number++) {
      for (const { id, args, answer } of problemsOf(number, 60)) {
        expect(run('CHECK.SLIP', answer, id, ...args), `${number}: ${id} ${args.join()}`).toBe('right');
        count += 1;
      }
    }
    expect(count).toBe(6000);
  });
});

// 100 / (0.8 x 0.9) and so on are checked with the functions; here by hand, one of each kind of answer.
test('answers are numbers to six digits, or dates', () => {
  const all = problemsOf(5, problemKinds.length);
  const density = all.find(({ id }) => id === 'PLANTS.DENSITY');
  const [row, plant] = [Number(density?.args[0]), Number(density?.args[1])];
  expect(density?.answer).toBe(Number(((43_560 * 12) / (row * plant)).toPrecision(6)));
  expect(all.find(({ id }) => id === 'DATE.SETOUT')?.answer).toMatch(/^2027-0[4-6]-\d\d$/);
});

test('what is no number of a homework is refused with advice', () => {
  expect(homeworkProblems(0, 10)).toEqual({
    wrong: 'The number of the homework is 0. It must be at least 1 and at most 9999.',
  });
});
