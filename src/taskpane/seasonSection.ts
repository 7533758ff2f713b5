/** The season: fields over the Season sheet, both ways. */
import type { Converted } from '../workbook/convertCells';
import type { CellValue, LiveWorkbook } from '../workbook/port';
import { readForm, writeForm, type FormRead } from '../workbook/readForm';
import type { SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section, setText } from './elements';
import { createNotice } from './notice';
import { failureSentence } from './problemSentence';
import { createFormField, type FormField } from './formField';
import { createFormResults } from './formResults';
import { nameCells } from './nameCells';
import type { UnitSystem } from './paneTools';
import { checkFrosts, frostsField, isSeldomChanged, unitsField } from './seasonRules';
import { createUnitsQuestion, isOtherUnits, type UnitsAnswer } from './unitsQuestion';

const { pane } = catalogue;

export type SeasonState = FormRead | 'absent' | 'unreadable';

export interface SeasonSection {
  readonly element: HTMLElement;
  show(state: SeasonState): void;
  /** What a new sheet starts from; null while a field is wrong, which then has the focus. */
  valuesForNewSheet(): Readonly<Record<string, CellValue>> | null;
}

const words = pane.season;

/**
 * @param refresh reads everything anew, after the sheet was written
 * @param convert the typed numbers of the other sheets, in another system of units
 */
export function createSeasonSection(
  workbook: LiveWorkbook,
  template: SheetTemplate,
  actions: Actions,
  refresh: () => Promise<void>,
  convert: (to: UnitSystem) => Promise<Converted>,
): SeasonSection {
  const inputs = template.form.filter((line) => line.kind === 'input');
  const fields = inputs.map((line) => createFormField(line, () => showState()));
  const results = createFormResults(
    words.results,
    template.form.filter((line) => line.kind === 'computed'),
  );
  const { element: all, heading } = section('season', words.heading);
  const put = element('button', { type: 'submit', class: 'main' }, words.put);
  const back = element('button', { type: 'button', hidden: true }, words.back);
  const hint = element('p', { class: 'hint' });
  const notice = createNotice(actions);
  const form = createForm(heading.id, fields, hint, [put, back]);
  const question = createUnitsQuestion((answer) => {
    if (actions.isBusy()) return;
    question.hide();
    if (answer !== null) return run(answer);
    fields.find(({ line }) => line.name === unitsField)?.drop();
    showState();
  });
  all.append(
    element('p', { class: 'lead' }, words.lead),
    form,
    question.element,
    notice.element,
    results.element,
  );
  actions.add(put);
  actions.add(back);

  let state: SeasonState = 'absent';
  const isInSheet = (): boolean => typeof state === 'object';
  const following = (): ReadonlySet<string> => (typeof state === 'object' ? state.following : new Set());
  /** Without what follows another sheet: that changes by itself. */
  const typedIn = (of: SeasonState): readonly unknown[] =>
    typeof of === 'object' ? inputs.map(({ name }) => !of.following.has(name) && of.values[name]) : [];
  const touched = (): FormField[] => fields.filter((field) => field.isTouched());

  const showState = (): void => {
    for (const [field, wrong] of findWrong(fields, following()))
      field.markWrong(field.isDone() ? wrong : null);
    put.hidden = !isInSheet();
    const hasTouched = touched().length > 0;
    // A button that disappears must not take the focus with it.
    if (!hasTouched && document.activeElement === back) fields[0]?.focus();
    back.hidden = !hasTouched;
    hint.hidden = isInSheet();
    setText(hint, state === 'absent' ? fill(words.noSheet, { fill: pane.sheets.fill }) : words.damaged);
  };

  const show = (next: SeasonState): void => {
    if (!isSame(typedIn(next), typedIn(state))) notice.forgetGood();
    state = next;
    if (next !== 'unreadable') {
      for (const field of fields) {
        const { name, content } = field.line;
        const own = typeof content === 'object' ? null : content;
        field.show(next === 'absent' ? own : (next.values[name] ?? null), next !== 'absent');
        field.showStandIn(next !== 'absent' && next.following.has(name) ? words.follows : '');
      }
    }
    results.show(typeof next === 'object' ? next : null);
    showState();
  };

  /** Says what is wrong everywhere and goes to the first; null when nothing is. */
  const demandRight = (): number | null => {
    for (const field of fields) field.setDone();
    showState();
    const wrong = [...findWrong(fields, following())].filter(([, sentence]) => sentence !== null);
    wrong[0]?.[0].focus();
    return wrong.length === 0 ? null : wrong.length;
  };

  const run = (answer: UnitsAnswer | null): void =>
    void actions.run(() => write(answer).catch((cause: unknown) => notice.warn(failureSentence(cause))));

  const write = async (answer: UnitsAnswer | null): Promise<void> => {
    question.hide();
    const wrong = demandRight();
    if (wrong !== null) return notice.warn(fill(words.toMend, { count: wrong }));
    const mine = touched();
    if (mine.length === 0) return notice.say(words.nothingDiffers);
    const values = valuesOf(mine);
    const seen = new Map(mine.map((field) => [field, field.shown()]));
    const read = await readForm(workbook, template);
    if (read === null) return show('absent');
    show(read);
    // Somebody typed in the same cell since the field last showed it: that must be seen before it is replaced.
    if (mine.some((field) => !isSame(field.shown(), seen.get(field)) && field.isTouched())) {
      return notice.warn(words.otherMeanwhile);
    }
    const to = values[unitsField];
    const isOther =
      to !== undefined && !read.computed.has(unitsField) && isOtherUnits(to, read.values[unitsField]);
    const converted = isOther ? await convert(to === 'metric' ? 'metric' : 'us') : null;
    const count = converted === null ? 0 : converted.cells.length;
    if (answer === null && count > 0) return question.ask(fill(pane.units.ask, { count }), put);
    const along = (answer === 'convert' || count === 0 ? converted : null) ?? undefined;
    const kept = await writeForm(workbook, read, values, pane.undo.season, along);
    const isKept = ({ line }: FormField): boolean => kept.includes(line.name);
    const written = mine.filter((field) => !isKept(field));
    show({
      ...read,
      values: { ...read.values, ...valuesOf(written) },
      following: new Set(
        [...read.following].filter((name) => !written.some(({ line }) => line.name === name)),
      ),
    });
    const isLeft = along !== undefined && along.left.length > 0;
    const said = [
      ...(written.length === 0 ? [] : [fill(words.written, { labels: labelsOf(written) })]),
      ...(kept.length === 0 ? [] : [fill(words.kept, { labels: labelsOf(mine.filter(isKept)) })]),
      ...(along === undefined || count === 0 ? [] : [fill(pane.units.converted, { count })]),
      ...(isLeft ? [fill(pane.units.left, { cells: nameCells(along.left) })] : []),
    ].join(' ');
    if (kept.length > 0 || isLeft) notice.warn(said);
    else notice.say(said);
    await refresh();
  };

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    if (!isInSheet()) return;
    run(null);
  });
  back.addEventListener('click', () => {
    if (actions.isBusy()) return;
    for (const field of fields) field.drop();
    showState();
    notice.say(words.dropped);
  });

  show('absent');
  return {
    element: all,
    show,
    valuesForNewSheet: () => (demandRight() === null ? valuesOf(fields) : null),
  };
}

