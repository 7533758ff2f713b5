/** What is wrong in the Seed order sheet. */
import { seedOrderTable } from '../templates/seedOrder';
import { seedPricesTable } from '../templates/seedPrices';
import { findFindings, type Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';

/** A pack that is wrong is said on its line of the price list, and not again of its crop. */
export async function findInSeedOrder(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const inPrices = await findFindings(workbook, seedPricesTable, '');
  const inOrder = await findFindings(workbook, seedOrderTable, '');
  const isSaid = (text: string): boolean => inPrices.some((finding) => finding.text === text);
  return [...inPrices, ...inOrder.filter(({ kind, text }) => kind === 'error' && !isSaid(text))];
}
