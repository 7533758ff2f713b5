import { describe, expect, test } from 'vitest';
import { carryFormula } from '../../src/workbook/carryFormula';

/** From the 8th to the 9th row; what is expected is read off the sentence in the file's head. */
const carried = (formula: string): string => carryFormula(formula, 7, 8);

describe('a formula carried to another row', () => {
  test.each([
    ['=D8*2', '=D9*2'],
    ['=$D$8+d8', '=$D$9+d9'],
    ['=SUM(D8:F8)', '=SUM(D9:F9)'],
    ['=SUM(D$2:D8)', '=SUM(D$2:D9)'],
    ['=SUM(8:8)', '=SUM(9:9)'],
  ])('takes the cells of its own row along: %s', (formula, expected) => {
    expect(carried(formula)).toBe(expected);
  });

  test.each([
    '=D7+D9+D80+D18',
    '=Season!B8+SUM(Season!B8:C8)',
    "='My sheet'!D8",
    "='It''s D8'!$D$8",
    '="D8 stays"',
    '="say ""D8"" here"',
    '=Plots[[#This Row],[D8]]*LOG10(8)',
    '=FIRST_FROST+8',
    '=ABC8.5',
    '=MY_D8+D8X+_D8',
  ])('leaves all else: %s', (formula) => {
    expect(carried(formula)).toBe(formula);
  });

  test('goes there and back', () => {
    expect(carryFormula(carried('=D8+E8*Season!B8'), 8, 7)).toBe('=D8+E8*Season!B8');
  });
});