function createForm(
  labelledBy: string,
  fields: readonly FormField[],
  hint: HTMLElement,
  buttons: readonly HTMLElement[],
): HTMLFormElement {
  const seldom = fields.filter((field) => isSeldomChanged(field.line));
  const often = fields.filter((field) => !seldom.includes(field));
  const grid = (some: readonly FormField[]): HTMLElement =>
    element('div', { class: 'fields' }, ...some.map((field) => field.element));
  const more = element(
    'details',
    { hidden: seldom.length === 0 },
    element('summary', {}, words.seldom),
    grid(seldom),
  );
  const row = element('div', { class: 'buttons' }, ...buttons);
  return element('form', { novalidate: true, 'aria-labelledby': labelledBy }, grid(often), more, hint, row);
}

function labelsOf(fields: readonly FormField[]): string {
  return fields.map((field) => field.line.label).join(', ');
}

/** Every field with what is wrong with it; null where nothing is. What follows another sheet is mended there. */
function findWrong(
  fields: readonly FormField[],
  following: ReadonlySet<string>,
): Map<FormField, string | null> {
  const found = new Map<FormField, string | null>();
  for (const field of fields) {
    const isOfOther = following.has(field.line.name) && !field.isTouched();
    const checked = field.check();
    found.set(field, 'wrong' in checked && !isOfOther ? checked.wrong : null);
  }
  const frosts = fields.find((field) => field.line.name === frostsField);
  if (frosts !== undefined && found.get(frosts) === null) found.set(frosts, checkFrosts(valuesOf(fields)));
  return found;
}

/** A field that is wrong has no value. */
function valuesOf(fields: readonly FormField[]): Record<string, CellValue> {
  const values: Record<string, CellValue> = {};
  for (const field of fields) {
    const checked = field.check();
    if ('value' in checked) values[field.line.name] = checked.value;
  }
  return values;
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
