/** What the person should look at before planting, and what is to be said of the selected cell. */
import type { Finding } from '../workbook/findFindings';
import { isCellError, type Area, type CellError, type LiveWorkbook } from '../workbook/port';
import { cellAddress } from '../workbook/cellAddress';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section, setText } from './elements';
import { createFindingsList, sayError, sayText } from './findingsList';
import { faultAt } from './formulaFaults';
import { createNotice } from './notice';
import { problemSentence } from './problemSentence';

const { pane } = catalogue;

export interface FindingsSection {
  readonly element: HTMLElement;
  /** null while there is no sheet to look at. */
  show(findings: readonly Finding[] | null, unsettled: number): void;
  /** The sheets have changed, and what comes of it is not known yet. */
  wait(): void;
  /** Says what the selected cell's error says, or what is said of the cell in the list. */
  showSelected(area: Area | null): Promise<void>;
}

const words = pane.findings;

export function createFindingsSection(
  workbook: LiveWorkbook,
  actions: Actions,
  nearestNames: NearestNames,
): FindingsSection {
  const { element: all, heading } = section('findings', words.heading);
  const selected = element('p', { role: 'status', class: 'selected' });
  const state = element('p', { class: 'hint' }, words.noSheet);
  const announced = element('p', { role: 'status', class: 'spoken' });
  const notice = createNotice(actions);
  const list = createFindingsList((area) => {
    workbook.reveal(area).then(
      () => notice.say(''),
      (cause: unknown) => notice.warn(fill(words.goneThere, { problem: problemSentence(cause) })),
    );
  });
  all.append(selected, announced, state, notice.element, list.element);
  let latest = 0;
  let shown: readonly Finding[] = [];
  let isThere = false;

  const sayHeading = (isWaiting: boolean): void => {
    const count = shown.length;
    const counted = count === 0 ? words.heading : fill(words.headingCount, { count });
    setText(heading, isWaiting ? fill(pane.calculating, { heading: words.heading }) : counted);
    list.element.setAttribute('aria-busy', String(isWaiting));
  };
  return {
    element: all,
    show(findings, unsettled) {
      shown = findings ?? [];
      isThere = findings !== null;
      sayHeading(unsettled > 0);
      const wait = unsettled > 0 ? fill(words.unsettled, { count: unsettled }) : '';
      const calm = findings === null ? words.noSheet : shown.length === 0 ? words.nothing : '';
      setText(state, wait === '' ? calm : wait);
      state.hidden = state.textContent === '';
      setText(announced, findings === null || wait !== '' ? '' : sayCount(findings));
      list.show(shown);
    },
    wait: () => sayHeading(isThere),
    async showSelected(area) {
      const asked = ++latest;
      const error = area === null ? null : await errorIn(workbook, area, nearestNames);
      // A later selection has overtaken this one.
      if (asked !== latest) return;
      const found = shown.find((finding) => isAt(finding, area));
      const said = error === null ? found && sayText(found) : sayError(error.message ?? error.error);
      setText(selected, area === null || said === undefined ? '' : saySelected(area, said));
    },
  };
}

/** The error in the first cell of the area. A cell that cannot be read just now has nothing to say. */
async function errorIn(
  workbook: LiveWorkbook,
  area: Area,
  nearestNames: NearestNames,
): Promise<CellError | null> {
  try {
    const value = (await workbook.read({ ...area, rows: 1, columns: 1 })).values[0]?.[0];
    if (!isCellError(value)) return null;
    return { ...value, message: value.message ?? (await faultAt(workbook, area, nearestNames)) };
  } catch {
    return null;
  }
}

function isAt({ area: { sheet, row, column } }: Finding, area: Area | null): boolean {
  return sheet === area?.sheet && row === area.row && column === area.column;
}

function saySelected({ row, column }: Area, message: string): string {
  return fill(words.selected, { cell: cellAddress(row, column), message });
}

function sayCount(findings: readonly Finding[]): string {
  if (findings.length === 0) return words.announceNothing;
  const errors = findings.filter((finding) => finding.kind === 'error').length;
  return fill(words.announce, { errors, remarks: findings.length - errors });
}
