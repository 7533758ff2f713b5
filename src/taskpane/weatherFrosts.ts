/** The frost dates of the record beside those of Season, and the button that has Season follow. */
import { isCellError, type ReadValue } from '../workbook/port';
import { readForm, writeForm, type FormRead } from '../workbook/readForm';
import type { FormLine } from '../workbook/template';
import { seasonTemplate } from '../templates/season';
import { enoughSeasons, followWeather } from '../templates/weather';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, setText } from './elements';
import { sayValue } from './fieldValue';
import type { WeatherDesk } from './weatherDesk';

const words = catalogue.pane.weather.frosts;
/** Lines of Season that can follow a cell of the Weather sheet. */
const followers = seasonTemplate.form.filter(({ follows }) => follows !== undefined);
const labels = [words.last, words.first];

/** Whether Season can follow the cell, which then stands beside it here. */
export function isFollowable(name: string): boolean {
  return followers.some(({ follows }) => follows === name);
}

export interface WeatherFrosts {
  readonly element: HTMLElement;
  show(weather: FormRead, season: FormRead | null): void;
}

export function createWeatherFrosts(desk: WeatherDesk): WeatherFrosts {
  const { workbook, say, warn } = desk;
  const lead = element('p', { class: 'help' });
  const rows = followers.map((line, index) => ({
    line,
    record: element('td'),
    season: element('td'),
    label: element('th', { scope: 'row' }, labels[index] ?? line.label),
  }));
  const table = element(
    'table',
    { class: 'compared' },
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        element('td', {}),
        element('th', { scope: 'col' }, words.record),
        element('th', { scope: 'col' }, words.season),
      ),
    ),
    element(
      'tbody',
      {},
      ...rows.map(({ label, record, season }) => element('tr', {}, label, record, season)),
    ),
  );
  const follow = element('button', { type: 'button' }, words.follow);
  const follows = element('p', { class: 'help', hidden: true }, words.follows);
  const caution = element('p', { class: 'hint', hidden: true });
  desk.addButton(follow);
  let weather: FormRead | null = null;

  const write = async (): Promise<void> => {
    const wrong = followers.map(({ follows: name }) => weather?.values[name ?? ''] ?? null).find(isCellError);
    if (wrong !== undefined) return warn(fill(words.error, { problem: wrong.message ?? wrong.error }));
    const season = await readForm(workbook, seasonTemplate);
    if (season === null) return warn(words.noRisk);
    const kept = followers.filter(({ name }) => season.computed.has(name) && !season.following.has(name));
    if (kept.length > 0) {
      return warn(fill(words.kept, { labels: kept.map(({ label }) => label).join(', ') }));
    }
    await writeForm(workbook, season, followWeather, catalogue.pane.undo.follow);
    await desk.refresh();
    say(words.followed);
  };
  follow.addEventListener('click', () => desk.run(write));

  return {
    element: element(
      'div',
      {},
      element('h3', {}, words.heading),
      lead,
      table,
      caution,
      follows,
      element('div', { class: 'buttons' }, follow),
    ),
    show(nextWeather, season) {
      weather = nextWeather;
      const risk = season?.values['FROST_RISK'];
      const year = season?.values['SEASON_YEAR'];
      const isAsked = typeof risk === 'number' && typeof year === 'number';
      const percent = isAsked ? `${Number((risk * 100).toPrecision(4))} %` : '';
      setText(lead, isAsked ? fill(words.risk, { risk: percent, year }) : words.noRisk);
      for (const { line, record, season: cell } of rows) {
        showDate(record, line, nextWeather.values[line.follows ?? ''] ?? null);
        showDate(cell, line, season?.values[line.name] ?? null);
      }
      const said = sayCaution(nextWeather.values['SEASONS_COUNTED'] ?? null);
      setText(caution, said);
      caution.hidden = said === '';
      const isFollowing = followers.every(({ name }) => season?.following.has(name) === true);
      follows.hidden = !isFollowing;
      follow.hidden = isFollowing || season === null;
    },
  };
}

/** Of no season at all the dates themselves say why they are none. */
function sayCaution(seasons: ReadValue): string {
  if (typeof seasons !== 'number' || seasons < 1 || seasons >= enoughSeasons) return '';
  return seasons === 1 ? words.one : fill(words.few, { count: seasons });
}

function showDate(cell: HTMLElement, line: FormLine, value: ReadValue): void {
  cell.classList.toggle('wrong', isCellError(value));
  setText(cell, value === null || value === '' ? words.none : sayValue(line, value));
}
