/** Every shape in which a host hands over a cell, for each kind of parameter. */
import { describe, expect, test } from 'vitest';
import * as parameters from '../../src/functions/parameters';
import { dayNumber } from '../calc/dates/calendar';
import { refusalOf } from '../calc/refusal';

const { choice, day, number, optionalChoice, optionalDay, optionalNumber, optionalText, optionalYesOrNo } =
  parameters;

const nothings = [null, undefined, '', '  ', [['']], [[null]], { type: 'String', basicValue: '' }];

describe('nothing given', () => {
  test.each(nothings.map((nothing) => [nothing]))('%j is missing where it is wanted', (nothing) => {
    for (const wanted of [
      number('depth'),
      parameters.text('depth'),
      day('depth', 'spring'),
      choice('depth', ['deep', 'flat']),
    ]) {
      expect(refusalOf(() => wanted.read(nothing))).toEqual({ code: 'missing', name: 'depth' });
    }
  });

  test.each(nothings.map((nothing) => [nothing]))('%j is a default where it may be left out', (nothing) => {
    for (const free of [
      optionalNumber('depth'),
      optionalText('depth'),
      optionalDay('depth', 'fall'),
      optionalYesOrNo('depth'),
      optionalChoice('depth', ['deep', 'flat']),
    ]) {
      expect(free.read(nothing)).toBeUndefined();
    }
    expect(parameters.units.read(nothing).name).toBe('us');
  });

  test('0 and no are something', () => {
    expect(optionalNumber('depth').read(0)).toBe(0);
    expect(optionalNumber('depth').read([[0]])).toBe(0);
    expect(optionalYesOrNo('screened').read(false)).toBe(false);
  });

  test.each([[0], [[[0]]]])(
    '%j, an empty cell in some versions, is nothing where no number is meant',
    (zero) => {
      for (const wanted of [parameters.text('crop'), day('start', 'spring'), choice('edge', ['inset'])]) {
        expect(refusalOf(() => wanted.read(zero))).toMatchObject({ code: 'missing' });
      }
      for (const free of [
        optionalText('crop'),
        optionalDay('start', 'fall'),
        optionalChoice('edge', ['inset']),
      ]) {
        expect(free.read(zero)).toBeUndefined();
      }
      expect(parameters.units.read(zero).name).toBe('us');
    },
  );
});

describe('numbers', () => {
  test.each([
    [12, 12],
    [-0.5, -0.5],
    ['12', 12],
    [' 12.5 ', 12.5],
    ['1e3', 1000],
    ['-2.5E-1', -0.25],
    ['.5', 0.5],
    ['+3.', 3],
    ['85%', 0.85],
    ['85 %', 0.85],
    [[[7]], 7],
    [[['7']], 7],
    [{ type: 'Double', basicValue: 3.5 }, 3.5],
    [{ type: 'FormattedNumber', basicValue: 46144, numberFormat: 'yyyy-mm-dd' }, 46144],
    [{ type: 'String', basicValue: '12' }, 12],
    [[[{ type: 'Double', basicValue: 9 }]], 9],
  ])('%j is %d', (given, expected) => {
    expect(number('depth').read(given)).toBe(expected);
    expect(optionalNumber('depth').read(given)).toBe(expected);
  });

  test.each([['12 in'], ['0x10'], ['Infinity'], ['NaN'], ['%'], ['1e'], ['ten'], [true]])(
    '%j is none, and is quoted',
    (given) => {
      expect(refusalOf(() => number('depth').read(given))).toEqual({
        code: 'notANumber',
        name: 'depth',
        given: String(given),
      });
    },
  );

  test.each([
    ['12,5', 'commaInNumber'],
    ['1,000', 'commaInNumber'],
    ['$3.50', 'currencySign'],
    ['€ 1,200', 'currencySign'],
    ['5 $', 'currencySign'],
  ])('%j is none: what is in the way is named', (given, code) => {
    expect(refusalOf(() => number('price').read(given))).toEqual({ code, name: 'price', given });
  });

  test('of a text that a sheet has with our mark it quotes what was typed, and of another all', () => {
    const givenOf = (text: string) => refusalOf(() => number('price').read(text));
    expect(givenOf('$18?')).toEqual({ code: 'currencySign', name: 'price', given: '$18' });
    expect(givenOf('5?')).toEqual({ code: 'notANumber', name: 'price', given: '5?' });
  });
});

