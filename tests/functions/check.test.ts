/** CHECK: what is said of an answer, and the working of any other function as rows. */
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { explainable } from '../../src/functions/explainable';
import { normalCalls } from '../functionsRuntime/normalCalls';
import { leftOut, run } from './run';

type Row = [string, string | number, string, string, string, string];
const working = (...args: unknown[]): Row[] => run('CHECK.WORKING', ...args) as Row[];

describe('CHECK.ANSWER', () => {
  // Differences and shares are hand computed.
  test.each([
    [133, 133, 'right'],
    ['133', 133, 'right'],
    [145, 133, 'too high by 12 (9 %)'],
    [125, 151, 'too low by 26 (17 %)'],
    [300, 100, 'too high by 200 (200 %)'],
    [0.18, 0.1825, 'too low by 0.0025 (1.4 %)'],
    ['80%', 0.8, 'right'],
    [0.8, '80%', 'right'],
    [2, 0, 'too high by 2'],
    [46_160, 46_158, 'too high by 2 (of dates: 2 days late)'],
    ['2026-05-16', 46_158, 'right'],
    [46_157, '2026-05-16', 'too low by 1 (of dates: 1 day early)'],
    ['16 May', 46_158, 'not right: a number is wanted, or a date such as 2026-05-16'],
    [46_158.25, 46_158, 'too high by 0.25'],
    [1_000_001, 1_000_000, 'too high by 1'],
    ['Fill gaps ', 'fill gaps', 'right'],
    ['keep', 'fill gaps', 'not right: another word is wanted'],
    ['many', 133, 'not right: a number is wanted, or a date such as 2026-05-16'],
    [' ', 133, 'blank: no answer yet'],
    ['\u00a0 ', 'fill gaps', 'blank: no answer yet'],
    // What a calculator writes.
    ['1e3', 1000, 'right'],
    [133, 'pumpkin', 'not right: a word is wanted'],
    [true, true, 'right'],
    [0, 125, 'too low by 125 (100 %)'],
  ])('%s for %s: %s', (answer, correct, said) => {
    expect(run('CHECK.ANSWER', answer, correct)).toBe(said);
    expect(run('CHECK.ANSWER', [[answer]], { type: 'Double', basicValue: correct })).toBe(said);
  });

  test('a tolerance holds for whole numbers too', () => {
    for (const nothing of leftOut) {
      expect(run('CHECK.ANSWER', 131, 130, nothing)).toBe('too high by 1 (0.77 %)');
    }
    expect(run('CHECK.ANSWER', 131, 130, 0.01)).toBe('right');
    expect(run('CHECK.ANSWER', 131, 130, '1%')).toBe('right');
    expect(run('CHECK.ANSWER', 0.1826, 0.1825, 0)).toBe('too high by 0.0001');
  });

  test('refusals say what to do', () => {
    expect(run('CHECK.ANSWER', '', 133)).toBe('#VALUE! The answer is missing. Fill it in.');
    expect(run('CHECK.ANSWER', 133, ' ')).toBe('#VALUE! The right answer is missing. Fill it in.');
    expect(run('CHECK.ANSWER', 133)).toBe('#VALUE! The right answer is missing. Fill it in.');
    expect(run('CHECK.ANSWER', 133, 133, 5)).toMatch(/write 5 percent as 5%/);
    expect(run('CHECK.ANSWER', [[1, 2]], 133)).toMatch(/Give one cell/);
    expect(run('CHECK.ANSWER', 133, { error: '#VALUE!' })).toMatch(/right answer is itself an error/);
  });
});

