/** A plan out of a file, ready to be opened in a workbook, and what is to be said of it. */
import { withLaterHomework } from '../templates/homework';
import { manyPlots, plotsTemplate } from '../templates/plots';
import { knownTemplates } from '../templates/sheets';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { FileRead } from '../workbook/desk';
import { fillSheets, type FillRequest } from '../workbook/fillSheets';
import { readFilling, type ReadableBook } from '../workbook/readFilling';
import { listToMend } from './listToMend';
import type { NearestNames } from '../templates/sayListProblem';
import { readPlan, type PlanRead, type PlanReader } from './readPlan';
import { UsageError } from './usageError';

const words = catalogue.pane.plan;

export interface PlanOpener extends PlanReader {
  readonly nearestNames: NearestNames;
}

/** @param current what is open: a list of plots goes with its season. @throws HostError */
export async function openPlan(
  file: string,
  bytes: Uint8Array,
  current: ReadableBook,
  opener: PlanOpener,
): Promise<FileRead> {
  try {
    const read = await readPlan(file, bytes, opener);
    const toMend = listToMend(file, read.problems, [], opener.nearestNames);
    const count = read.inputs.length;
    if (read.isList && count === 0) {
      const none = fill(catalogue.commands.plan.emptyList, { file });
      return { refused: [...toMend, ...(read.isShortened ? [] : [none])].join(' ') };
    }
    if (count > manyPlots) return { refused: fill(words.tooManyPlots, { file, count, most: manyPlots }) };
    const requests = read.isList ? await withSeason(read, current, opener) : read.requests;
    return {
      fill: (workbook) => fillSheets(workbook, requests, catalogue.pane.undo.sheets),
      said: [
        fill(words.opened, { file, count }),
        ...(read.leftOut.length > 0
          ? [fill(catalogue.commands.plan.leftOut, { headers: read.leftOut.join(', ') })]
          : []),
        ...(read.typedOver > 0 ? [fill(catalogue.commands.plan.typedOver, { count: read.typedOver })] : []),
        ...toMend,
      ],
    };
  } catch (cause) {
    if (cause instanceof UsageError) return { refused: cause.message };
    throw cause;
  }
}

/** The plots of the list in the plan that is open, if one is. */
async function withSeason(
  read: PlanRead,
  current: ReadableBook,
  { makeWorkbook }: PlanOpener,
): Promise<readonly FillRequest[]> {
  const templates = withLaterHomework(knownTemplates, await current.sheets());
  const now = await readFilling(current, templates, makeWorkbook);
  return (
    now?.requests.map((request) =>
      request.template.id === plotsTemplate.id ? { ...request, inputs: read.inputs } : request,
    ) ?? read.requests
  );
}
