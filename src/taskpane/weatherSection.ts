/** The weather: a record into its sheets, and what they make of it. */
import { isCellError, type LiveWorkbook, type ReadValue, type TableRead } from '../workbook/port';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { weatherTemplate, type WeatherRecord } from '../templates/weather';
import type { Hemisphere } from '../templates/weatherTools';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { createAsks } from './asks';
import { element, section, setText } from './elements';
import { createFormResults } from './formResults';
import { createNotice } from './notice';
import type { PaneTools } from './paneTools';
import { failureSentence } from './problemSentence';
import { findRecord, putRecord, type RecordThere } from './putRecord';
import type { PlotsState } from './readPlots';
import type { WeatherSheetRead, WeatherState } from './readWeatherSheet';
import { createRecordPart } from './recordPart';
import { sayDay } from './sayDay';
import type { SeasonState } from './seasonSection';
import { createWeatherChoices } from './weatherChoices';
import type { WeatherDesk } from './weatherDesk';
import { createWeatherFrosts, isFollowable } from './weatherFrosts';
import { createWeatherPictures } from './weatherPictures';

const { pane } = catalogue;
const words = pane.weather;
const { heatByCrop } = catalogue.weather;

export interface WeatherSection {
  readonly element: HTMLElement;
  show(weather: WeatherState, season: SeasonState, plots: PlotsState): void;
}

export interface WeatherParts {
  readonly workbook: LiveWorkbook;
  readonly actions: Actions;
  readonly tools: PaneTools;
  readonly refresh: () => Promise<void>;
}

export function createWeatherSection({ workbook, actions, tools, refresh }: WeatherParts): WeatherSection {
  const { element: all } = section('weather', words.heading);
  const hint = element('p', { class: 'hint' });
  const notice = createNotice(actions);
  const run = (action: () => Promise<void>): void =>
    void actions.run(() => action().catch((cause: unknown) => notice.warn(failureSentence(cause))));
  const { say, warn } = notice;
  const desk: WeatherDesk = { workbook, addButton: actions.add, run, say, warn, refresh };

  const replace = element('button', { type: 'button' }, words.record.replace);
  const leave = element('button', { type: 'button' }, words.record.leave);
  const asks = createAsks('replace-record', [replace, leave]);
  let asked: { readonly record: WeatherRecord; readonly hemisphere: Hemisphere } | null = null;

  const put = async (record: WeatherRecord, hemisphere: Hemisphere, there: RecordThere | null) => {
    const count = record.days.length;
    if (there !== null && workbook.cannotAddRows === true && count > there.rows) {
      return warn(words.record.cannotAdd);
    }
    say(words.record.working);
    const made = await putRecord(workbook, record, hemisphere);
    recordPart.clear();
    await refresh();
    say(
      made.length === 0
        ? fill(words.record.replaced, { count })
        : fill(words.record.made, { count, sheets: made.join(', ') }),
    );
  };
  const recordPart = createRecordPart({
    readWeather: tools.readWeather,
    addButton: actions.add,
    run,
    warn,
    async put(record, hemisphere) {
      const there = await findRecord(workbook);
      if (there === null || there.count === 0) return put(record, hemisphere, there);
      asked = { record, hemisphere };
      const { count, first, last } = there;
      const days = { count, first: sayDay(first), last: sayDay(last) };
      asks.ask(fill(words.record.replaceAsk, days), recordPart);
    },
  });
  replace.addEventListener('click', () => {
    const given = asked;
    asks.hide();
    if (given !== null) {
      run(async () => put(given.record, given.hemisphere, await findRecord(workbook)));
    }
  });
  leave.addEventListener('click', asks.hide);
  actions.add(replace);

  const frosts = createWeatherFrosts(desk);
  const choices = createWeatherChoices(desk);
  const results = createFormResults(
    words.results,
    weatherTemplate.form.filter(({ kind, name }) => kind === 'computed' && !isFollowable(name)),
  );
  const pictures = createWeatherPictures({ ...desk, tools });
  const heats = element('dl', { class: 'states' });
  const sowings = element('p', {});
  const found = element(
    'div',
    { hidden: true },
    frosts.element,
    results.element,
    element('h3', {}, words.sowings),
    sowings,
    element('h3', {}, words.heats),
    heats,
    pictures.element,
    choices.element,
  );
  all.append(
    element('p', { class: 'lead' }, words.lead),
    hint,
    recordPart.element,
    asks.element,
    notice.element,
    found,
  );

  return {
    element: all,
    show(weather, season, plots) {
      const hasSheets = typeof season === 'object' && typeof plots === 'object';
      const isUnreadable = weather === 'unreadable';
      setText(hint, isUnreadable ? words.damaged : fill(words.noSheets, { fill: pane.sheets.fill }));
      hint.hidden = hasSheets && !isUnreadable;
      recordPart.element.hidden = !hint.hidden;
      found.hidden = typeof weather !== 'object';
      if (typeof weather !== 'object') return;
      frosts.show(weather.form, typeof season === 'object' ? season : null);
      results.show(weather.form);
      pictures.show(weather);
      choices.show(weather.form, typeof plots === 'object' ? plots.lines : null);
      setText(sowings, saySowings(weather));
      heats.replaceChildren(
        ...(weather.heats === null ? [] : listHeats(weather.heats, degreeDaysOf(weather))),
      );
    },
  };
}

function degreeDaysOf({ form }: WeatherSheetRead): string {
  const { degreeDays } = catalogue.weather;
  return form.values['RECORD_UNITS'] === 'metric' ? degreeDays.metric : degreeDays.us;
}

function saySowings({ form, sowings }: WeatherSheetRead): string {
  const wrong = sowings.find(isCellError);
  if (wrong !== undefined) return wrong.message ?? wrong.error;
  const dates = sowings.flatMap((cell) => (typeof cell === 'number' ? [sayDay(cell)] : []));
  const [first] = sowings;
  if (typeof first === 'string') return first;
  const inRecord = form.values['SOWING_IN_RECORD'];
  if (dates.length === 0 || typeof inRecord !== 'number') return words.noSowings;
  const year = isoOfDay(dayOfSerial(inRecord) ?? 0).slice(0, 4);
  return fill(words.sowingsBy, { year, dates: dates.join('; ') });
}

/** A crop stands twice where sources differ; both are shown with their base and who published it. */
function listHeats({ headers, rows }: TableRead, units: string): HTMLElement[] {
  const at = (row: readonly ReadValue[], { header }: { readonly header: string }): ReadValue =>
    row[headers.indexOf(header)] ?? null;
  return rows.map((row) => {
    const heat = at(row, heatByCrop.heat);
    const said =
      typeof heat === 'number'
        ? fill(words.heat, {
            heat: Math.round(heat),
            unit: units,
            days: String(at(row, heatByCrop.days)),
            base: String(at(row, heatByCrop.base)),
            publisher: String(at(row, heatByCrop.publisher)),
          })
        : isCellError(heat)
          ? (heat.message ?? heat.error)
          : String(heat ?? '');
    const name = element('dt', {}, String(at(row, heatByCrop.crop)));
    return element('div', {}, name, element('dd', isCellError(heat) ? { class: 'wrong' } : {}, said));
  });
}
