/// <reference types="office-js" />

/** Writes, packed into as few requests as Excel's limit on their size allows. */
import type { Area } from '../../workbook/port';
import { askExcel } from './askExcel';
import type { RawCell } from './cellContents';
import { rangeOf } from './readCells';

export interface WriteStep {
  /** About how much of a request it takes. */
  readonly bytes: number;
  write(context: Excel.RequestContext): void;
}

/** Excel on the web takes no more than 5 MB in one request; the estimate is not exact. */
export const bytesPerRequest = 4_000_000;

/** One call or assignment, with the path to its object. */
export const bytesPerAction = 400;

/** Cells of one step: steps must be much smaller than a request to pack well. */
const bytesPerBand = 500_000;

/** The library sends cells in pieces, so that a row costs a little more than its text. */
const bytesPerRow = 20;

const encoder = new TextEncoder();

/** What cells take in a request. */
export function bytesOfRow(row: readonly (RawCell | null)[]): number {
  return encoder.encode(JSON.stringify(row)).length + bytesPerRow;
}

export function step(actions: number, write: WriteStep['write']): WriteStep {
  return { bytes: actions * bytesPerAction, write };
}

/** null leaves a cell as it is. `contents` are as large as the area. */
export function cellSteps(area: Area, contents: readonly (readonly (RawCell | null)[])[]): WriteStep[] {
  const steps: WriteStep[] = [];
  let from = 0;
  let bytes = 0;
  contents.forEach((row, index) => {
    bytes += bytesOfRow(row);
    if (bytes < bytesPerBand && index < contents.length - 1) return;
    const rows = contents.slice(from, index + 1);
    const band = { ...area, row: area.row + from, rows: rows.length };
    steps.push({
      bytes: bytes + bytesPerAction,
      write: (context) => (rangeOf(context, band).formulas = rows.map((each) => [...each])),
    });
    from = index + 1;
    bytes = 0;
  });
  return steps;
}

/** The requests that the steps go into, in their order. */
export function groupSteps(steps: readonly WriteStep[]): readonly (readonly WriteStep[])[] {
  const groups: WriteStep[][] = [];
  let bytes = Infinity;
  for (const each of steps) {
    if (bytes + each.bytes > bytesPerRequest) {
      groups.push([]);
      bytes = 0;
    }
    groups.at(-1)?.push(each);
    bytes += each.bytes;
  }
  return groups;
}

/** @throws HostError */
export async function sendSteps(
  excel: typeof Excel,
  action: string,
  steps: readonly WriteStep[],
  onSent: (steps: number) => void = () => undefined,
): Promise<void> {
  for (const group of groupSteps(steps)) {
    await askExcel(excel, action, (context) => {
      context.application.suspendApiCalculationUntilNextSync();
      context.application.suspendScreenUpdatingUntilNextSync();
      for (const each of group) each.write(context);
      return () => undefined;
    });
    onSent(group.length);
  }
}
