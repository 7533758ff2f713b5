import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { openStandIn } from '../excelStandIn/openStandIn';
import { contractFunctions } from './contractFunctions';
import { foreignSheet } from './contractWorkbook';
import { workbookContract } from './workbookContract';

workbookContract('excel', async () => {
  const standIn = openStandIn({ firstSheet: foreignSheet.name, functions: contractFunctions });
  const [kitchen] = standIn.book.sheets;
  foreignSheet.contents.forEach((row, i) =>
    row.forEach((value, j) => {
      if (kitchen !== undefined) standIn.type(kitchen, i, j, typeof value === 'string' ? `'${value}` : value);
    }),
  );
  return {
    port: openExcelWorkbook({ ...standIn, namespace: 'CUCURBIT.' }),
    // Excel shows the message when one points at the cell, and tells nobody else.
    keepsMessages: false,
    pictures: async () =>
      standIn.book.sheets.flatMap(({ shapes }) =>
        shapes.map(({ properties }) => String(properties['AltTextDescription'])),
      ),
    rules: async (name) =>
      (standIn.book.sheets.find((sheet) => sheet.name === name)?.rules ?? []).map(({ properties }) => {
        const { formula1 } = properties['rule'] as Excel.ConditionalCellValueRule;
        return formula1.replace(/^="(.*)"$/, '$1');
      }),
    failAt: (request) => standIn.failAt(request),
    dispose: async () => standIn.close(),
  };
});