describe('what is no single value', () => {
  test.each([[[[1, 2]]], [[[1], [2]]], [[]], [[[]]]])('%j: one cell is wanted', (range) => {
    for (const kind of [number('depth'), parameters.text('depth'), parameters.units]) {
      expect(refusalOf(() => kind.read(range))).toMatchObject({ code: 'oneCellWanted' });
    }
  });

  test.each([
    [{ error: '#N/A', message: 'no such crop' }, '#N/A'],
    [{ code: '#DIV/0!' }, '#DIV/0!'],
    [[[{ error: '#REF!' }]], '#REF!'],
    // As the program's own error object and its rich error value come: both also have a basic value.
    [{ code: '#N/A', type: 'Error', basicType: 'Error', basicValue: '#N/A' }, '#N/A'],
    [{ type: 'Error', basicType: 'Error', basicValue: '#BUSY!' }, '#BUSY!'],
  ])('%j: an error inside', (given, error) => {
    for (const kind of [
      number('depth'),
      optionalNumber('depth'),
      optionalText('depth'),
      day('depth', 'fall'),
    ]) {
      expect(refusalOf(() => kind.read(given))).toEqual({ code: 'errorInside', name: 'depth', error });
    }
  });

  test('anything else cannot be read', () => {
    const linked = { type: 'Entity', text: 'Melons', basicType: 'Error', basicValue: '#VALUE!' };
    for (const given of [{}, { type: 'Entity' }, linked, () => 1, Symbol('depth')]) {
      expect(refusalOf(() => optionalNumber('depth').read(given))).toEqual({
        code: 'notText',
        name: 'depth',
      });
    }
  });
});

describe('words', () => {
  test('texts are trimmed; numbers and truths are their words', () => {
    expect(parameters.text('crop').read('  summer squash ')).toBe('summer squash');
    expect(parameters.text('crop').read(7)).toBe('7');
    expect(optionalText('crop').read([['melon']])).toBe('melon');
  });

  test('choices in any letters, the rest is refused with the choices', () => {
    const edge = choice('edge', ['inset', 'onEdge']);
    for (const given of ['onedge', ' ONEDGE ', 'onEdge', [['OnEdge']]])
      expect(edge.read(given)).toBe('onEdge');
    expect(refusalOf(() => edge.read('border'))).toEqual({
      code: 'notAChoice',
      name: 'edge',
      given: 'border',
      choices: ['inset', 'onEdge'],
    });
    expect(refusalOf(() => optionalChoice('edge', ['inset']).read(1))).toMatchObject({ code: 'notAChoice' });
  });

  test('yes and no as truths, 1 and 0, or words', () => {
    const screened = optionalYesOrNo('screened');
    for (const given of [true, 1, 'yes', ' YES ', 'TRUE', [['true']]])
      expect(screened.read(given)).toBe(true);
    for (const given of [false, 0, 'no', 'No', 'FALSE', [[false]]]) expect(screened.read(given)).toBe(false);
    for (const given of [2, 'maybe', 'y', '1']) {
      expect(refusalOf(() => screened.read(given))).toMatchObject({
        code: 'notYesOrNo',
        given: String(given),
      });
    }
  });

  test('unit systems', () => {
    expect(parameters.units.read('us').name).toBe('us');
    expect(parameters.units.read(' Metric ').name).toBe('metric');
    expect(refusalOf(() => parameters.units.read('SI'))).toMatchObject({ code: 'notAChoice', name: 'units' });
  });
});

describe('dates', () => {
  const may2 = dayNumber('2026-05-02');

  test.each([
    [46144],
    [' 2026-05-02 '],
    [[[46144]]],
    [[['2026-05-02']]],
    [{ type: 'FormattedNumber', basicValue: 46144 }],
  ])('%j is 2 May 2026', (given) => {
    expect(day('start', 'spring').read(given)).toBe(may2);
    expect(optionalDay('start', 'fall').read(given)).toBe(may2);
  });

  test('a fraction of a day: up in spring, down in fall, rounding error neither', () => {
    for (const fraction of [0.25, 0.5, 0.999]) {
      expect(day('last_frost', 'spring').read(46144 + fraction)).toBe(may2 + 1);
      expect(day('first_frost', 'fall').read(46144 + fraction)).toBe(may2);
    }
    for (const error of [1e-9, -1e-9]) {
      expect(day('last_frost', 'spring').read(46144 + error)).toBe(may2);
      expect(day('first_frost', 'fall').read(46144 + error)).toBe(may2);
    }
  });

  test.each([
    [60],
    [-1],
    [2958466],
    ['5/2/2026'],
    ['2026-02-29'],
    ['2100-02-29'],
    ['May 2'],
    ['46144'],
    [true],
  ])('%j is no date', (given) => {
    expect(refusalOf(() => day('start', 'spring').read(given))).toEqual({
      code: 'notADate',
      name: 'start',
      given: String(given),
    });
  });
});

