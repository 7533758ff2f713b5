import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
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
    async pictures() {
      const path = join(mkdtempSync(join(tmpdir(), 'contract-')), 'book.xlsx');
      await port.save(path, { replace: false });
      const parts = Object.entries(unzipSync(new Uint8Array(readFileSync(path))));
      rmSync(dirname(path), { recursive: true });
      return parts
        .filter(([name]) => /^xl\/drawings\/drawing\d+\.xml$/.test(name))
        .flatMap(([, part]) =>
          [...strFromU8(part).matchAll(/ descr="([^"]*)"/g)].map(([, text = '']) => text),
        );
    },
    failAt(step) {
      failing = step;
      steps = 0;
    },
    dispose: () => Promise.resolve(),
  };
});
