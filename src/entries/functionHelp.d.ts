/** What webpack makes of `entries/functions` for the browser workbook: see functionHelp.cjs. */
declare module '*?help' {
  export const functionHelp: readonly import('../hosts/browser/describeFunctions').FunctionHelp[];
}
