/** What Excel calls: each wrapper hands its arguments to its definition in order, and throws the program's error. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { functions } from '../../src/functions';
import { english } from '../../src/texts/english';
import { steps } from '../../src/texts/english/workings';
import { wrapperFiles } from './describedFunctions';

/** The error class and codes that the program puts into the page. */
class ProgramError extends Error {
  constructor(
    readonly code: string,
    readonly said: string | undefined,
  ) {
    super(said);
  }
}
const program = {
  Error: ProgramError,
  ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A', invalidNumber: '#NUM!' },
};

const wrappers = new Map<string, (...args: unknown[]) => unknown>();

beforeAll(async () => {
  vi.stubGlobal('CustomFunctions', program);
  const { associate } = await generateCustomFunctionsMetadata(wrapperFiles);
  for (const { id, functionName, sourceFileName } of associate) {
    expect(wrappers.has(id), `${id} has two wrappers`).toBe(false);
    const module = (await import(join('../..', sourceFileName))) as Record<string, never>;
    wrappers.set(id, module[functionName] ?? (() => `${functionName} is not exported`));
  }
});

afterEach(() => vi.restoreAllMocks());

function thrown(call: () => unknown): unknown {
  try {
    return call();
  } catch (error) {
    return error;
  }
}

describe('wrappers', () => {
  test('each hands over all its arguments in order', () => {
    expect([...wrappers.keys()].sort()).toEqual([...functions.keys()].sort());
    for (const [id, definition] of functions) {
      const marks = definition.parameters.map((_, i) => `argument ${i}`);
      const run = vi.spyOn(definition, 'run').mockReturnValue({ value: id });
      expect(wrappers.get(id)?.(...marks), id).toBe(id);
      expect(run.mock.calls, id).toEqual([[marks]]);
    }
  });

  test('what a definition refuses, its wrapper throws with the advice', () => {
    for (const [id, definition] of functions) {
      if (definition.parameters.every(({ optional }) => optional)) continue;
      const refused = definition.run([]);
      expect(
        thrown(() => wrappers.get(id)?.()),
        id,
      ).toMatchObject({
        code: 'error' in refused ? refused.error : 'no refusal',
        said: 'error' in refused ? refused.message : '',
      });
    }
  });

  test('the three errors: a bad value and no such thing are told, a number too large is bare', () => {
    const call = (id: string, ...args: unknown[]): unknown => thrown(() => wrappers.get(id)?.(...args));
    expect(call('SEED.NEEDED', 100, 85)).toMatchObject({
      code: '#VALUE!',
      said: expect.stringMatching(/write 85 percent as 85%/),
    });
    expect(call('SEED.STANDARD', 'gourd')).toMatchObject({
      code: '#N/A',
      said: expect.stringMatching(/gourd/),
    });
    expect(call('SEED.WEIGHT', 1e300, 1e-300)).toMatchObject({ code: '#NUM!', said: undefined });
    expect(call('SEED.NEEDED', 100, 0.8)).toBe(125);
  });
});

describe('texts', () => {
  const files = readdirSync('src/calc', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ name, text: readFileSync(join('src/calc', name), 'utf8') }));
  const calc = files.map(({ text }) => text);
  const named = new Set([...Object.keys(english.quantities), ...Object.keys(steps)]);

  test('each number put into a step has a name in quantities, or is an argument', () => {
    const keys = calc.flatMap((text) =>
      [...text.matchAll(/\binputs(?:: | = )\{([^{}]*)\}/g)].flatMap(([, body = '']) =>
        body
          .split(',')
          .map((part) => part.split(':')[0]?.trim() ?? '')
          .filter((key) => /^\w+$/.test(key)),
      ),
    );
    expect(keys.length).toBeGreaterThan(40);
    // An argument whose name is plain words needs no other: "plant_spacing" is said "plant spacing".
    const nameless = keys.filter((key) => /[A-Z]/.test(key) && !named.has(key));
    expect(nameless, 'give each a name in texts/english quantities').toEqual([]);
  });

  test('each code that calc refuses with has its sentence', () => {
    const sentences = { record: english.record.doubts, rest: english.errors };
    const codesOf = (texts: readonly { text: string }[]): string[] =>
      texts.flatMap(({ text }) => [...text.matchAll(/\bcode: '(\w+)'/g)].map(([, code = '']) => code));
    const isOfRecord = ({ name }: { name: string }): boolean => /^record[\\/]/.test(name);
    const codes = {
      // What is doubtful in a record is listed, not refused.
      record: codesOf(files.filter(isOfRecord)),
      rest: codesOf(files.filter((file) => !isOfRecord(file))),
    };
    expect(codes.record.length).toBeGreaterThan(20);
    expect(codes.rest.length).toBeGreaterThan(30);
    for (const part of ['record', 'rest'] as const)
      for (const code of codes[part])
        expect(Object.keys(sentences[part]), `no sentence for ${code}`).toContain(code);
  });

  test('each sentence of errors belongs to a code of calc', () => {
    const declared = readFileSync('src/calc/errors.ts', 'utf8');
    for (const key of Object.keys(english.errors)) {
      expect(declared, key).toContain(`'${key.replace(/(NoneNear|NearOne)$/, '')}'`);
    }
  });
});
