/** The price list of seed out of a file of text, for the Seed order sheet. */
import { listOfSeedPrices, type ListProblem, type NearestNames } from '../templates/sayListProblem';
import { seedOrderTemplate } from '../templates/seedOrder';
import { seedPricesTable } from '../templates/seedPrices';
import { catalogue, saidElsewhere } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { pointOfThousands } from '../texts/language';
import { readDelimited } from '../workbook/readDelimited';
import { readInputs } from '../workbook/readInputs';
import { listToMend } from './listToMend';
import type { ListToPut } from './listToPut';
import { textOf } from './readList';
import { UsageError } from './usageError';

const headers = seedPricesTable.columns.map(({ header }) => header);
const elsewhere = saidElsewhere(({ seedOrder }) => seedOrder.prices.columns);

/** @throws UsageError where there is no line that can be taken */
export function readSeedPrices(file: string, bytes: Uint8Array, nearestNames: NearestNames): ListToPut {
  const delimited = readDelimited(textOf(file, bytes), { headers, elsewhere, mayBeBare: false });
  const { inputs, problems } = readInputs(seedPricesTable, { ...delimited, pointOfThousands });
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
    kind: listOfSeedPrices,
    problems: found,
    addTo: (request) => (request.template.id === seedOrderTemplate.id ? { ...request, inputs } : request),
    lineOf: (index) => delimited.rows[index]?.line,
  };
}
