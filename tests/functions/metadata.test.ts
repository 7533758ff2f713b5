/** Each function has its definition, its wrapper and its help. A forgotten step is named by the failing test. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { functions } from '../../src/functions';
import { brokenSignatures, type Signatures } from './brokenSignatures';
import { describeFunctions, signatureOf, wrapperFiles, type DescribedFunction } from './describedFunctions';
import keptSignatures from './keptSignatures.json';
import { lintFunctions } from './lintFunctions';

let described: readonly DescribedFunction[] = [];
beforeAll(async () => {
  described = await describeFunctions();
});

describe('functions.json', () => {
  it('has a wrapper for every definition of functions/index.ts, and no other', () => {
    expect(described.map(({ id }) => id).sort()).toEqual([...functions.keys()].sort());
  });

  it('is built from every wrapper file: entries/functions.ts imports each', () => {
    const entry = readFileSync('src/entries/functions.ts', 'utf8');
    const imported = [...entry.matchAll(/^import '\.\.\/(functions\/\w+)'/gm)].map(
      ([, path]) => `src/${path}.ts`,
    );
    expect(imported.sort()).toEqual([...wrapperFiles].sort());
  });

  it('names each parameter, in order and optional or not, as the definition reads it', () => {
    for (const one of described) {
      const defined = functions.get(one.id)?.parameters;
      expect(signatureOf(one), one.id).toEqual(
        defined?.map(({ name, optional }) => `${name}${optional ? '?' : ''}`),
      );
    }
  });

  it('has legal names and short texts', () => {
    expect(lintFunctions(described)).toEqual([]);
  });

  it('keeps what workbooks rely on', () => {
    const now = Object.fromEntries(described.map((one) => [one.id, signatureOf(one)]));
    expect(brokenSignatures(keptSignatures, now)).toEqual([]);
  });
});

describe('the lint of names and texts', () => {
  const good: DescribedFunction = {
    id: 'SOIL.WARMTH',
    name: 'SOIL.WARMTH',
    description: 'Warmth of the soil at a depth.',
    parameters: [
      { name: 'depth', description: 'Depth in inches' },
      { name: 'units', description: '"us" or "metric"', optional: true },
    ],
  };
  const named = (id: string): DescribedFunction => ({ ...good, id, name: id });

  test('lets a good one pass', () => expect(lintFunctions([good])).toEqual([]));

  test.each<[string, readonly DescribedFunction[], RegExp]>([
    ['two of one id', [good, good], /there are two/],
    ['a space', [named('SOIL WARMTH')], /capital letters/],
    ['small letters', [named('Soil.Warmth')], /capital letters/],
    ['a dot at the end', [named('SOIL.')], /capital letters/],
    ['two characters', [named('SW')], /3 to 128/],
    ['129 characters', [named('S'.repeat(129))], /3 to 128/],
    ['a cell', [named('ROW1')], /reads like a cell/],
    ['the last cell', [named('XFD1048576')], /reads like a cell/],
    ['a cell by row and column', [named('R1C1')], /reads like a cell/],
    ['a function of Excel', [named('SUMIFS')], /of Excel/],
    ['a function of Excel with a dot', [named('NORM.DIST')], /of Excel/],
    ['a command of macro sheets', [named('RUN')], /of Excel/],
    ['another name than its id', [{ ...good, name: 'SOIL.HEAT' }], /its name is SOIL.HEAT/],
    ['no description', [{ ...good, description: ' ' }], /has no description/],
    ['a long description', [{ ...good, description: 'x'.repeat(121) }], /121 characters, at most 120/],
    ['two lines', [{ ...good, description: 'Warmth\nof the soil' }], /more than one line/],
    [
      'a long parameter text',
      [{ ...good, parameters: [{ name: 'depth', description: 'x'.repeat(101) }] }],
      /depth: 101 characters, at most 100/,
    ],
    [
      'an argument named by a number',
      [{ ...good, parameters: [{ name: '2nd', description: 'Second depth' }] }],
      /starts with a letter/,
    ],
    [
      'optional before required',
      [{ ...good, parameters: [...good.parameters].reverse() }],
      /required argument stands after an optional one/,
    ],
  ])('finds %s', (_, functionsAtFault, fault) => {
    expect(lintFunctions(functionsAtFault).join('\n')).toMatch(fault);
  });
});

describe('the guard of signatures', () => {
  const kept: Signatures = { 'SOIL.WARMTH': ['depth', 'day', 'units?'] };

  test.each<[string, Signatures, RegExp | null]>([
    ['nothing changed', kept, null],
    ['gone', {}, /SOIL.WARMTH is gone/],
    ['renamed', { 'SOIL.WARMTH': ['deep', 'day', 'units?'] }, /argument 1 was depth and is deep/],
    ['in another order', { 'SOIL.WARMTH': ['day', 'depth', 'units?'] }, /argument 2 was day and is depth/],
    ['one fewer', { 'SOIL.WARMTH': ['depth', 'day'] }, /argument 3 was units\? and is gone/],
    ['wanted now', { 'SOIL.WARMTH': ['depth', 'day', 'units'] }, /argument 3 was units\? and is units/],
    ['one more, wanted', { 'SOIL.WARMTH': ['depth', 'day', 'units?', 'hour'] }, /hour must be optional/],
    ['one more', { 'SOIL.WARMTH': ['depth', 'day', 'units?', 'hour?'] }, /has a new argument: put into/],
    ['a new function', { ...kept, 'SOIL.WATER': ['depth'] }, /add to .*"SOIL.WATER": \["depth"\]/],
  ])('%s', (_, now, fault) => {
    const faults = brokenSignatures(kept, now).join('\n');
    if (fault === null) expect(faults).toBe('');
    else expect(faults).toMatch(fault);
  });
});
