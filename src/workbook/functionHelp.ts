/** A worksheet function as it is described to people: out of its comment, which functions.json is made of too. */
export interface FunctionHelp {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional?: boolean;
  }[];
}

/** The same with its place among the others, and a formula to begin with: out of the table of README. */
export interface DescribedFunction extends FunctionHelp {
  /** The task it is for. */
  readonly family: string;
  /** With its "=". */
  readonly example: string;
}

/** The same in the language that was chosen. */
export interface ListedFunction extends DescribedFunction {
  /** All words that a search finds it by, but those of its task. */
  readonly foundBy: string;
}
