/** What is said of the Seed order sheet, and the cell it leads to. */
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { demoFilling } from '../../src/templates/demoGarden';
import { findInSeedOrder } from '../../src/templates/findInSeedOrder';
import { seedOrderTemplate } from '../../src/templates/seedOrder';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { CellValue } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

async function found(wrong: InputRow) {
  const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
  const requests = demoFilling.map((request) =>
    request.template.id === seedOrderTemplate.id
      ? { ...request, inputs: [wrong, ...request.inputs] }
      : request,
  );
  await fillSheets(workbook, requests, 'test');
  const findings = await findInSeedOrder(workbook);
  const at = async ({ area }: (typeof findings)[number]): Promise<unknown> =>
    (await workbook.read(area)).values[0]?.[0];
  return Promise.all(
    findings.map(async (each) => ({
      kind: each.kind,
      header: each.header,
      row: each.row,
      text: each.text,
      given: await at(each),
    })),
  );
}

const pack = (Crop: CellValue, size: CellValue, price: CellValue): InputRow => ({
  Crop,
  'Seeds in a pack': size,
  'Price of a pack': price,
});

describe('a line of the price list', () => {
  test('that is right leads nowhere', async () => {
    expect(await found(pack('gourd', 50, 4))).toEqual([]);
  });

  test.each<[string, InputRow, string, CellValue]>([
    ['with a text for a price', pack('gourd', 50, '$4,50'), 'Price of a pack', '$4,50'],
    ['with a price of 0', pack('gourd', 50, 0), 'Price of a pack', 0],
    ['with a pack of no seeds', pack('gourd', 0, 4), 'Seeds in a pack', 0],
  ])('%s leads to that cell, once', async (_, wrong, header, given) => {
    expect(await found(wrong)).toMatchObject([{ kind: 'error', header, row: 'gourd', given }]);
  });

  test('with a name that is not known tells the near ones', async () => {
    const [finding, ...rest] = await found(pack('gord', 50, 4));
    expect(finding).toMatchObject({ kind: 'error', row: 'gord', text: expect.stringContaining('gourd') });
    expect(rest).toEqual([]);
  });
});
