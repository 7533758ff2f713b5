/** Findings on the page: errors before remarks, each under the row it belongs to, each a button that goes there. */
import type { Area } from '../workbook/port';
import { isBareError, type Finding } from '../workbook/findFindings';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element } from './elements';

const { pane } = catalogue;

/** More would make the pane slow, and nobody mends them all at once. */
const mostShown = 200;

export interface FindingsList {
  readonly element: HTMLElement;
  show(findings: readonly Finding[]): void;
}

const words = pane.findings;

export function createFindingsList(reveal: (area: Area) => void): FindingsList {
  const all = element('div', { class: 'findings', tabindex: -1 });
  let shown = '';
  const buttons = new Map<string, HTMLButtonElement>();

  const createButton = (finding: Finding): HTMLButtonElement => {
    const button = element('button', { type: 'button' }, sayFinding(finding));
    button.addEventListener('click', () => reveal(finding.area));
    buttons.set(keyOf(finding), button);
    return button;
  };

  const createKind = (
    kind: 'error' | 'remark',
    heading: string,
    findings: readonly Finding[],
    room: number,
  ): Node[] => {
    const ofKind = findings.filter((finding) => (finding.kind === 'error') === (kind === 'error'));
    if (ofKind.length === 0) return [];
    const groups = groupByRow(ofKind.slice(0, room)).map((group) =>
      element(
        'li',
        {},
        element('p', { class: 'row-name' }, rowName(group[0])),
        element('ul', {}, ...group.map((finding) => element('li', { class: kind }, createButton(finding)))),
      ),
    );
    const title = element('h3', {}, fill(words.group, { heading, count: ofKind.length }));
    return groups.length === 0 ? [title] : [title, element('ul', {}, ...groups)];
  };

  return {
    element: all,
    show(findings) {
      const next = JSON.stringify(findings);
      if (next === shown) return;
      shown = next;
      const focused = [...buttons].find(([, button]) => button === document.activeElement)?.[0];
      buttons.clear();
      const errors = findings.filter((finding) => finding.kind === 'error').length;
      const rest = findings.length - mostShown;
      all.replaceChildren(
        ...createKind('error', words.errors, findings, mostShown),
        ...createKind('remark', words.remarks, findings, Math.max(0, mostShown - errors)),
        ...(rest > 0 ? [element('p', {}, fill(words.more, { count: rest, shown: mostShown }))] : []),
      );
      // The focus was on a button that is made anew, or is gone: then it stays in the list.
      if (focused !== undefined) (buttons.get(focused) ?? all).focus({ preventScroll: true });
    },
  };
}

function groupByRow(findings: readonly Finding[]): Finding[][] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    // Two rows may have the same name. A form's lines have one name and are one group.
    const key = JSON.stringify([
      finding.area.sheet,
      finding.row,
      finding.row === finding.area.sheet ? 0 : finding.area.row,
    ]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()];
}

function rowName(finding: Finding | undefined): string {
  if (finding === undefined) return '';
  return finding.row === '' ? fill(words.unnamedRow, { row: finding.area.row + 1 }) : finding.row;
}

function sayFinding(finding: Finding): string {
  const text = sayText(finding);
  return finding.kind === 'error' ? fill(words.item, { header: finding.header, text }) : text;
}

/** What is said of the cell, without its header. */
export function sayText({ kind, text, area }: Finding): string {
  if (kind === 'stray') return fill(words.stray, { row: area.row + 1, sheet: area.sheet });
  return kind === 'error' ? sayError(text) : text.trim();
}

/** An error that says nothing itself is told with what can be done about it. */
export function sayError(text: string): string {
  if (text === '#CYCLE!') return words.circle;
  return isBareError(text) ? fill(words.noMessage, { error: text }) : text;
}

function keyOf({ kind, area }: Finding): string {
  return `${kind} ${area.sheet} ${area.row} ${area.column}`;
}
