/// <reference types="office-js" />

import type { Unsettled } from '../../workbook/port';
import { readCells } from './readCells';
import { surveyWorkbook } from './surveyWorkbook';

/** What a cell shows while its result is still to come. */
const waiting: ReadonlySet<unknown> = new Set(['#BUSY!', '#GETTING_DATA']);

const firstWaitMs = 100;
const longestWaitMs = 1000;

export interface Clock {
  now(): number;
  sleep(ms: number): Promise<void>;
}

/** Looks at our sheets until no cell waits; the cells that still wait after `timeoutMs` are given back. @throws HostError */
export async function settleResults(
  excel: typeof Excel,
  clock: Clock,
  timeoutMs: number,
): Promise<readonly Unsettled[]> {
  const deadline = clock.now() + timeoutMs;
  for (let wait = firstWaitMs; ; wait = Math.min(longestWaitMs, wait * 2)) {
    const unsettled = await waitingCells(excel);
    const left = deadline - clock.now();
    if (unsettled.length === 0 || left <= 0) return unsettled;
    await clock.sleep(Math.min(wait, left));
  }
}

async function waitingCells(excel: typeof Excel): Promise<Unsettled[]> {
  const { sheets } = await surveyWorkbook(excel);
  const areas = sheets.flatMap(({ mark, used }) => (mark === null || used === null ? [] : [used]));
  const cells = await readCells(excel, areas);
  return areas.flatMap(({ sheet }, index) =>
    (cells[index]?.values ?? []).flatMap((line, row) =>
      line.flatMap((value, column) => (waiting.has(value) ? [{ sheet, row, column }] : [])),
    ),
  );
}
