/** Prices of the budget out of a file of text, for one of the tables of the Prices sheet. */
import { namesOfCrops } from '../templates/plots';
import { pricesTemplate } from '../templates/prices';
import type { ListKind, ListProblem, NearestNames } from '../templates/sayListProblem';
import { catalogue, saidElsewhere } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { pointOfThousands } from '../texts/language';
import { plainWord } from '../workbook/plainWord';
import { readDelimited } from '../workbook/readDelimited';
import { readInputs } from '../workbook/readInputs';
import type { InputRow, TableTemplate } from '../workbook/template';
import { withTyped } from '../workbook/withTyped';
import { listToMend } from './listToMend';
import type { ListToPut } from './listToPut';
import { textOf } from './readList';
import { UsageError } from './usageError';

const words = catalogue.commands.plan;

const headersElsewhere = saidElsewhere(({ money }) => money.prices.columns);
const namesElsewhere = saidElsewhere(({ money }) => [money.prices.prices, money.prices.rates]);

/** Which table a list is for is told by the column with the names of its rows. */
const kinds = pricesTemplate.tables.map((table) => {
  const [names, ...columns] = table.columns;
  if (names === undefined) throw new Error(`no column in ${table.name}`);
  const rowNames = table.rows?.map(([name]) => String(name)) ?? [];
  const synonyms = names.header === catalogue.money.prices.columns.crop ? namesOfCrops.takenAs : {};
  const alike = Object.entries({ ...synonyms, ...namesElsewhere }).filter(([, name]) =>
    rowNames.includes(name),
  );
  const rowOf = new Map([...alike, ...rowNames.map((name) => [name, name])].map(plainly));
  const choices = [...rowNames, ...alike.map(([name]) => name)];
  const asked: TableTemplate = {
    ...table,
    columns: [{ ...names, kind: 'input', format: 'text', choices }, ...columns],
  };
  const kind: ListKind = { table: asked, ...words.prices };
  return { header: names.header, rowOf, kind };
});
const allHeaders = kinds.flatMap(({ kind }) => kind.table.columns.map(({ header }) => header));

function plainly([name = '', row = '']: readonly string[]): [string, string] {
  return [plainWord(name), row];
}

/** @throws UsageError where there is no line that can be taken */
export function readPrices(file: string, bytes: Uint8Array, nearestNames: NearestNames): ListToPut {
  const delimited = readDelimited(textOf(file, bytes), {
    headers: allHeaders,
    elsewhere: headersElsewhere,
    mayBeBare: false,
  });
  const refuse = (found: readonly ListProblem[], kind: ListKind | undefined, otherwise: string): never => {
    const lines = listToMend(file, found, [], nearestNames, kind);
    throw new UsageError((lines.length > 0 ? lines : [otherwise]).join('\n'));
  };
  const isThere = (name: string): boolean =>
    delimited.headers.some((header) => plainWord(header) === plainWord(name));
  const known = kinds.find(({ header }) => isThere(header));
  if (known === undefined) {
    const headers = kinds.map(({ header }) => header).join(', ');
    return refuse(delimited.problems, kinds[0]?.kind, fill(words.noPriceTable, { file, headers }));
  }
  const { header, rowOf, kind } = known;
  const read = readInputs(kind.table, { ...delimited, pointOfThousands });
  const problems: ListProblem[] = [
    ...delimited.problems,
    // Two names may be of one row, and what else is none of its choices the sheet says.
    ...read.problems.filter(
      (problem) =>
        problem.code !== 'sameName' && (problem.code !== 'notAChoice' || problem.header === header),
    ),
  ];
  const lines = new Map<string, number>();
  const typed: Record<string, InputRow> = {};
  read.inputs.forEach(({ [header]: name, ...cells }, index) => {
    const given = String(name ?? '');
    const row = rowOf.get(plainWord(given));
    if (row === undefined) return;
    const line = delimited.rows[index]?.line ?? 0;
    const firstLine = lines.get(row);
    if (firstLine !== undefined)
      return void problems.push({ code: 'sameName', line, header, given, firstLine });
    lines.set(row, line);
    typed[row] = cells;
  });
  if (lines.size === 0) refuse(problems, kind, fill(words.noPrices, { file }));
  return {
    file,
    kind,
    problems,
    addTo: (request) =>
      request.template.id === pricesTemplate.id
        ? { ...request, template: withTyped(request.template, { [kind.table.name]: typed }) }
        : request,
    lineOf: (_, name) => lines.get(name),
  };
}
