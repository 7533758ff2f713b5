/** The plots: a list over the lines of the Plots sheet, which stays the only place they are kept in. */
import { addLines, countUsed } from '../workbook/arrangeLines';
import type { LiveWorkbook } from '../workbook/port';
import type { InputRow, TableTemplate } from '../workbook/template';
import type { PlotPictureState } from '../templates/plotPictures';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section, setText } from './elements';
import { focusUnlessElsewhere } from './holdFocus';
import type { PaneTools } from './paneTools';
import { createPastePart } from './pastePart';
import { createPlotActions } from './plotActions';
import { createPlotDesk } from './plotDesk';
import { createPlotEditor } from './plotEditor';
import { createPlotPicture } from './plotPicture';
import { plotRow } from './plotRow';
import { takenNames, type PlotsState } from './readPlots';
import { createSuccessionPart } from './successionPart';

const { pane } = catalogue;
const words = pane.plots;

export interface PlotsSection {
  readonly element: HTMLElement;
  show(state: PlotsState): void;
  /** What the sheet of their pictures says of itself. */
  showPictures(pictures: readonly PlotPictureState[]): void;
  /** The sheet has changed, and what comes of it is not known yet. */
  wait(): void;
}

export interface PlotsParts {
  readonly workbook: LiveWorkbook;
  readonly table: TableTemplate;
  readonly actions: Actions;
  readonly tools: PaneTools;
}

export function createPlotsSection({ workbook, table, actions, tools }: PlotsParts): PlotsSection {
  const { element: all, heading } = section('plots', words.heading);
  const hint = element('p', { class: 'hint' });
  const mayAdd = workbook.cannotAddRows !== true;
  const older = element('p', { class: 'hint', hidden: mayAdd }, words.cannotAdd);
  const desk = createPlotDesk(workbook, table, actions, (state) => show(state));
  const editor = createPlotEditor(desk, tools.nearestNames, (wasNew) =>
    wasNew ? focusUnlessElsewhere(add) : desk.list.focus(),
  );
  const add = desk.button(words.add, () => editor.open(null));
  const onChosen = createPlotActions(
    desk,
    (read, index) => editor.open({ read, index }),
    () => focusUnlessElsewhere(add),
  );
  const putPasted = async (inputs: readonly InputRow[], onDone: () => void): Promise<void> => {
    const read = desk.lines();
    if (read === null) return;
    await desk.write(read, addLines(read, inputs), pane.undo.pastePlots, countUsed(read));
    desk.notice.say(fill(pane.paste.done, { count: inputs.length }));
    onDone();
  };
  const paste = createPastePart({
    table,
    nearestNames: tools.nearestNames,
    takenNames: () => {
      const read = desk.lines();
      return read === null ? new Set() : takenNames(read);
    },
    addButton: actions.add,
    put: (inputs, onDone) => desk.run(() => putPasted(inputs, onDone)),
  });
  const succession = createSuccessionPart(desk, tools);
  const picture = createPlotPicture(desk, tools);

  let used = 0;
  const sayHeading = (isWaiting: boolean): void => {
    const counted = used === 0 ? words.heading : fill(words.headingCount, { count: used });
    setText(heading, isWaiting ? fill(pane.calculating, { heading: counted }) : counted);
    desk.list.element.setAttribute('aria-busy', String(isWaiting));
  };
  const show = (state: PlotsState): void => {
    const isThere = typeof state === 'object';
    used = isThere ? countUsed(state.lines) : 0;
    sayHeading(used > 0 && isThere && !state.isSettled);
    setText(hint, isThere ? words.none : state === 'absent' ? sayAbsent() : words.damaged);
    hint.hidden = used > 0;
    for (const part of [add, paste]) part.hidden = !isThere || !mayAdd;
    for (const part of [onChosen, picture.element, desk.list.element]) part.hidden = used === 0;
    succession.hidden = used === 0 || !mayAdd;
    if (!isThere) return;
    const { lines, units } = state.lines;
    const rows = lines.slice(0, used).map((line, index) => plotRow(line, index, units, state.isSettled));
    desk.list.show(rows);
    editor.show(state);
    picture.show(state);
  };
  all.append(
    element('p', { class: 'lead' }, words.lead),
    hint,
    older,
    desk.list.element,
    onChosen,
    element('div', { class: 'buttons' }, add),
    editor.element,
    picture.element,
    succession,
    paste,
    desk.notice.element,
  );
  desk.show('absent');
  return {
    element: all,
    show: desk.show,
    showPictures: picture.showSheet,
    wait: () => sayHeading(used > 0),
  };
}

function sayAbsent(): string {
  return fill(words.noSheet, { fill: pane.sheets.fill });
}
