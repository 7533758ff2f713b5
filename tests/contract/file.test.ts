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
  /** Of the file, as texts. */
  async function parts(): Promise<(readonly [name: string, text: string])[]> {
    const path = join(mkdtempSync(join(tmpdir(), 'contract-')), 'book.xlsx');
    await port.save(path, { replace: false });
    const packed = unzipSync(new Uint8Array(readFileSync(path)));
    rmSync(dirname(path), { recursive: true });
    return Object.entries(packed).map(([name, part]) => [name, strFromU8(part)]);
  }
  return {
    port,
    keepsMessages: true,
    async pictures() {
      return (await parts())
        .filter(([name]) => /^xl\/drawings\/drawing\d+\.xml$/.test(name))
        .flatMap(([, xml]) => [...xml.matchAll(/ descr="([^"]*)"/g)].map(([, text = '']) => text));
    },
    // By ECMA-376 part 1, 18.3.1.10: the lower number comes first.
    async rules(name) {
      const at = (await port.sheets()).findIndex((sheet) => sheet.name === name);
      const [, xml = ''] =
        (await parts()).find(([part]) => part === `xl/worksheets/sheet${at + 1}.xml`) ?? [];
      return [
        ...xml
          .replaceAll('&quot;', '"')
          .matchAll(/<cfRule [^>]*priority="(\d+)"[^>]*><formula>"(.*?)"<\/formula>/g),
      ]
        .sort(([, one], [, other]) => Number(one) - Number(other))
        .map(([, , text = '']) => text);
    },
    failAt(step) {
      failing = step;
      steps = 0;
    },
    dispose: () => Promise.resolve(),
  };
});
