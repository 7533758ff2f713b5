/** The three hosts with the functions that ship, for tests of whole sheets. What is opened is closed after its test. */
import { afterEach } from 'vitest';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { openExcelWorkbook } from '../../src/hosts/excel/openExcelWorkbook';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { functionNamespace as namespace } from '../../src/templates/sheets';
import type { WorkbookPort } from '../../src/workbook/port';
import { openStandIn } from '../excelStandIn/openStandIn';

const registered = [...functions.values()];
const firstSheet = 'Notepad';

const open: (() => void)[] = [];
afterEach(() => {
  for (const close of open.splice(0)) close();
});

export const openFile = () => createMemoryWorkbook({ functions: registered });

export const hosts: readonly (readonly [name: string, open: () => WorkbookPort])[] = [
  ['file', openFile],
  [
    'browser',
    () => {
      const workbook = openHeadless({ functions: registered, namespace, firstSheet });
      open.push(() => workbook.dispose());
      return workbook;
    },
  ],
  [
    'excel',
    () => {
      const standIn = openStandIn({ firstSheet, functions: registered });
      open.push(() => standIn.close());
      return openExcelWorkbook({ ...standIn, namespace });
    },
  ],
];
