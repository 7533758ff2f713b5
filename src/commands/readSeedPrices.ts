/** The price list of seed out of a file of text, for the Seed order sheet. */
import { listOfSeedPrices, type ListProblem, type NearestNames } from '../templates/sayListProblem';
import { seedPricesTable } from '../templates/seedPrices';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { findFindings } from '../workbook/findFindings';
import type { WorkbookPort } from '../workbook/port';
import { readDelimited } from '../workbook/readDelimited';
import { readInputs } from '../workbook/readInputs';
import type { InputRow } from '../workbook/template';
import { listToMend } from './listToMend';
import { textOf } from './readList';
import { UsageError } from './usageError';

export interface SeedPrices {
  readonly file: string;
  readonly inputs: readonly InputRow[];
  /** What wants mending, by line, once the list is in the workbook. */
  toMend(workbook: WorkbookPort): Promise<readonly string[]>;
}

const headers = seedPricesTable.columns.map(({ header }) => header);

/** @throws UsageError where there is no line that can be taken */
export function readSeedPrices(file: string, bytes: Uint8Array, nearestNames: NearestNames): SeedPrices {
  const delimited = readDelimited(textOf(file, bytes), { headers, mayBeBare: false });
  const { inputs, problems } = readInputs(seedPricesTable, delimited);
  const found: readonly ListProblem[] = [
    ...delimited.problems,
    // A crop has several packs, and one without a crop is found in the sheet.
    ...problems.filter(({ code }) => code !== 'sameName' && code !== 'noName'),
  ];
  if (inputs.length === 0) {
    const lines = listToMend(file, found, [], nearestNames, listOfSeedPrices);
    const none = fill(catalogue.commands.plan.emptyPriceList, { file });
    throw new UsageError((lines.length > 0 ? lines : [none]).join('\n'));
  }
  return {
    file,
    inputs,
    async toMend(workbook) {
      const table = await workbook.readTable(seedPricesTable.name);
      const first = (table?.area.row ?? 0) + 1;
      const findings = await findFindings(workbook, seedPricesTable, '');
      const errors = findings.map((finding) => ({
        ...finding,
        line: delimited.rows[finding.area.row - first]?.line ?? 0,
      }));
      return listToMend(file, found, errors, nearestNames, listOfSeedPrices);
    },
  };
}
