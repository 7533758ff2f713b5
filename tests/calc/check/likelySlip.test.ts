import { describe, expect, test } from 'vitest';
import type { WrongFigure } from '../../../src/calc/check/findSlips';
import { likelySlip } from '../../../src/calc/check/likelySlip';

const upsideDown = { name: 'upsideDown' } as const;
const exchanged = { name: 'exchanged', about: 'length', taken: 'width' } as const;
const figure = (value: number, slip: WrongFigure['slip'] = upsideDown, isOfWhole = false): WrongFigure => ({
  slip,
  figure: value,
  isOfWhole,
});

// The rules are a project convention; each case is read off them.
describe('an answer that is a slip’s figure', () => {
  test.each([
    ['equal', 80, 80],
    ['equal but for binary fractions', 0.1 + 0.2, 0.3],
    ['rounded to one decimal', 138.9, 1250 / 9],
    ['rounded to a whole number', 605, 604.6],
    ['half a unit off', 0.13, 0.125],
    ['negative', -24.7, -24.69],
  ])('%s', (_, answer, wrong) => expect(likelySlip(answer, [figure(wrong)])).toBe(upsideDown));

  test.each([
    ['its neighbour', 81, 80],
    ['a decimal too far', 138.8, 1250 / 9],
    ['cut off, not rounded', 0.16, 1 / 6],
    ['of one digit, which says too little', 0.2, 1 / 6],
    ['of one digit before the point', 1, 1.2],
    ['0 for something small', 0, 0.004],
    ['the other sign', 24.7, -24.69],
  ])('but not %s', (_, answer, wrong) => expect(likelySlip(answer, [figure(wrong)])).toBe('none'));

  test('where whole numbers are given, a whole answer is no rounding of the exact figure', () => {
    expect(likelySlip(138, [figure(138.2, upsideDown, true)])).toBe('none');
    expect(likelySlip(138.2, [figure(138.2, upsideDown, true)])).toBe(upsideDown);
    expect(likelySlip(138, [figure(138, upsideDown, true)])).toBe(upsideDown);
  });
});

test('of several slips with one figure none is named; one slip with two figures is one', () => {
  expect(likelySlip(80, [])).toBe('none');
  expect(likelySlip(80, [figure(80), figure(80, exchanged)])).toBe('several');
  expect(likelySlip(80, [figure(80), figure(79.7)])).toBe(upsideDown);
  expect(likelySlip(80, [figure(79, exchanged), figure(80)])).toBe(upsideDown);
  const withOther = { ...exchanged, taken: 'plants' };
  expect(likelySlip(80, [figure(80, exchanged), figure(80, withOther)])).toBe('several');
});
