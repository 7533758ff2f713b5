/**
 * Which formulas read which cells, each range noted once. The engine notes all ranges of all formulas anew at every
 * calculation and keeps the earlier notes too, so that each edit would be slower than the one before. And to forget a
 * formula it looks through the ranges of all others: a thousand lines were minutes in going.
 */
import { RTree, type Injector, type IRange, type IUnitRange } from '@univerjs/core';
import { DependencyManagerService, IDependencyManagerService } from '@univerjs/engine-formula';

type Item = Parameters<RTree['insert']>[0];
type Formula = Item['id'];

/** A range of several cells, and the formulas that read it. */
interface Shared {
  readonly range: IRange;
  readonly readers: Set<Formula>;
}

/** What is noted of one sheet. */
interface Notes {
  /** In the tree such a range stands once, under its key; formulas have numbers. */
  readonly ranges: Map<string, Shared>;
  /** The keys of the ranges and the cells that a formula reads. */
  readonly readings: Map<Formula, { readonly ranges: Set<string>; readonly cells: Map<number, IRange> }>;
}

export class RangesOnce extends RTree {
  private readonly notes = new Map<string, Notes>();

  override insert(item: Item): void {
    const { range, id } = item;
    const notes = this.notesOf(item);
    const reading = notes.readings.get(id) ?? { ranges: new Set(), cells: new Map() };
    notes.readings.set(id, reading);
    if (isCell(range)) {
      const key = range.startRow * columnsAtMost + range.startColumn;
      if (!reading.cells.has(key)) super.insert(item);
      reading.cells.set(key, range);
      return;
    }
    const key = `${range.startRow},${range.startColumn},${range.endRow},${range.endColumn}`;
    const shared = notes.ranges.get(key) ?? { range, readers: new Set() };
    if (!notes.ranges.has(key)) super.insert({ ...item, id: key });
    notes.ranges.set(key, shared);
    shared.readers.add(id);
    reading.ranges.add(key);
  }

  override *searchGenerator(search: IUnitRange): IterableIterator<Formula> {
    const { ranges } = this.notesOf(search);
    for (const id of super.searchGenerator(search)) {
      if (typeof id === 'string') yield* ranges.get(id)?.readers ?? [];
      else yield id;
    }
  }

  /** The engine takes away all that a formula reads in a sheet, by a range around it. */
  override remove(item: Item): void {
    const { ranges, readings } = this.notesOf(item);
    const reading = readings.get(item.id);
    if (reading === undefined) return;
    for (const [key, range] of reading.cells) {
      if (!meet(range, item.range)) continue;
      reading.cells.delete(key);
      super.remove({ ...item, range });
    }
    // As the engine: a cell is taken for one that is noted by itself.
    if (isCell(item.range)) return;
    for (const key of reading.ranges) {
      const shared = ranges.get(key);
      if (shared === undefined || !meet(shared.range, item.range)) continue;
      reading.ranges.delete(key);
      shared.readers.delete(item.id);
      if (shared.readers.size > 0) continue;
      ranges.delete(key);
      super.remove({ ...item, range: shared.range, id: key });
    }
  }

  override removeById(unitId: string, sheetId?: string): void {
    if (sheetId === undefined) this.notes.clear();
    else this.notes.delete(sheetKey({ unitId, sheetId }));
    super.removeById(unitId, sheetId);
  }

  override clear(): void {
    this.notes.clear();
    super.clear();
  }

  private notesOf(place: Pick<Item, 'unitId' | 'sheetId'>): Notes {
    const key = sheetKey(place);
    const notes = this.notes.get(key) ?? { ranges: new Map(), readings: new Map() };
    this.notes.set(key, notes);
    return notes;
  }
}

/** More than a sheet can have. */
const columnsAtMost = 2 ** 20;

function sheetKey({ unitId, sheetId }: Pick<Item, 'unitId' | 'sheetId'>): string {
  return `${unitId}!${sheetId}`;
}

function isCell({ startRow, endRow, startColumn, endColumn }: IRange): boolean {
  return startRow === endRow && startColumn === endColumn;
}

/** A whole row or column has no ends: there it is NaN, which is beyond nothing. */
function meet(one: IRange, other: IRange): boolean {
  return !(
    one.endRow < other.startRow ||
    one.startRow > other.endRow ||
    one.endColumn < other.startColumn ||
    one.startColumn > other.endColumn
  );
}

class FormulaLinks extends DependencyManagerService {
  protected override _dependencyRTreeCache = new RangesOnce(true);
}

/** Before the workbook is made: the engine must not have begun to note. */
export function noteRangesOnce(injector: Injector): void {
  injector.replace([IDependencyManagerService, { useClass: FormulaLinks }]);
}
