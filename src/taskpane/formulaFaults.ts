/** Errors that the program leaves without a word, told by what keeps it from reading their formula. */
import { isBareError, type Finding } from '../workbook/findFindings';
import type { Area, LiveWorkbook } from '../workbook/port';
import { sayFormulaFault } from '../templates/sayFormulaFault';
import type { NearestNames } from '../templates/sayListProblem';

/** null where the program can read the formula, or does not say. @throws HostError */
export async function faultAt(
  workbook: LiveWorkbook,
  area: Area,
  nearestNames: NearestNames,
): Promise<string | null> {
  if (workbook.findFault === undefined) return null;
  const { formulas } = await workbook.read({ ...area, rows: 1, columns: 1 });
  const fault = workbook.findFault(formulas[0]?.[0] ?? '');
  return fault === null ? null : sayFormulaFault(fault, nearestNames);
}

/** @throws HostError */
export function explainFindings(
  workbook: LiveWorkbook,
  findings: readonly Finding[],
  nearestNames: NearestNames,
): Promise<readonly Finding[]> {
  return Promise.all(
    findings.map(async (finding) => {
      const isBare = finding.kind === 'error' && isBareError(finding.text);
      const fault = isBare ? await faultAt(workbook, finding.area, nearestNames) : null;
      return fault === null ? finding : { ...finding, text: fault };
    }),
  );
}
