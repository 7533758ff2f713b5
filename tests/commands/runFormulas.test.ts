/** The formula command over the real engine: values, and what it says of a formula that cannot be read. */
import { afterAll, describe, expect, test } from 'vitest';
import { nearestNames } from '../../src/calc/crops/nearestNames';
import { runFormulas } from '../../src/commands/runFormulas';
import { functions } from '../../src/functions';
import { openEvaluator } from '../../src/hosts/browser/openEvaluator';
import { functionNamespace } from '../../src/templates/sheets';

const evaluator = openEvaluator({
  functions: [...functions.values()],
  namespace: functionNamespace,
  firstSheet: 'Sheet1',
});
afterAll(() => evaluator.dispose());

async function said(...formulas: string[]): Promise<string[]> {
  const lines: string[] = [];
  await runFormulas(formulas, { ...evaluator, nearestNames, say: (line) => lines.push(line) });
  return lines;
}

describe('formula', () => {
  test('one JSON value a line, with or without the sign, and the message of a function as it is', async () => {
    const formulas = [
      '=CUCURBIT.PLANTS.DENSITY(2,36)',
      '1=1',
      '="a"',
      '={1,2;3,4}',
      '=CUCURBIT.PLANTS.DENSITY(2)',
      '=CUCURBIT.PLANTS.DENSITY(2,36,5,6)',
    ];
    expect(await said(...formulas)).toEqual([
      '7260',
      'true',
      '"a"',
      '[[1,2],[3,4]]',
      '{"error":"#VALUE!","message":"The plant spacing is missing. Fill it in."}',
      '{"error":"#VALUE!","message":"PLANTS.DENSITY takes 3 arguments. Leave the others out."}',
    ]);
  });

  test('every cell that a formula may name is empty: as if the argument were left out', async () => {
    const formulas = ['=CUCURBIT.SEED.NEEDED(100,0.8,A1)', '=CUCURBIT.HARVEST.YIELD(400,138,A1:A1)'];
    expect(await said(...formulas)).toEqual(['125', '552']);
  });

  test.each([
    [
      '=CUCURBIT.PLANT.DENSITY(2,36)',
      '#NAME?',
      'There is no function CUCURBIT.PLANT.DENSITY. Near it: CUCURBIT.PLANTS.DENSITY.',
    ],
    [
      '=PLANTS.DENSITY(2,36)',
      '#NAME?',
      'There is no function PLANTS.DENSITY. Near it: CUCURBIT.PLANTS.DENSITY.',
    ],
    ['=1+seeds.needed(3)', '#NAME?', 'There is no function seeds.needed. Near it: CUCURBIT.SEED.NEEDED.'],
    ['=SUMM(1)', '#NAME?', 'There is no function SUMM. Near it: SUM, '],
    ['=-XYZZYPLUGH(1)', '#NAME?', 'There is no function XYZZYPLUGH. README lists the functions by task.'],
    ['=CUCURBIT.PLANTS.DENSITY(2,36', '#VALUE!', 'The formula cannot be read: 1 closing bracket is missing.'],
    ['=SUM(1,MAX(2,3', '#VALUE!', 'The formula cannot be read: 2 closing brackets are missing.'],
    ['=1+*2', '#VALUE!', 'The formula cannot be read. Write it as =CUCURBIT.'],
    ['="abc', '#VALUE!', 'The formula cannot be read. Write it as =CUCURBIT.'],
    ['=CUCURBIT.PLANTS.DENSITY(2;36)', '#NAME?', 'The formula cannot be read at "2;36". Write it as'],
    ['=CUCURBIT.SEED.STANDARD(gourd)', '#NAME?', 'The formula cannot be read at "gourd". Write it as'],
  ])('%s: %s with advice', async (formula, error, message) => {
    const [line = ''] = await said(formula);
    expect(JSON.parse(line)).toEqual({ error, message: expect.stringContaining(message) });
  });

  test.each(['=1/0', '="a"+1', '=IF("SUMM(",NA(),TRUE)'])(
    '%s can be read: the engine has no word on it',
    async (formula) => {
      const [line = ''] = await said(formula);
      expect(JSON.parse(line)).toEqual({ error: expect.stringMatching(/^#/), message: null });
    },
  );

  test.each([[[]], [['--help']]])('%j: how it is used', async (formulas) => {
    expect(await said(...formulas)).toEqual([expect.stringMatching(/^Usage: npm run -s formula/)]);
  });
});
