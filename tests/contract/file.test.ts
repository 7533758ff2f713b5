import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { contractFunctions } from './contractFunctions';
import { change, foreignSheet, newSheet } from './contractWorkbook';
import { workbookContract } from './workbookContract';

workbookContract('file', async () => {
  let failing: number | null = null;
  let steps = 0;
  const port = createFileWorkbook({
    functions: contractFunctions,
    beforeStep() {
      if (steps++ === failing) throw new Error('a fault made by the test');
    },
  });
  const contents = foreignSheet.contents.map((row) => [...row]);
  const mark = { template: 'foreign', version: 1 };
  const seed = newSheet(foreignSheet.name, { mark, blocks: [{ row: 0, column: 0, contents }] });
  await port.apply(change({ newSheets: [seed] }));
  return {
    port,
    keepsMessages: true,
    failAt(step) {
      failing = step;
      steps = 0;
    },
    dispose: () => Promise.resolve(),
  };
});
