/** Every function as Excel calls it: through the vendor's runtime, in the bundle that ships. */
import fc from 'fast-check';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { functions } from '../../src/functions';
import { errorValue, eachCell, flags, richError, richValue } from './arguments';
import { normalCalls } from './normalCalls';
import { openRuntime, type Delivered, type Invocation, type Runtime } from './openRuntime';

let runtime: Runtime;
beforeAll(() => {
  runtime = openRuntime(inject('builtAddin'), () => false);
});

interface Case extends Invocation {
  readonly about: string;
}
type Expected = (delivered: Delivered, one: Case) => void;

/** The same call with each argument in turn put otherwise; `otherwise` gives undefined to leave one as it is. */
function variants(
  what: string,
  otherwise: (argument: unknown, parameter: { readonly optional: boolean }) => unknown,
  flag = 0,
): Case[] {
  const cases: Case[] = [];
  for (const [id, { args }] of Object.entries(normalCalls)) {
    for (const [i, parameter] of (functions.get(id)?.parameters ?? []).entries()) {
      const put = otherwise(args[i], parameter);
      if (put === undefined) continue;
      const changed = args.map((argument, j) => (j === i ? put : argument));
      cases.push({ id, args: changed, flags: flag, about: `${id}: ${parameter.name} ${what}` });
    }
  }
  return cases;
}

async function each(cases: readonly Case[], expected: Expected): Promise<void> {
  expect(cases.length).toBeGreaterThan(0);
  const delivered = await runtime.call(cases);
  cases.forEach((one, i) => {
    const result = delivered[i] as Delivered;
    if ('code' in result) expectAdvice(result, one.about);
    // NaN and Infinity go over the bridge as null, and would stand in the cell as 0.
    else expect([result.value].flat(2), one.about).not.toContain(null);
    expected(result, one);
  });
}

