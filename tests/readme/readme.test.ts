/** The examples of README are run: a reader can trust each line. */
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { openEvaluator } from '../../src/hosts/browser/openEvaluator';
import { plotsTemplate } from '../../src/templates/plots';
import { functionNamespace } from '../../src/templates/sheets';
import { serialOfDay, dayOfIso } from '../../src/workbook/serialDate';

const readme = readFileSync('README.md', 'utf8');
const rows = [...readme.matchAll(/^\|[^|]*\|\s*([A-Z.]+)\s*\|\s*`(=[^`]+)`\s*\|([^|]+)\|$/gm)].map(
  ([, id = '', formula = '', result = '']) => [id, formula, result.trim()] as const,
);

const evaluator = openEvaluator({
  functions: [...functions.values()],
  namespace: functionNamespace,
  firstSheet: 'Sheet1',
});
afterAll(() => evaluator.dispose());

describe('README', () => {
  it('names every function once', () => {
    expect(rows.map(([id]) => id).sort()).toEqual([...functions.keys()].sort());
  });

  it.each(rows)('the example of %s gives what it says', async (id, formula, result) => {
    expect(formula).toContain(functionNamespace + id);
    const day = dayOfIso(result);
    const value = await evaluator.evaluate(formula);
    if (day !== null) expect(value).toBe(serialOfDay(day));
    else if (typeof value === 'number') expect(value).toBeCloseTo(Number(result), 10);
    else expect(value).toBe(result);
  });

  it('names every input column of Plots', () => {
    const columns = /Columns: ([^]+?)\. Options/.exec(readme)?.[1] ?? '';
    const named = columns
      .replace(/\([^)]*\)/g, '')
      .split(',')
      .map((name) => name.replace(/\s+/g, ' ').trim());
    const asked = plotsTemplate.tables[0]?.columns.filter(({ kind }) => kind === 'input');
    expect(named).toEqual(asked?.map(({ header }) => header));
  });
});
