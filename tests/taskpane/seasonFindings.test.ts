/** What stands alone when the Season sheet itself is wrong, computed by the file host. */
import { expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { findInSeason, withoutFollowers } from '../../src/taskpane/seasonFindings';
import { demoFilling, demoSeason } from '../../src/templates/demoGarden';
import { causesInPlots, plotsTable } from '../../src/templates/plots';
import { seasonTemplate } from '../../src/templates/season';
import { fillSheets } from '../../src/workbook/fillSheets';
import { findFindings } from '../../src/workbook/findFindings';
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
  const inSeason = findInSeason(seasonTemplate, form);
  const inPlots = await findFindings(workbook, plotsTable, 'Notes', causesInPlots);
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
