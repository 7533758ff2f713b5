/** One field over a cell: what the sheet says, what the person typed over it, and what is wrong with that. */
import type { ReadValue } from '../workbook/port';
import type { FormLine } from '../workbook/template';
import { sayChoice } from '../templates/sayChoice';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';
import {
  checkText,
  fieldKind,
  fieldText,
  sayUnshowable,
  sayValue,
  wrongDate,
  type Checked,
} from './fieldValue';

const { pane } = catalogue;

export interface FormField {
  readonly line: FormLine;
  readonly element: HTMLElement;
  /** Takes a new value from the sheet; a field that the person has changed keeps what was typed. */
  show(value: ReadValue, isInSheet: boolean): void;
  /** The unit behind the control; per cent has its own. */
  showUnit(unit: string): void;
  /** What a blank stands for. */
  showStandIn(sentence: string): void;
  shown(): ReadValue;
  isTouched(): boolean;
  check(): Checked;
  /** Whether the person is done with the field, so that what is wrong may be said. */
  isDone(): boolean;
  setDone(): void;
  markWrong(sentence: string | null): void;
  drop(): void;
  focus(): void;
}

type Control = HTMLInputElement | HTMLSelectElement;

/**
 * @param onEdit the text changed, or the person left the field
 * @param nearestNames for a choice that is typed
 */
export function createFormField(line: FormLine, onEdit: () => void, nearestNames?: NearestNames): FormField {
  const id = paneId(line.name);
  const isPercent = fieldKind(line) === 'percent';
  const part = (name: string): string => `${id}-${name}`;
  const parts = ['unit', 'note', 'wrong', 'stands-in', 'help'].map(part);
  const offered =
    fieldKind(line) === 'offer' ? [element('datalist', { id: part('offered') }, ...optionsOf(line))] : [];
  const control = createControl(line, id, parts.join(' '), part('offered'));
  const unit = element(
    'span',
    { id: part('unit'), hidden: !isPercent },
    isPercent ? pane.season.percent : '',
  );
  const note = element('p', { id: part('note'), class: 'note', hidden: true });
  const wrong = element('p', { id: part('wrong'), class: 'wrong', hidden: true });
  const standsIn = element('p', { id: part('stands-in'), class: 'help', hidden: true });
  const help = element('p', { id: part('help'), class: 'help', hidden: line.remark === '' }, line.remark);

  let sheetValue: ReadValue = null;
  let sheetText: string | null = '';
  let isInSheet = false;
  let done = true;

  /** A date half typed reads as nothing; the page knows better. */
  const isHalfTyped = (): boolean => control instanceof HTMLInputElement && control.validity.badInput;
  const isEdited = (): boolean => isHalfTyped() || control.value !== (sheetText ?? '');
  /** 90.0 for 90 is an edit, and yet nothing to write. */
  const isTouched = (): boolean => {
    if (!isEdited() || isHalfTyped()) return isEdited();
    const checked = checkText(line, control.value, nearestNames);
    return !('value' in checked) || checked.value !== (sheetValue === '' ? null : sheetValue);
  };
  const showSheet = (): void => {
    if (control.value !== (sheetText ?? '')) control.value = sheetText ?? '';
  };

  const showNote = (): void => {
    const value = sayValue(line, sheetValue);
    const sentence = value === '' || sheetValue === null ? pane.season.inSheetBlank : pane.season.inSheet;
    const isOther = isInSheet && isTouched();
    setText(note, isOther ? fill(sentence, { value }) : '');
    note.hidden = !isOther;
  };

  control.addEventListener('input', () => {
    if (wrong.hidden) done = false;
    showNote();
    onEdit();
  });
  control.addEventListener('blur', () => {
    done = true;
    if (!isTouched()) showSheet();
    onEdit();
  });

  return {
    line,
    element: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, line.label),
      element('div', { class: 'control' }, control, unit, ...offered),
      note,
      wrong,
      standsIn,
      help,
    ),
    show(value, inSheet) {
      const isKept = isEdited() && (isTouched() || document.activeElement === control);
      sheetValue = value;
      sheetText = fieldText(line, value);
      isInSheet = inSheet;
      if (!isKept || (!isTouched() && document.activeElement !== control)) showSheet();
      showNote();
    },
    showUnit(text) {
      if (isPercent) return;
      setText(unit, text);
      unit.hidden = text === '';
    },
    showStandIn(sentence) {
      setText(standsIn, sentence);
      standsIn.hidden = sentence === '';
    },
    shown: () => sheetValue,
    isTouched,
    check() {
      if (isHalfTyped()) return wrongDate();
      if (sheetText === null && !isEdited()) return { wrong: sayUnshowable(line, sheetValue) };
      return checkText(line, control.value, nearestNames);
    },
    isDone: () => done,
    setDone() {
      done = true;
    },
    markWrong(sentence) {
      setText(wrong, sentence ?? '');
      wrong.hidden = sentence === null;
      if (sentence === null) control.removeAttribute('aria-invalid');
      else control.setAttribute('aria-invalid', 'true');
    },
    drop() {
      // Emptied first, which alone takes a half-typed date away.
      control.value = '';
      control.value = sheetText ?? '';
      done = true;
      showNote();
    },
    focus() {
      const around = control.closest('details');
      if (around !== null) around.open = true;
      control.focus();
    },
  };
}

function optionsOf(line: FormLine): HTMLElement[] {
  return line.choices.map((choice) => element('option', { value: choice }, sayChoice(line, choice)));
}

function createControl(line: FormLine, id: string, describedBy: string, list: string): Control {
  const common = { id, name: line.name, 'aria-describedby': describedBy };
  switch (fieldKind(line)) {
    case 'choice':
      return element(
        'select',
        common,
        element('option', { value: '' }, pane.season.choose),
        ...optionsOf(line),
      );
    case 'date':
      return element('input', { ...common, type: 'date', min: '1900-03-01', max: '9999-12-31' });
    case 'percent':
    case 'number':
      // Not type=number: that turns with the mouse wheel and hides what was typed when it is no number.
      return element('input', {
        ...common,
        type: 'text',
        inputmode: 'decimal',
        autocomplete: 'off',
        class: 'number',
      });
    case 'offer':
      return element('input', { ...common, type: 'text', autocomplete: 'off', list });
    case 'text':
      return element('input', { ...common, type: 'text', autocomplete: 'off' });
  }
}
