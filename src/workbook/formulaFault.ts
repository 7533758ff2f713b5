/** What keeps a spreadsheet program from reading a formula. */
export type FormulaFault =
  /** `known`: the names of all functions that there are. */
  | { readonly code: 'unknownFunction'; readonly name: string; readonly known: readonly string[] }
  /** No function, cell, name, number or text. */
  | { readonly code: 'unknownWord'; readonly word: string }
  | { readonly code: 'missingBrackets'; readonly count: number }
  | { readonly code: 'unreadable' };