/** 1 is #N/A, 7 #VALUE!, both with advice; 6 #NUM!, which shows none. 2 would be an error of no kind. */
function expectAdvice({ code, message }: { code: number; message: unknown }, about: string): void {
  expect([1, 6, 7], `${about} gave ${String(message)}`).toContain(code);
  if (code === 6) expect(message, about).toBe('');
  else expect(message, about).toMatch(/^[A-Z"].{10,}[.)]$/);
}

const givesTheSame: Expected = (delivered, { id, about }) =>
  expect(delivered, about).toEqual({ value: normalCalls[id]?.gives });

/** What the sources say of the same arguments. */
const givesWhatSourcesGive: Expected = (delivered, { id, args, about }) => {
  const outcome = functions.get(id)?.run(args);
  if (outcome === undefined) throw new Error(`no function ${id}`);
  const codes = { '#N/A': 1, '#VALUE!': 7, '#NUM!': 6 };
  expect(delivered, about).toEqual(
    'error' in outcome
      ? { code: codes[outcome.error], message: outcome.error === '#NUM!' ? '' : outcome.message }
      : { value: outcome.value },
  );
};

const saysOf =
  (words: RegExp): Expected =>
  (delivered, { about }) =>
    expect(delivered, about).toMatchObject({ code: 7, message: expect.stringMatching(words) });

const isRange = (argument: unknown): boolean => Array.isArray(argument);

describe('every function', () => {
  test('is registered, and has a normal call here', () => {
    expect([...runtime.registered].sort()).toEqual([...functions.keys()].sort());
    expect(Object.keys(normalCalls).sort()).toEqual([...functions.keys()].sort());
    for (const [id, { parameters }] of functions)
      expect(normalCalls[id]?.args.length, `${id}: give every argument`).toBe(parameters.length);
  });

  test('gives its result, its name in any letters', async () => {
    const calls = Object.entries(normalCalls).map(([id, { args }]) => ({ id, args, about: id }));
    await each(calls, givesTheSame);
    const small = await runtime.call([{ id: 'plants.density', args: [2, 36, null] }]);
    expect(small).toEqual([{ value: 7260 }]);
  });

  test('takes the default for each argument left out', async () => {
    const leftOut = variants('left out', (_, { optional }) => (optional ? null : undefined));
    await each(leftOut, givesWhatSourcesGive);
    const allLeftOut = Object.entries(normalCalls).map(([id, { args }]) => ({
      id,
      args: args.map((argument, i) =>
        functions.get(id)?.parameters[i]?.optional === true ? null : argument,
      ),
      about: `${id} with all left out`,
    }));
    await each(allLeftOut, (delivered, one) => {
      // The arguments of CHECK.SLIP are those of another function, which may want them.
      if (one.id !== 'CHECK.SLIP') expect('value' in delivered, one.about).toBe(true);
      givesWhatSourcesGive(delivered, one);
    });
  });

  test.each([
    ['empty (null)', null],
    ['empty (0)', 0],
    ['empty ("")', ''],
    ['an empty range of one (null)', [[null]]],
    ['an empty range of one (0)', [[0]]],
  ])('says what is wrong with an argument %s, or does without', async (what, empty) => {
    await each(
      variants(what, () => empty),
      givesWhatSourcesGive,
    );
  });

  test('reads a number set as text', async () => {
    const isDay = (argument: number): boolean => argument > 40000;
    const asText = variants('as text', (argument) =>
      typeof argument === 'number' && !isDay(argument) ? String(argument) : undefined,
    );
    await each(asText, givesTheSame);
  });

  test('reads a range of one cell as that cell', async () => {
    const cells = variants('in a range', (argument) => (isRange(argument) ? undefined : [[argument]]));
    await each(cells, givesTheSame);
  });

  test('reads rich values, alone and in ranges', async () => {
    const rich = (cell: unknown): unknown => richValue(cell, typeof cell === 'number' ? '0.00' : undefined);
    await each(
      variants('rich', (argument) => eachCell(argument, rich), flags.richValues),
      givesTheSame,
    );
    const inRange = (argument: unknown): unknown => (isRange(argument) ? undefined : [[rich(argument)]]);
    await each(variants('rich, in a range', inRange, flags.richValues), givesTheSame);
  });

  test('names the argument that is an error itself', async () => {
    const single = (error: unknown) => (argument: unknown) => (isRange(argument) ? undefined : error);
    const said = saysOf(/itself an error \(#DIV\/0!\)/);
    await each(variants('an error', single(errorValue('#DIV/0!')), flags.errors), said);
    await each(variants('an error', single([[errorValue('#DIV/0!')]]), flags.errors), said);
    await each(variants('a rich error', single(richError('#DIV/0!')), flags.richValues), said);
  });

  test('takes a range only where it says so', async () => {
    const wide = variants('a range', (argument) => (isRange(argument) ? undefined : [[argument, argument]]));
    await each(wide, saysOf(/range of several cells/));
  });

  test('takes any value whatever without an error of no kind', async () => {
    const anyCell = fc.oneof(
      fc.double(),
      fc.constantFrom(-1, 0, 0.5, 1, 1e308, 46144, 'us', 'metric', 'pumpkin', '85%', '', null, true),
      fc.string({ maxLength: 8 }),
    );
    const anyArgument = fc.oneof(
      anyCell,
      fc.array(fc.array(anyCell, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 3 }),
    );
    // JSON carries no NaN and no Infinity: no more does the bridge.
    const wire = (argument: unknown): unknown => JSON.parse(JSON.stringify(argument));
    const seed = 20261125;
    const cases = [...functions].flatMap(([id, { parameters }]) =>
      fc
        .sample(fc.tuple(...parameters.map(() => anyArgument.map(wire))), { numRuns: 60, seed })
        .map((args) => ({ id, args, about: `${id}(${JSON.stringify(args)}), seed ${seed}` })),
    );
    await each(cases, givesWhatSourcesGive);
  });
});
