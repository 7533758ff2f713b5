/** Each function has its definition, its wrapper and its help. A forgotten step is named by the failing test. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { beforeAll, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';

interface Described {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly { name: string; description: string; optional?: boolean }[];
}

const folder = 'src/functions';
const files = readdirSync(folder)
  .map((name) => join(folder, name))
  .filter((file) => readFileSync(file, 'utf8').includes('@customfunction'));
let described: readonly Described[] = [];

beforeAll(async () => {
  const generated = await generateCustomFunctionsMetadata(files);
  expect(generated.errors).toEqual([]);
  described = (JSON.parse(generated.metadataJson) as { functions: Described[] }).functions;
});

describe('functions.json', () => {
  it('has a wrapper for every definition of functions/index.ts, and no other', () => {
    expect(described.map(({ id }) => id).sort()).toEqual([...functions.keys()].sort());
  });

  it('is built from every wrapper file: entries/functions.ts imports each', () => {
    const entry = readFileSync('src/entries/functions.ts', 'utf8');
    const imported = [...entry.matchAll(/^import '\.\.\/functions\/(\w+)'/gm)].map(([, name]) =>
      join(folder, `${name}.ts`),
    );
    expect(imported.sort()).toEqual([...files].sort());
  });

  it('names each parameter, in order and optional or not, as the definition reads it', () => {
    for (const { id, parameters } of described) {
      const defined = functions
        .get(id)
        ?.parameters.map(({ name, optional }) => `${name}${optional ? '?' : ''}`);
      expect(
        parameters.map(({ name, optional }) => `${name}${optional === true ? '?' : ''}`),
        id,
      ).toEqual(defined);
    }
  });

  it('describes each function in a short sentence and each parameter in a few words', () => {
    for (const { id, description, parameters } of described) {
      expect(description.length, id).toBeGreaterThan(20);
      expect(description.length, id).toBeLessThanOrEqual(140);
      expect(description, id).not.toContain('\n');
      for (const parameter of parameters) {
        expect(parameter.description.length, `${id} ${parameter.name}`).toBeGreaterThan(4);
        expect(parameter.description.length, `${id} ${parameter.name}`).toBeLessThanOrEqual(140);
      }
    }
  });

  it('has ids that no spreadsheet takes for a cell', () => {
    for (const { id } of described) expect(id).toMatch(/^[A-Z]{4,}\.[A-Z]+$/);
  });
});
