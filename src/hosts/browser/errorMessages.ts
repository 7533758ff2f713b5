/** What our functions said about the errors they gave. The engine keeps only the error. */
export interface CellPlace {
  readonly unit: string;
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

interface Kept {
  readonly calculation: number;
  /** By error: of several in a cell the first of a kind is the one that reaches the cell. */
  readonly messages: Map<string, string>;
}

export class ErrorMessages {
  private readonly kept = new Map<string, Map<string, Kept>>();
  private calculation = 0;

  /** What a cell said in an earlier calculation is forgotten when one of its functions runs again. */
  startCalculation(): void {
    this.calculation += 1;
  }

  /** A function runs in this cell. */
  ran(place: CellPlace): void {
    const sheet = this.kept.get(sheetKey(place.unit, place.sheet));
    const cell = sheet?.get(cellKey(place));
    if (cell !== undefined && cell.calculation !== this.calculation) sheet?.delete(cellKey(place));
  }

  /** Something else was written into the cell: perhaps a formula that never runs a function. */
  forget(place: CellPlace): void {
    this.kept.get(sheetKey(place.unit, place.sheet))?.delete(cellKey(place));
  }

  keep(place: CellPlace, error: string, message: string): void {
    const key = sheetKey(place.unit, place.sheet);
    const sheet = this.kept.get(key) ?? new Map<string, Kept>();
    this.kept.set(key, sheet);
    const cell = sheet.get(cellKey(place)) ?? { calculation: this.calculation, messages: new Map() };
    sheet.set(cellKey(place), cell);
    if (!cell.messages.has(error)) cell.messages.set(error, message);
  }

  /** null when the error is not one of ours, or was only passed on. */
  find(place: CellPlace, error: string): string | null {
    const cell = this.kept.get(sheetKey(place.unit, place.sheet))?.get(cellKey(place));
    return cell?.messages.get(error) ?? null;
  }
}

function sheetKey(unit: string, sheet: string): string {
  return `${unit} ${sheet}`;
}

function cellKey({ row, column }: CellPlace): string {
  return `${row} ${column}`;
}
