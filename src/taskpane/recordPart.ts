/** A daily record out of rows that were copied, or out of a text file: looked at first, then put into the sheets. */
import { refuseHugeFile } from '../workbook/fileLimits';
import { decodeText } from '../workbook/decodeText';
import { todaySerial } from '../workbook/today';
import { inWords } from '../templates/inWords';
import { sayChoice } from '../templates/sayChoice';
import type { WeatherRecord } from '../templates/weather';
import type { Hemisphere, ReadWeather, Units } from '../templates/weatherTools';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';
import { createPasteField } from './pasteField';

const words = catalogue.pane.weather.record;
const hemispheres = inWords(['north', 'south']);

export interface RecordParts {
  readonly readWeather: ReadWeather;
  readonly addButton: (button: HTMLButtonElement) => void;
  /** An action whose failure is said. */
  readonly run: (action: () => Promise<void>) => void;
  readonly warn: (sentence: string) => void;
  readonly put: (record: WeatherRecord, hemisphere: Hemisphere) => Promise<void>;
}

export interface RecordPart {
  readonly element: HTMLElement;
  /** Once the record is in the sheets. */
  clear(): void;
  /** To the rows. */
  focus(): void;
}

export function createRecordPart({ readWeather, addButton, run, warn, put: putIn }: RecordParts): RecordPart {
  const field = createPasteField('given record', 6, words, () => look());
  const { area } = field;
  const units = createChoice('given units', words.units, words.unitsHelp, words.unitsChoices);
  const hemisphere = createChoice(
    'given hemisphere',
    words.hemisphere,
    words.hemisphereHelp,
    Object.fromEntries(hemispheres.choices.map((choice) => [choice, sayChoice(hemispheres, choice)])),
  );
  const state = element('p', { role: 'status', class: 'hint' });
  const doubts = element('ul', { class: 'problems' });
  const put = element('button', { type: 'button', class: 'main', hidden: true });
  const clear = element('button', { type: 'button', hidden: true }, words.clear);
  const load = element('button', { type: 'button' }, words.load);
  // Pressed by the button, which says what it is for.
  const chooser = element('input', { type: 'file', accept: '.csv,.tsv,.txt', hidden: true });
  for (const button of [put, clear, load]) addButton(button);
  let record: WeatherRecord | null = null;
  const placed = (): Hemisphere => (hemisphere.select.value === 'south' ? 'south' : 'north');

  const look = (): void => {
    const chosen = units.select.value;
    const read =
      area.value.trim() === ''
        ? null
        : readWeather(area.value, {
            units: chosen === '' ? undefined : (chosen as Units),
            hemisphere: placed(),
            today: todaySerial(),
          });
    record = read?.record ?? null;
    setText(state, read === null ? '' : record === null ? words.stopped : read.found);
    doubts.replaceChildren(
      ...(read?.doubts ?? []).map(({ line, sentence, stops }) =>
        element('li', stops ? { class: 'wrong' } : {}, fill(words.line, { line, sentence })),
      ),
    );
    // A button that disappears must not take the focus with it.
    if (record === null && document.activeElement === put) area.focus();
    put.hidden = record === null;
    clear.hidden = area.value === '';
    setText(put, fill(words.put, { count: record?.days.length ?? 0 }));
  };
  for (const { select } of [units, hemisphere]) select.addEventListener('input', look);
  put.addEventListener('click', () => {
    const given = record;
    if (given !== null) run(() => putIn(given, placed()));
  });
  load.addEventListener('click', () => chooser.click());
  chooser.addEventListener('change', () => {
    const file = chooser.files?.[0];
    if (file !== undefined) {
      run(async () => {
        refuseHugeFile(file.name, file.size);
        const text = decodeText(new Uint8Array(await file.arrayBuffer()));
        if (text === null) return warn(fill(catalogue.commands.plan.notUtf8, { file: file.name }));
        area.value = text;
        look();
      });
    }
    // The same file can be chosen again.
    chooser.value = '';
  });
  const empty = (): void => {
    area.value = '';
    look();
  };
  clear.addEventListener('click', () => {
    empty();
    area.focus();
  });

  return {
    element: element(
      'div',
      {},
      element('h3', {}, words.heading),
      field.element,
      element('div', { class: 'fields' }, units.element, hemisphere.element),
      element('div', { class: 'buttons' }, load, clear),
      chooser,
      state,
      doubts,
      element('div', { class: 'buttons' }, put),
    ),
    clear: empty,
    focus: () => area.focus(),
  };
}

interface Choice {
  readonly element: HTMLElement;
  readonly select: HTMLSelectElement;
}

function createChoice(
  name: string,
  label: string,
  help: string,
  choices: Readonly<Record<string, string>>,
): Choice {
  const id = paneId(name);
  const options = Object.entries(choices).map(([value, text]) => element('option', { value }, text));
  const select = element('select', { id, name, 'aria-describedby': `${id}-help` }, ...options);
  return {
    element: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, label),
      element('div', { class: 'control' }, select),
      element('p', { id: `${id}-help`, class: 'help' }, help),
    ),
    select,
  };
}