describe('CHECK.WORKING', () => {
  test('a row a step: quantity, value, unit, formula, numbers put in, rounding', () => {
    // 0.8 x 0.9 = 0.72; 100 / 0.72 = 138.9 (hand computed).
    expect(working('SEED.NEEDED', 100, 0.8, 0.9).slice(0, 2)).toEqual([
      [
        'share of seeds that stand',
        0.72,
        '',
        'germination × field emergence',
        'germination 0.8, field emergence 0.9',
        '',
      ],
      [
        'seeds to sow, on average',
        139,
        'seeds',
        'plants ÷ share of seeds that stand',
        'number of plants 100, share of seeds that stand 0.72',
        'rounded up',
      ],
    ]);
  });

  test('what was assumed has its ground, a source its citation, a note its sentence', () => {
    const rows = working('DATE.SETOUT', '2026-05-02');
    expect(rows[0]).toEqual([
      'assumed: number of days after the last frost',
      14,
      'days',
      '',
      '',
      'common practice, no source',
    ]);
    expect(rows[1]?.slice(0, 2)).toEqual(['setting out', '2026-05-16']);
    expect(rows[2]).toEqual(['source', '', '', '', '', expect.stringMatching(/^Cornell University/)]);
    expect(rows.at(-1)).toEqual(['note', '', '', '', '', expect.stringMatching(/^Soil decides/)]);
  });

  test('the name with its namespace or without, in any letters', () => {
    const rows = working('PLANTS.DENSITY', 2, 36);
    for (const name of ['plants.density', 'CUCURBIT.PLANTS.DENSITY', ' Cucurbit.Plants.Density ']) {
      expect(working(name, 2, 36), name).toEqual(rows);
    }
  });

  test('an argument left out stands as left out', () => {
    const assured = working('SEED.NEEDED', 100, 0.8, 1, 0.95);
    for (const nothing of [...leftOut, [[null]], [['']]]) {
      const rows = working('SEED.NEEDED', 100, 0.8, nothing, 0.95);
      expect(rows.find(([title]) => title === 'seeds to sow for the assurance')).toEqual(assured.at(-2));
      expect(rows).toContainEqual(['assumed: field emergence', 1, '', '', '', 'judgement']);
      expect(working('SEED.NEEDED', 100, 0.8, nothing, 0.95, nothing, nothing)).toEqual(rows);
    }
  });

  test('ranges reach a function that takes them', () => {
    const packs = [[100], [500], [1000]];
    const rows = working('SEED.PACKS', 1200, packs, [[3.5], [12], [20]]);
    expect(rows.map(([title, value]) => [title, value])).toEqual([
      ['cost of one size', 7],
      ['cost of one size', 20],
      ['cost of the order', 27],
      ['source', ''],
    ]);
  });

  test('what the function refuses is the last row, after the steps before it', () => {
    expect(working('SEED.NEEDED', 100, 85)).toEqual([
      ['note', '', '', '', '', expect.stringMatching(/write 85 percent as 85%/)],
    ]);
    const rows = working('DATE.LASTPICK', '2026-10-12', 21, '2026-10-10');
    expect(rows.map(([title]) => title)).toEqual(['end of the harvest', 'note']);
    expect(rows.at(-1)?.at(-1)).toMatch(/Sow earlier/);
  });

  test('the working of a check is that of the call it checks', () => {
    const call = ['SEED.NEEDED', 100, 0.8, null, 0.95];
    const entries = (id: string, ...args: unknown[]) => functions.get(id)?.explain(args).entries;
    const steps = entries('SEED.NEEDED', ...call.slice(1));
    expect(steps?.length).toBeGreaterThan(2);
    expect(entries('CHECK.SLIP', 125, ...call)).toEqual(steps);
    expect(entries('CHECK.WORKING', ...call)).toEqual(steps);
  });

  test('a function without steps says so', () => {
    expect(working('CROP.LIST')).toEqual([
      ['note', '', '', '', '', 'This is looked up, not calculated: there are no steps.'],
      ['source', '', '', '', '', 'list of this project'],
    ]);
  });

  test('an unknown name, CHECK itself, too many arguments and errors are refused', () => {
    expect(run('CHECK.WORKING', 'SEED.NEDED', 100)).toBe(
      '#N/A There is no function called "SEED.NEDED" whose steps can be shown. Near it: SEED.NEEDED.',
    );
    expect(run('CHECK.WORKING', 'WEATHER', 100)).toBe(
      '#N/A There is no function called "WEATHER" whose steps can be shown. Type a name such as SEED.NEEDED.',
    );
    for (const id of ['CHECK.ANSWER', 'CUCURBIT.CHECK.WORKING']) {
      expect(run('CHECK.WORKING', id, 1, 1)).toMatch(/^#N\/A There is no function called "C/);
    }
    expect(run('CHECK.WORKING', 'DATE.SETOUT', '2026-05-02', 14, 7)).toBe(
      '#VALUE! DATE.SETOUT takes 2 arguments. Leave the others out.',
    );
    expect(run('CHECK.WORKING', null, 1)).toBe('#VALUE! The name of the function is missing. Fill it in.');
    expect(run('CHECK.WORKING', 'SEED.NEEDED', { error: '#REF!' })).toMatch(/Mend that cell first/);
  });

  test('every function with steps is shown, whole, with as many arguments as it takes', () => {
    expect([...explainable.keys()]).toEqual([...functions.keys()].filter((id) => !id.startsWith('CHECK.')));
    const room = (functions.get('CHECK.WORKING')?.parameters.length ?? 0) - 1;
    for (const [id, { parameters }] of explainable) {
      expect(parameters.length, id).toBeLessThanOrEqual(room);
      const rows = working(id);
      expect(rows.length, id).toBeGreaterThan(0);
      for (const row of rows) expect(row, id).toHaveLength(6);
    }
  });

  test('the last number of a working is the result of the function, in whole sentences', () => {
    let numbers = 0;
    for (const [id, { args }] of Object.entries(normalCalls)) {
      if (!explainable.has(id)) continue;
      const rows = working(id, ...args);
      expect(JSON.stringify(rows), id).not.toMatch(/[{}_]|undefined/);
      const result = run(id, ...args);
      if (typeof result !== 'number') continue;
      numbers += 1;
      // The working says six digits.
      expect(rows.filter(([, value]) => value !== '').at(-1)?.[1], id).toBe(Number(result.toPrecision(6)));
    }
    expect(numbers).toBeGreaterThan(25);
  });
});
