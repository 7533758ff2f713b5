/** Formulas in the order in which the engine calculates them, without those that would give what they gave. */
import type { FormulaDependencyTree, FormulaDependencyTreeVirtual } from '@univerjs/engine-formula';

export type Formula = FormulaDependencyTree | FormulaDependencyTreeVirtual;

/** The engine's last comes first, and before what reads it. */
export class RunList {
  /** What the engine has been given last: it calculates that before it asks for more. */
  private given: Formula | null = null;

  /**
   * @param due numbers of the formulas that are calculated whatever comes of the others; added to
   * @param readersOf numbers of the formulas that read its cell
   */
  constructor(
    private readonly formulas: Formula[],
    private readonly due: Set<number>,
    private readonly readersOf: (formula: Formula) => Iterable<number>,
    private readonly hasChanged: (formula: Formula) => boolean,
  ) {}

  get length(): number {
    if (this.given !== null && this.hasChanged(this.given)) {
      for (const reader of this.readersOf(this.given)) this.due.add(reader);
    }
    this.given = null;
    for (let next = this.formulas.at(-1); next && !this.due.has(next.treeId); next = this.formulas.at(-1)) {
      this.formulas.pop();
    }
    return this.formulas.length;
  }

  pop(): Formula | undefined {
    this.given = this.formulas.pop() ?? null;
    return this.given ?? undefined;
  }

  [Symbol.iterator](): Iterator<Formula> {
    return this.formulas[Symbol.iterator]();
  }
}
