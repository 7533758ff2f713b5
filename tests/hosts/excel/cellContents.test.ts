import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  enterStanding,
  enterText,
  formulaOf,
  standingOf,
  valueOf,
} from '../../../src/hosts/excel/cellContents';
import { enterCell } from '../../excelStandIn/enterCell';

describe('a text put into a cell', () => {
  test.each([
    '007',
    '=2+2',
    '+1',
    '-x',
    '@x',
    "'quoted'",
    '#N/A',
    '50%',
    ' 5',
    'TRUE',
    'false',
    '1/2',
    '3 May',
    '(5)',
    '1e3',
  ])('%s gets an apostrophe', (text) => expect(enterText(text)).toBe(`'${text}`));

  test.each(['north field', 'čočka 南瓜 🎃', 'May', 'true love', 'a=b', ''])('%s stands as it is', (text) => {
    expect(enterText(text)).toBe(text);
  });

  test('stays that text, whatever it is', () => {
    const texts = fc.oneof(
      fc.string({ minLength: 1 }),
      fc.string({ minLength: 1, unit: fc.constantFrom(..."0123456789/.-:%+=@'#eE $€(),TRUEfalse") }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        expect(enterCell(enterText(text), 'General')).toEqual({ constant: text });
        expect(enterCell(enterText(text), '@')).toEqual({ constant: text });
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what is read', () => {
  test('an empty cell is nothing, a formula without a text is a text', () => {
    expect(valueOf('', 'Empty')).toBeNull();
    expect(valueOf('', 'String')).toBe('');
  });

  test('an error is told by its type, not by its text', () => {
    expect(valueOf('#N/A', 'Error')).toEqual({ error: '#N/A', message: null });
    expect(valueOf('#N/A', 'String')).toBe('#N/A');
  });

  test('a text that looks like a formula is none', () => {
    expect(formulaOf('=2+2', '=2+2', 'String')).toBeNull();
    expect(formulaOf(4, '=2+2', 'Double')).toBe('=2+2');
    expect(formulaOf('#NAME?', '=#NAME?', 'Error')).toBe('=#NAME?');
  });

  test.each([
    ['', '', 'Empty', ''],
    [4, '=2+2', 'Double', '=2+2'],
    ['=2+2', '=2+2', 'String', "'=2+2"],
    ['007', '007', 'String', "'007"],
    ['#N/A', '#N/A', 'Error', '#N/A'],
    [true, true, 'Boolean', true],
    [7, 7, 'Double', 7],
  ] as const)('%j (%j, %s) is put back as %j', (value, formula, type, entered) => {
    expect(enterStanding(standingOf(value, formula, type))).toBe(entered);
  });
});
