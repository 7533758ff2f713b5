import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { explain } from '../../src/functions/explain';
import { isolate } from '../../src/functions/flower';
import { english } from '../../src/texts/english';

const run = (id: string, ...args: unknown[]) => {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`${id} is not registered`);
  return definition.run(args);
};
const message = (id: string, ...args: unknown[]): string => {
  const outcome = run(id, ...args);
  if (!('error' in outcome)) throw new Error(`${id} gave ${String(outcome.value)}`);
  return `${outcome.error} ${outcome.message}`;
};
const empties = [null, undefined, ''];

describe('FLOWER.FEMALESHARE', () => {
  test('10 % pollenizers at half female: 0.95, at 1 in 16: 0.90625 (hand computed)', () => {
    for (const empty of empties) {
      expect(run('FLOWER.FEMALESHARE', 0.1, 0.5, empty)).toEqual({
        value: expect.closeTo(0.95, 12) as unknown,
      });
    }
    expect(run('FLOWER.FEMALESHARE', '10%', ' 0.0625 ', [[1]])).toEqual({
      value: expect.closeTo(0.90625, 12) as unknown,
    });
  });

  test('what is wrong is said with what to do', () => {
    expect(message('FLOWER.FEMALESHARE', 10, 0.5)).toBe(
      '#VALUE! The share of pollenizers is 10: write 10 percent as 10% or 0.1.',
    );
    expect(message('FLOWER.FEMALESHARE', 0.1, 'half')).toMatch(/^#VALUE! .*"half".*Type digits/);
    expect(message('FLOWER.FEMALESHARE', '', 0.5)).toMatch(/^#VALUE! .*Fill it in/);
    expect(message('FLOWER.FEMALESHARE', { error: '#DIV/0!' }, 0.5)).toMatch(/#DIV\/0!.*Mend that cell/);
    expect(message('FLOWER.FEMALESHARE', -0.1, 0.5)).toMatch(/must be at least 0/);
  });
});

describe('FLOWER.MALESPERFEMALE', () => {
  test('15 males for each female at 1 in 16 (hand computed); text and matrices of one cell count', () => {
    expect(run('FLOWER.MALESPERFEMALE', 0.0625)).toEqual({ value: 15 });
    expect(run('FLOWER.MALESPERFEMALE', '50%')).toEqual({ value: 1 });
    expect(run('FLOWER.MALESPERFEMALE', [[1]])).toEqual({ value: 0 });
  });

  test('what is wrong is said with what to do', () => {
    expect(message('FLOWER.MALESPERFEMALE', 0)).toBe(
      '#VALUE! The share of female flowers is 0. It must be above 0 and at most 1.',
    );
    expect(message('FLOWER.MALESPERFEMALE', 50)).toMatch(/write 50 percent as 50%/);
    expect(message('FLOWER.MALESPERFEMALE', null)).toMatch(/Fill it in/);
    expect(message('FLOWER.MALESPERFEMALE', { error: '#REF!' })).toMatch(/#REF!.*Mend that cell/);
  });
});

describe('FLOWER.SHARE', () => {
  test('1 to 3 is a quarter (hand computed); text and matrices of one cell count', () => {
    expect(run('FLOWER.SHARE', 1, 3)).toEqual({ value: 0.25 });
    expect(run('FLOWER.SHARE', '1', [[4]])).toEqual({ value: 0.2 });
  });

  test('what is wrong is said with what to do', () => {
    expect(message('FLOWER.SHARE', 0, 0)).toBe(
      '#VALUE! The number of other plants is 0. It must be above 0 plants.',
    );
    expect(message('FLOWER.SHARE', -1, 3)).toMatch(/number of pollenizers is -1\. It must be at least 0/);
    expect(message('FLOWER.SHARE', '1:3', null)).toMatch(/"1:3"/);
    expect(message('FLOWER.SHARE', 1, null)).toMatch(/Fill it in/);
    expect(message('FLOWER.SHARE', 1, { error: '#N/A' })).toMatch(/#N\/A/);
  });
});

describe('FLOWER.POLLENIZERS', () => {
  test('118 dedicated, 167 between (hand computed: 117.65, 166.67); defaults: no losses, dedicated', () => {
    for (const empty of empties) {
      expect(run('FLOWER.POLLENIZERS', 400, 0.25, 0.2, empty)).toEqual({ value: 118 });
      expect(run('FLOWER.POLLENIZERS', 400, 0.25, empty, empty)).toEqual({ value: 100 });
    }
    expect(run('FLOWER.POLLENIZERS', '400', '25%', 0.2, 'Between')).toEqual({ value: 167 });
    expect(run('FLOWER.POLLENIZERS', [[400]], [[0.25]], [[0.2]], [['dedicated']])).toEqual({ value: 118 });
  });

  test('what is wrong is said with what to do', () => {
    expect(message('FLOWER.POLLENIZERS', 400, 25)).toMatch(/write 25 percent as 25%/);
    expect(message('FLOWER.POLLENIZERS', 400.5, 0.25)).toMatch(/Give a whole number/);
    expect(message('FLOWER.POLLENIZERS', 400, 1, 0, 'between')).toBe(
      '#VALUE! The share of pollenizers is 1. It must be at least 0 and below 1.',
    );
    expect(message('FLOWER.POLLENIZERS', 400, 0.25, 0, 'scattered')).toMatch(
      /Choose one of: dedicated, between/,
    );
    expect(message('FLOWER.POLLENIZERS', 'many', 0.25)).toMatch(/not a number/);
    expect(message('FLOWER.POLLENIZERS', { error: '#VALUE!' }, 0.25)).toMatch(/Mend that cell/);
  });
});

describe('FLOWER.ISOLATE', () => {
  const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);

  test('a verdict is "clear" or says what to do', () => {
    const crops = column('English cucumber', 'pickling cucumber', 'seedless watermelon');
    const types = column('', null, '');
    expect(run('FLOWER.ISOLATE', 'English cucumber', '', crops, types)).toEqual({
      value: expect.stringMatching(/^Keep apart: .*Screen it, or move them/) as unknown,
    });
    expect(run('FLOWER.ISOLATE', 'seedless watermelon', null, crops, types)).toEqual({
      value: expect.stringMatching(/^Sets no fruit .*plant pollenizers among it/) as unknown,
    });
    expect(run('FLOWER.ISOLATE', 'pickling cucumber', undefined, crops, types)).toEqual({ value: 'clear' });
    for (const yes of [true, 'yes', 1]) {
      expect(run('FLOWER.ISOLATE', 'English cucumber', '', crops, types, yes)).toEqual({ value: 'clear' });
    }
    for (const no of [false, 'no', 0, '', null, undefined]) {
      expect(run('FLOWER.ISOLATE', 'English cucumber', '', crops, types, no)).not.toEqual({ value: 'clear' });
    }
  });

  test('blank, unknown and failed cells of the ranges are passed over, and both ranges stay in step', () => {
    const crops = column('English cucumber', null, { error: '#N/A' }, 'no such crop', 'cucumber');
    const types = column('parthenocarpic', 'monoecious', 'monoecious', 'monoecious', 'parthenocarpic');
    expect(run('FLOWER.ISOLATE', 'English cucumber', 'parthenocarpic', crops, types)).toEqual({
      value: english.verdicts['pollen next door'],
    });
  });

  test('a single cell is a range of one', () => {
    expect(run('FLOWER.ISOLATE', 'pumpkin', '', 'pumpkin', '')).toEqual({ value: 'clear' });
    expect(run('FLOWER.ISOLATE', [['pumpkin']], [['']], [['pumpkin']], [['']])).toEqual({ value: 'clear' });
  });

  test('what is wrong is said with what to do', () => {
    const one = column('cucumber');
    expect(message('FLOWER.ISOLATE', 'pumkin', '', one, one)).toMatch(/^#N\/A .*Near it: .*pumpkin/);
    expect(message('FLOWER.ISOLATE', 'cucumber', 'female', one, one)).toMatch(
      /Choose one of: monoecious, gynoecious/,
    );
    expect(message('FLOWER.ISOLATE', 'cucumber', '', one, column('', ''))).toMatch(
      /The range of all crops has 1 cell and.*Give ranges of equal length/,
    );
    expect(message('FLOWER.ISOLATE', 'cucumber', '', one, column(''), 'maybe')).toMatch(/Answer yes or no/);
    expect(message('FLOWER.ISOLATE', null, '', one, column(''))).toMatch(/Fill it in/);
    expect(message('FLOWER.ISOLATE', 'cucumber', { error: '#REF!' }, one, column(''))).toMatch(/#REF!/);
  });

  test('the working can be read', () => {
    const lines = explain(isolate, ['English cucumber', '', column('cucumber'), column('')]);
    expect(lines.map(({ kind }) => kind)).toEqual(['assumption', 'step', 'source', 'remark', 'step']);
    expect(lines.map(({ title }) => title).join(' ')).not.toMatch(/[{}_]/);
  });

  test('every sentence that is not clear tells what to do, and "clear" is one word', () => {
    const { clear, ...others } = english.verdicts;
    expect(clear).toBe('clear');
    for (const sentence of Object.values(others)) expect(sentence).toMatch(/Screen|plant pollenizers/);
  });
});

test('the cautions defer to the label, a tested recipe and the extension office, and give no rate and no time', () => {
  const { bitterFruit, treatedSeed, pesticides, canning } = english.cautions;
  expect(bitterFruit).toMatch(/Do not eat/);
  expect(treatedSeed).toMatch(/not for food, feed or oil.*label/);
  expect(pesticides).toMatch(/label is the law.*extension office.*bees/);
  expect(canning).toMatch(/tested recipe/);
  expect(Object.values(english.cautions).join(' ')).not.toMatch(/\d/);
});
