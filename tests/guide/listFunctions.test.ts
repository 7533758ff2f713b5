/** What is said of the functions in another language: nothing missing, nothing of a function that is not there. */
import { beforeAll, describe, expect, test } from 'vitest';
import { describeFunctions } from '../../src/entries/describeFunctions.cjs';
import { functions } from '../../src/functions';
import { inUnits } from '../../src/taskpane/inUnits';
import { functionWords } from '../../src/texts/english/functionWords';
import { functionHelp as spanish } from '../../src/texts/spanish/functionHelp';
import type { DescribedFunction } from '../../src/workbook/functionHelp';
import { wrapperFiles } from '../functions/describedFunctions';

let described: readonly DescribedFunction[] = [];
beforeAll(async () => {
  described = await describeFunctions(wrapperFiles, 'README.md');
}, 60_000);

interface Asked {
  readonly at: string;
  readonly name: string;
  readonly inEnglish: string;
  /** Said for this function alone; else for the argument of that name. */
  readonly own: string | undefined;
  readonly inSpanish: string | undefined;
}
const asked = (): readonly Asked[] =>
  described.flatMap(({ id, parameters }) =>
    parameters.map(({ name, description }) => {
      const own = spanish.functions[id]?.parameters?.[name];
      const inSpanish = own ?? spanish.parameters[name];
      return { at: `${id} ${name}`, name, inEnglish: description, own, inSpanish };
    }),
  );
/** Options, names of functions and figures stand in a sentence in the same letters in every language. */
const kept = (sentence: string): readonly string[] =>
  [...new Set(sentence.match(/\b[A-Z]{2,}\.[A-Z]+\b|\d[\d,.]*\d|\d|\bT?RUE\b|\bFALSE\b|[<>]/g) ?? [])].sort();
const options = (sentence: string): readonly string[] => sentence.match(/"[^"]+"/g) ?? [];

describe('Spanish', () => {
  test('says what each function is for, and each task', () => {
    expect(Object.keys(spanish.functions).sort()).toEqual([...functions.keys()].sort());
    expect(Object.keys(spanish.tasks)).toEqual([...new Set(described.map(({ family }) => family))]);
  });

  test('says what each argument is', () => {
    expect(
      asked()
        .filter(({ inSpanish }) => inSpanish === undefined)
        .map(({ at }) => at),
    ).toEqual([]);
    for (const { id, parameters } of described) {
      const names = parameters.map(({ name }) => name);
      for (const name of Object.keys(spanish.functions[id]?.parameters ?? {}))
        expect(names, id).toContain(name);
    }
    const shared = new Set(
      asked()
        .filter(({ own }) => own === undefined)
        .map(({ name }) => name),
    );
    expect(Object.keys(spanish.parameters).sort()).toEqual([...shared].sort());
  });

  test('says the same of arguments that are the same in English, and of others another thing', () => {
    const pairs = new Map<string, Set<string>>();
    for (const { inEnglish, inSpanish = '' } of asked())
      pairs.set(inEnglish, (pairs.get(inEnglish) ?? new Set()).add(inSpanish));
    expect([...pairs].filter(([, said]) => said.size > 1)).toEqual([]);
    const shared = asked().filter(({ own }) => own === undefined);
    for (const name of Object.keys(spanish.parameters)) {
      const meant = new Set(shared.filter((one) => one.name === name).map(({ inEnglish }) => inEnglish));
      expect([...meant], name).toHaveLength(1);
    }
  });

  test('keeps figures and the names of functions, and gives both units where English does', () => {
    const pairs = [
      ...asked().map(({ at, inEnglish, inSpanish = '' }) => [at, inEnglish, inSpanish] as const),
      ...described.map(
        ({ id, description }) => [id, description, spanish.functions[id]?.description ?? ''] as const,
      ),
    ];
    for (const [at, inEnglish, inSpanish] of pairs) {
      expect(kept(inSpanish), at).toEqual(kept(inEnglish));
      // Examples of crops are in the grower's own words.
      if (!/ crop(_[ab])?$/.test(at))
        expect(options(inSpanish), at).toEqual(expect.arrayContaining([...options(inEnglish)]));
      for (const system of ['us', 'metric'] as const)
        expect(inUnits(inSpanish, system) !== inSpanish, at).toBe(inUnits(inEnglish, system) !== inEnglish);
      expect(inSpanish, at).not.toBe(inEnglish);
      expect(inSpanish.trim(), at).not.toBe('');
    }
  });
});

test('words of a search belong to functions that are there', () => {
  const idle = Object.keys(functionWords).filter(
    (start) => ![...functions.keys()].some((id) => id.startsWith(start)),
  );
  expect(idle).toEqual([]);
});
