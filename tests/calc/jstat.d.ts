/** The functions of jstat 1.9.6 that the tests ask, which comes without types. */
declare module 'jstat' {
  export const jStat: {
    ibeta(x: number, a: number, b: number): number;
    /** alphap and betap 1 make rule 7, 0 rule 6. */
    quantiles(values: readonly number[], at: readonly number[], alphap: number, betap: number): number[];
    readonly beta: {
      pdf(x: number, a: number, b: number): number;
      inv(p: number, a: number, b: number): number;
    };
  };
}