describe('ranges of texts', () => {
  const crops = parameters.texts('all_crops');

  test('row by row; blanks and errors keep their place as null', () => {
    expect(
      crops.read([
        ['melon', ' gourd '],
        ['', null],
        [{ error: '#N/A' }, { code: '#REF!' }],
        [{ type: 'Error', basicType: 'Error', basicValue: '#N/A' }, 0],
        ['  ', 7],
      ]),
    ).toEqual(['melon', 'gourd', null, null, null, null, null, null, null, '7']);
  });

  test('a single cell is a range of one', () => {
    expect(crops.read('melon')).toEqual(['melon']);
    expect(crops.read(undefined)).toEqual([null]);
  });
});

describe('ranges of numbers', () => {
  const prices = parameters.numbers('prices');

  test('row by row, blanks in their place, 0 as it stands, texts that are numbers', () => {
    expect(
      prices.read([
        [1.5, null],
        ['', '  '],
        [0, ' 2e2 '],
      ]),
    ).toEqual([1.5, null, null, null, 0, 200]);
    expect(prices.read([[{ type: 'Double', basicValue: 3.95 }, '50%']])).toEqual([3.95, 0.5]);
  });

  test('a single cell is a range of one', () => {
    expect(prices.read(7)).toEqual([7]);
    expect(prices.read('7')).toEqual([7]);
    expect(prices.read(null)).toEqual([null]);
  });

  test('a cell that is none, or an error, is told: no row is passed over in silence', () => {
    expect(refusalOf(() => prices.read([[1], ['three']]))).toEqual({
      code: 'notANumber',
      name: 'prices',
      row: 2,
      given: 'three',
    });
    expect(refusalOf(() => prices.read([[{ error: '#REF!' }]]))).toMatchObject({
      code: 'errorInside',
      error: '#REF!',
    });
    expect(refusalOf(() => prices.read([[true]]))).toMatchObject({ code: 'notANumber' });
  });
});

describe('a list in one cell', () => {
  const { days, frosts, numbers, texts } = parameters;
  test('is read as a range of its items, a blank one as a blank cell', () => {
    expect(numbers('lows').read('82; 79;;85.5')).toEqual([82, 79, null, 85.5]);
    expect(numbers('lows').read([['82;79']])).toEqual([82, 79]);
    expect(texts('crops').read('melon ; gourd')).toEqual(['melon', 'gourd']);
    expect(frosts('last_dates').read('2026-05-02; none;2027-05-03')).toEqual(
      frosts('last_dates').read([['2026-05-02'], ['none'], ['2027-05-03']]),
    );
    expect(days('dates').read('2026-05-02;2026-05-03')).toEqual(
      days('dates').read([['2026-05-02'], ['2026-05-03']]),
    );
  });

  test('what is wrong in it is told by its place', () => {
    expect(refusalOf(() => numbers('lows').read('82;warm'))).toMatchObject({ code: 'notANumber', row: 2 });
  });

  test('beside other cells such a text is one cell', () => {
    expect(texts('crops').read([['melon;gourd'], ['pumpkin']])).toEqual(['melon;gourd', 'pumpkin']);
  });
});

describe('an answer', () => {
  const answer = parameters.answer('answer');

  test.each([
    [133, 133],
    [0, 0],
    [' 133 ', 133],
    ['80%', 0.8],
    ['1e3', 1000],
    // 46023 is 2026-01-01, plus 135 days.
    ['2026-05-16', 46_158],
    ['2026-02-30', '2026-02-30'],
    [' fill gaps ', 'fill gaps'],
    [true, true],
    [[[5]], 5],
  ])('%j is read as %j', (raw, read) => {
    expect(answer.read(raw)).toBe(read);
  });

  test('nothing, an error and a range are refused', () => {
    for (const nothing of [null, undefined, '', '  ']) {
      expect(refusalOf(() => answer.read(nothing))).toEqual({ code: 'missing', name: 'answer' });
    }
    expect(refusalOf(() => answer.read({ error: '#REF!' }))).toMatchObject({ code: 'errorInside' });
    expect(refusalOf(() => answer.read([[1, 2]]))).toMatchObject({ code: 'oneCellWanted' });
  });
});

describe('an argument that is passed on', () => {
  const passed = parameters.passedOn('argument1');

  test('comes as it is: a value, a text, a range', () => {
    expect(passed.read(0)).toBe(0);
    expect(passed.read([[36]])).toBe(36);
    expect(passed.read('85%')).toBe('85%');
    expect(passed.read([[1], [2]])).toEqual([[1], [2]]);
  });

  test('nothing is undefined, an error is refused', () => {
    for (const nothing of [null, undefined, '', [[null]], [['']]]) {
      expect(passed.read(nothing)).toBeUndefined();
    }
    expect(refusalOf(() => passed.read([[{ error: '#REF!' }]]))).toMatchObject({
      code: 'errorInside',
      name: 'argument1',
    });
  });
});
