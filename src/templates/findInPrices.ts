/** What does not fit in the Prices sheet, each at the cell to mend. */
import { findFindings, type Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { priceFaults } from './prices';
import { catalogue } from '../texts/catalogue';

const { toMend } = catalogue.money.prices.columns;

/** @throws HostError */
export async function findInPrices(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const found = priceFaults.map(([table, causes]) => findFindings(workbook, table, toMend, causes));
  return (await Promise.all(found)).flat();
}
