/** What stands alone when the Season sheet itself is wrong, computed by the file host. */
import { expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { findInForms, withoutFollowers } from '../../src/taskpane/seasonFindings';
import { demoFilling, demoSeason } from '../../src/templates/demoGarden';
import { findInPlots } from '../../src/templates/findInPlots';
import { seasonTemplate } from '../../src/templates/season';
import { followWeather, requestWeather, weatherTemplate } from '../../src/templates/weather';
import { fillSheets } from '../../src/workbook/fillSheets';
import { readForm } from '../../src/workbook/readForm';

async function errorsWith(season: typeof demoSeason) {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  await fillSheets(
    workbook,
    demoFilling.map((request) => ({ ...request, form: season })),
    'test',
  );
  const form = await readForm(workbook, seasonTemplate);
  if (form === null) throw new Error('no season');
  const inSeason = findInForms([[seasonTemplate, form]]);
  const inPlots = await findInPlots(workbook);
  return [...inSeason, ...withoutFollowers(inPlots, inSeason)]
    .filter(({ kind }) => kind === 'error')
    .map(({ header, text }) => `${header}: ${text}`);
}

it('is one sentence for frosts the wrong way round, however many plots there are', async () => {
  // 46400 is before demoSeason's last frost, 46509.
  expect(await errorsWith({ ...demoSeason, FIRST_FROST: 46400 })).toEqual([
    expect.stringMatching(/^Days between the frosts: The first frost \(.*\) must come after the last frost/),
  ]);
});

it('is one sentence for a first frost that is missing', async () => {
  expect(await errorsWith({ ...demoSeason, FIRST_FROST: null })).toEqual([
    'Days between the frosts: The first frost is missing. Fill it in.',
  ]);
});

it('leaves the errors of a plot where the season is in order', async () => {
  expect(await errorsWith(demoSeason)).toEqual([]);
  const reds = await errorsWith({ ...demoSeason, FROST_MARGIN: -1 });
  expect(reds.length).toBeGreaterThan(0);
});

it('leads to the Weather sheet where the Season follows it and it has no date (two winters without frost)', async () => {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  // From 1 January 2021.
  const days = Array.from({ length: 730 }, (_, i) => ({ serial: 44197 + i, high: 70, low: 50 }));
  await fillSheets(
    workbook,
    [
      ...demoFilling.map((request) => ({ ...request, form: { ...demoSeason, ...followWeather } })),
      ...requestWeather({ place: '', units: 'us', days }),
    ],
    'test',
  );
  const forms = [];
  for (const template of [weatherTemplate, seasonTemplate]) {
    const read = await readForm(workbook, template);
    if (read !== null) forms.push([template, read] as const);
  }
  const found = findInForms(forms).filter(({ kind }) => kind === 'error');
  expect(found.filter(({ text }) => text.startsWith('#'))).toEqual([]);
  expect(found[0]).toMatchObject({
    header: 'Last frost of spring',
    text: expect.stringMatching(/^It never froze in 1 season/),
    area: { ...(await workbook.locate('WEATHER_LAST_FROST')) },
  });
});
