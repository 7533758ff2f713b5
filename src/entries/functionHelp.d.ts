/** What webpack makes of `entries/functions` see functionHelp.cjs. */
declare module '*?help' {
  export const functionHelp: readonly import('../workbook/functionHelp').DescribedFunction[];
}
