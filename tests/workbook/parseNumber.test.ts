import { describe, expect, it } from 'vitest';
import { parseNumber, whyNotNumber } from '../../src/workbook/parseNumber';

describe('parseNumber', () => {
  it.each([
    ['12', false, 12],
    [' -1.5 ', false, -1.5],
    ['+0.85', false, 0.85],
    ['.5', false, 0.5],
    ['85%', false, 0.85],
    ['7 %', false, 0.07],
    ['12.5%', false, 0.125],
    ['0,85', true, 0.85],
    ['0.85', true, 0.85],
    ['0,125', true, 0.125],
    ['1234,5', true, 1234.5],
    ['5e5', false, 500000],
    ['1E-2', false, 0.01],
    ['5.', false, 5],
    ['1,5e2', true, 150],
    ['5e1 %', false, 0.5],
  ])('%j (decimal comma %s) is %d', (text, decimalComma, number) => {
    expect(parseNumber(text, decimalComma)).toBe(number);
  });

  it.each([
    ['0,85', false],
    ['1,234.5', false],
    ['1.234,5', true],
    ['1.234', true],
    ['1,234', true],
    ['', false],
    ['12 ft', false],
    ['0x10', false],
    ['--1', false],
    ['Infinity', false],
    ['=2+2', false],
    ['e3', false],
    ['1e', false],
    ['1e2.5', false],
    // Beyond the greatest double, 1.797...e308 (IEEE 754).
    ['1e309', false],
    ['-1e400', true],
    ['1e400%', false],
    ['9'.repeat(400), true],
  ])('%j (decimal comma %s) is refused', (text, decimalComma) => {
    expect(parseNumber(text, decimalComma)).toBeNull();
  });
});

describe('whyNotNumber', () => {
  it.each([
    ['1,000', false, 'commaInNumber'],
    ['0,85', false, 'commaInNumber'],
    ['1,234.5', false, 'commaInNumber'],
    ['$5', false, 'currencySign'],
    ['5 €', true, 'currencySign'],
    ['$1,000', false, 'currencySign'],
    ['-$5', false, 'currencySign'],
    ['5 $/lb', false, 'currencySign'],
    // As readInputs leaves them in a cell.
    ['4,50?', false, 'commaInNumber'],
    ['$4,50?', false, 'currencySign'],
    ['1.234?', false, 'notANumber'],
    ['1.2.3', false, 'notANumber'],
    ['1.234', true, 'maybeThousands'],
    ['1,234', true, 'maybeThousands'],
    ['1.234,5', true, 'maybeThousands'],
    ['12 ft', false, 'notANumber'],
    ['about 5, or 6', false, 'notANumber'],
    ['1e400', false, 'notANumber'],
    ['9'.repeat(400), true, 'notANumber'],
  ] as const)('%j (decimal comma %s): %s', (text, decimalComma, why) => {
    expect(parseNumber(text, decimalComma)).toBeNull();
    expect(whyNotNumber(text, decimalComma)).toBe(why);
  });
});
