/** Whether a file is a workbook by its name, ours or one that can only be refused, and not a list. */
export function hasWorkbookName(file: string): boolean {
  return /\.(xls\w?|ods|numbers)$/i.test(file);
}
