import type { WorkbookPort } from '../../workbook/port';
import { createMemoryWorkbook, type MemoryWorkbookOptions } from './createMemoryWorkbook';
import { saveWhole, type BeforeSaveStep } from './saveWhole';

export interface FileWorkbookOptions extends MemoryWorkbookOptions {
  readonly beforeSaveStep?: BeforeSaveStep;
}

export interface FileWorkbook extends WorkbookPort {
  /**
   * Writes an .xlsx, whole or not at all; an existing file only with `replace`.
   * @throws HostError fileExists, fileNotWritable
   */
  save(path: string, options: { readonly replace: boolean }): Promise<void>;
}

/** A workbook that starts empty and ends as a file. */
export function createFileWorkbook(options: FileWorkbookOptions): FileWorkbook {
  const { bytes, ...port } = createMemoryWorkbook(options);
  return {
    ...port,
    save: async (path, { replace }) => saveWhole(path, await bytes(), replace, options.beforeSaveStep),
  };
}
