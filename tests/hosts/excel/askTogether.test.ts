import { expect, test } from 'vitest';
import { askTogether } from '../../../src/hosts/excel/askTogether';

function counting() {
  const requests: string[][] = [];
  const ask = askTogether(async (words: readonly string[]) => {
    requests.push([...words]);
    if (words.includes('gone')) throw new Error('gone');
    return words.map((word) => word.length);
  });
  return { ask, requests };
}

test('questions of one breath are one request, each with its own answer', async () => {
  const { ask, requests } = counting();
  expect(await Promise.all(['a', 'bcd', 'ef'].map(ask))).toEqual([1, 3, 2]);
  expect(await ask('later')).toBe(5);
  expect(requests).toEqual([['a', 'bcd', 'ef'], ['later']]);
});

test('what cannot be answered fails alone', async () => {
  const { ask, requests } = counting();
  const answers = await Promise.allSettled(['a', 'gone', 'ef'].map(ask));
  expect(answers.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
  expect(requests.slice(1)).toEqual([['a'], ['gone'], ['ef']]);
});
