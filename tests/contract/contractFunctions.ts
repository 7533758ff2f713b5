/** Functions that the contract calculates with. */
type Scalar = number | string | boolean;

/** The shape in which every host takes functions. */
export interface ContractFunction {
  readonly id: string;
  run(
    args: readonly unknown[],
  ):
    | { readonly value: Scalar | Scalar[][]; readonly pattern?: string }
    | { readonly error: '#N/A' | '#VALUE!' | '#NUM!'; readonly message: string };
}

export const notNumber = 'Length must be a number, for example 100.';
export const notKnown = 'No crop has this name.';

export const contractFunctions: readonly ContractFunction[] = [
  {
    id: 'TEST.DOUBLE',
    run: ([value]) =>
      typeof value === 'number' ? { value: value * 2 } : { error: '#VALUE!', message: notNumber },
  },
  {
    id: 'TEST.KNOWN',
    run: ([name]) => (name === 'melon' ? { value: true } : { error: '#N/A', message: notKnown }),
  },
  { id: 'TEST.DAY', run: () => ({ value: 46144, pattern: 'yyyy-mm-dd' }) },
  { id: 'TEST.DAYS', run: () => ({ value: [[46144], [46158]], pattern: 'yyyy-mm-dd' }) },
  /** Rows of n and its square, up to the number given. */
  {
    id: 'TEST.SQUARES',
    run: ([most]) => ({ value: Array.from({ length: Number(most) }, (_, i) => [i + 1, (i + 1) ** 2]) }),
  },
  /** How the arguments arrive. */
  { id: 'TEST.SHOW', run: (args) => ({ value: JSON.stringify(args) }) },
  { id: 'TEST.HUGE', run: () => ({ error: '#NUM!', message: 'The result is too large.' }) },
];
