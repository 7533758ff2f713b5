/** What is wrong in the Seed order sheet, each at the cell to mend. */
import { catalogue } from '../texts/catalogue';
import { findFindings, type Cause, type Finding } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { seedOrderTable } from './seedOrder';
import { seedPricesTable } from './seedPrices';

const { columns: headers, remarks } = catalogue.seedOrder;

/** Seed on hand that counts for nothing. The other remarks speak of nothing that was typed here. */
const causes: readonly Cause[] = [
  { remark: remarks.onHandNotNumber, header: headers.onHand.header, follows: null },
  { remark: remarks.noYear, header: headers.packedIn.header, follows: null },
];

/** A pack that is wrong is said on its line of the price list, and not again of its crop. @throws HostError */
export async function findInSeedOrder(workbook: WorkbookPort): Promise<readonly Finding[]> {
  const inPrices = await findFindings(workbook, seedPricesTable, '');
  const inOrder = await findFindings(workbook, seedOrderTable, headers.remark.header, causes);
  const isSaid = (text: string): boolean => inPrices.some((finding) => finding.text === text);
  return [...inPrices, ...inOrder.filter(({ kind, text }) => kind === 'error' && !isSaid(text))];
}
