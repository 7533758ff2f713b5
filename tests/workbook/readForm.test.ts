import { describe, expect, it } from 'vitest';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellContent } from '../../src/workbook/port';
import { readForm, writeForm } from '../../src/workbook/readForm';
import { change } from '../contract/contractWorkbook';
import { formTemplate } from './formTemplate';

async function filled() {
  const port = createFileWorkbook({ functions: [] });
  await fillSheets(port, [{ template: formTemplate, inputs: [], form: { YEAR_OF_PLAN: 2026 } }], 'test');
  const type = async (name: string, content: CellContent): Promise<void> => {
    const area = await port.locate(name);
    if (area === null) throw new Error(`no cell ${name}`);
    const cells = [{ ...area, contents: [[content]] }];
    await port.apply(change({ cells }));
  };
  const read = async () => {
    const form = await readForm(port, formTemplate);
    if (form === null) throw new Error('no form');
    return form;
  };
  return { port, type, read };
}

describe('the form of a sheet', () => {
  it('has the values by name, and says which cells compute', async () => {
    const { read } = await filled();
    const { values, computed } = await read();
    expect(values).toEqual({ YEAR_OF_PLAN: 2026, SHARE_KEPT: 0.5, NEXT_YEAR: 2027 });
    expect([...computed]).toEqual(['NEXT_YEAR']);
  });

  it('gets the inputs that differ', async () => {
    const { port, read } = await filled();
    expect(await writeForm(port, await read(), { YEAR_OF_PLAN: 2030, SHARE_KEPT: 0.5 }, 'test')).toEqual([]);
    expect((await read()).values).toMatchObject({ YEAR_OF_PLAN: 2030, NEXT_YEAR: 2031 });
  });

  it('leaves a formula that somebody typed into an input, and says so', async () => {
    const { port, type, read } = await filled();
    await type('YEAR_OF_PLAN', { compute: { operator: '+', left: { value: 2000 }, right: { value: 26 } } });
    const values = { YEAR_OF_PLAN: 2030, SHARE_KEPT: 0.25 };
    expect(await writeForm(port, await read(), values, 'test')).toEqual(['YEAR_OF_PLAN']);
    const after = await read();
    expect(after.values).toMatchObject({ YEAR_OF_PLAN: 2026, SHARE_KEPT: 0.25 });
    expect(after.computed).toContain('YEAR_OF_PLAN');
  });
});
