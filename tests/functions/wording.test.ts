/** Sentences that read right when a number in them is one. */
import { afterEach, describe, expect, test, vi } from 'vitest';
import { functions } from '../../src/functions';
import { sayProblem, sayQuantityName, sayUnit } from '../../src/functions/wording';
import type { Unit } from '../../src/calc/units/units';
import { english } from '../../src/texts/english';

const names = [
  ...new Set([...functions.values()].flatMap(({ parameters }) => parameters.map(({ name }) => name))),
];

describe('one of a thing', () => {
  test.each([
    [{ code: 'outOfRange', name: 'plants', value: 0, unit: 'plants', atLeast: 1 }, 'at least 1 plant.'],
    [{ code: 'outOfRange', name: 'days', value: 2, unit: 'days', atMost: 1 }, 'at most 1 day.'],
    [{ code: 'outOfRange', name: 'plants', value: 0, unit: 'plants', above: 0 }, 'above 0 plants.'],
    [{ code: 'outOfRange', name: 'width', value: 0, unit: 'ft', atLeast: 1 }, 'at least 1 ft.'],
    [{ code: 'tooFewTested', tested: 1, assurance: 0.9 }, 'A test of 1 seed says'],
    [{ code: 'tooFewTested', tested: 2, assurance: 0.9 }, 'A test of 2 seeds says'],
    [
      { code: 'unequalLists', name: 'all_crops', count: 1, otherName: 'all_flower_types', otherCount: 2 },
      'has 1 cell and the range of all flower types has 2.',
    ],
  ] as const)('%j', (problem, said) => {
    expect(sayProblem(problem)).toContain(said);
  });

  test('every unit that counts things has its word for one', () => {
    const counted = Object.entries(english.units).filter(([, word]) => /^[a-z]{3,}s$/.test(word));
    expect(counted.length).toBeGreaterThan(5);
    for (const [unit, word] of counted) expect(sayUnit(unit as Unit, 1)).toBe(word.slice(0, -1));
  });
});

describe('a share over 1', () => {
  test.each([
    [1.2, 'The germination is 1.2, which is 120%: give at most 100%.'],
    [2, 'The germination is 2, which is 200%: give at most 100%.'],
    [2.5, 'The germination is 2.5: write 2.5 percent as 2.5% or 0.025.'],
    [85, 'The germination is 85: write 85 percent as 85% or 0.85.'],
  ])('%d', (value, said) => {
    expect(sayProblem({ code: 'percentForShare', name: 'germination', value })).toBe(said);
  });
});

describe('"The … is" goes before every argument', () => {
  /** Nouns that end in s and are one. */
  const singular = ['basis'];
  test.each(names)('%s', (name) => {
    const [noun = ''] = sayQuantityName(name).split(/ (?:of|per|from|after|to|against) /);
    if (!singular.includes(noun)) expect(noun).not.toMatch(/s$/);
  });
});

describe('what is to be typed', () => {
  afterEach(() => {
    globalThis.cucurbitLanguage = undefined;
  });

  test('stands behind the word of the language, where that is another', async () => {
    const problem = { code: 'notAChoice', name: 'method', given: 'sembrado' } as const;
    expect(sayProblem({ ...problem, choices: ['seed', 'low'] })).toContain('Choose one of: seed, low.');
    globalThis.cucurbitLanguage = 'es';
    vi.resetModules();
    const { sayProblem: sayInSpanish } = await import('../../src/functions/wording');
    expect(sayInSpanish({ ...problem, choices: ['seed', 'transplant', 'low'] })).toContain(
      'Elija uno de estos: siembra directa (seed), trasplante (transplant), low.',
    );
  });
});
