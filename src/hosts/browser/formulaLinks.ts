/**
 * Which formulas read which cells, each range of a formula noted once. The engine notes all ranges of all formulas
 * anew at every calculation and keeps the earlier notes too, so that each edit would be slower than the one before.
 */
import { RTree, type Injector } from '@univerjs/core';
import { DependencyManagerService, IDependencyManagerService } from '@univerjs/engine-formula';

type Item = Parameters<RTree['insert']>[0];

export class RangesOnce extends RTree {
  /** By sheet, then by formula. */
  private readonly noted = new Map<string, Map<Item['id'], Set<string>>>();

  override insert(item: Item): void {
    const { startRow, startColumn, endRow, endColumn } = item.range;
    // Single cells the engine keeps in sets.
    if (startRow === endRow && startColumn === endColumn) return super.insert(item);
    const ranges = this.rangesOf(item);
    const range = `${startRow},${startColumn},${endRow},${endColumn}`;
    if (ranges.has(range)) return;
    ranges.add(range);
    super.insert(item);
  }

  /** All that the formula reads in the sheet is forgotten here, be it more than is removed: then it is noted again. */
  override remove(item: Item): void {
    this.noted.get(sheetOf(item))?.delete(item.id);
    super.remove(item);
  }

  override removeById(unitId: string, sheetId?: string): void {
    if (sheetId === undefined) this.noted.clear();
    else this.noted.delete(sheetOf({ unitId, sheetId }));
    super.removeById(unitId, sheetId);
  }

  override clear(): void {
    this.noted.clear();
    super.clear();
  }

  private rangesOf(item: Item): Set<string> {
    const sheet = sheetOf(item);
    const formulas = this.noted.get(sheet) ?? new Map<Item['id'], Set<string>>();
    this.noted.set(sheet, formulas);
    const ranges = formulas.get(item.id) ?? new Set<string>();
    formulas.set(item.id, ranges);
    return ranges;
  }
}

function sheetOf({ unitId, sheetId }: Pick<Item, 'unitId' | 'sheetId'>): string {
  return `${unitId}!${sheetId}`;
}

class FormulaLinks extends DependencyManagerService {
  protected override _dependencyRTreeCache = new RangesOnce(true);
}

/** Before the workbook is made: the engine must not have begun to note. */
export function noteRangesOnce(injector: Injector): void {
  injector.replace([IDependencyManagerService, { useClass: FormulaLinks }]);
}
