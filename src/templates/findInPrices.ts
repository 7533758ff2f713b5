/** What does not fit in the Prices sheet, and what the Budget sheet is asked for, each at the cell to mend. */
import { findFindings, type Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { priceFaults } from './prices';
import { catalogue } from '../texts/catalogue';
import { textOf } from '../workbook/readInputs';

const { toMend } = catalogue.money.prices.columns;
const { noSuchCrop, notInList, lines } = catalogue.money.budget;

/** @throws HostError */
export async function findInPrices(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const found = priceFaults.map(([table, causes]) => findFindings(workbook, table, toMend, causes));
  return (await Promise.all([...found, findBudgetCrop(workbook)])).flat();
}

async function findBudgetCrop(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const [asked, taken] = await Promise.all(
    ['BUDGET_FOR', 'BUDGET_CROPS'].map(async (name) => {
      const area = await workbook.locate(name);
      return area && { area, value: (await workbook.read(area)).values[0]?.[0] ?? null };
    }),
  );
  if (asked == null || taken?.value !== noSuchCrop) return [];
  return [
    { kind: 'error', row: textOf(asked.value), header: lines.for.label, text: notInList, area: asked.area },
  ];
}
