/** What Notes says of a plot, computed by the file host. */
import { describe, expect, it } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { InputRow } from '../../src/workbook/template';

const { remarks } = english.sheets.plots;
const noStandard = 'The reference has no germination standard for this crop: fill in Germination.';

async function notesOf(plot: InputRow): Promise<string> {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  const inputs = [{ Plot: 'field', Length: 50, Width: 20, 'Yield per 100': 100, ...plot }];
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? inputs : [],
      form: demoSeason,
    })),
    'test',
  );
  const table = await workbook.readTable('Plots');
  return String(table?.rows[0]?.[table.headers.indexOf('Notes')]);
}

describe('germination against the federal standard (7 CFR 201.31: muskmelon 75 %, gourd not listed)', () => {
  it.each<[string, InputRow, string]>([
    ['below it', { Crop: 'muskmelon', Germination: 0.74 }, remarks.belowStandard],
    ['under 0, where Seed to sow says what is wrong', { Crop: 'muskmelon', Germination: -0.5 }, ''],
    ['at it', { Crop: 'muskmelon', Germination: 0.75 }, ''],
    ['left blank', { Crop: 'muskmelon' }, ''],
    ['of a crop without one', { Crop: 'gourd', Germination: 0.3 }, ''],
    ['of a crop without one, left blank', { Crop: 'gourd' }, noStandard],
    ['of a crop that is not known', { Crop: 'gord', Germination: 0.3 }, remarks.cropUnknown],
  ])('%s', async (_, plot, expected) => {
    expect((await notesOf(plot)).trim()).toBe(expected);
  });
});

describe('a triploid watermelon', () => {
  it('alone is told of pollen and of the seed for its pollenizers, in words that go together', async () => {
    const notes = await notesOf({ Crop: 'seedless watermelon', Germination: 0.9 });
    expect(notes).toBe(
      `${english.verdicts['no pollenizer']} ${remarks.pollenizerSeed} ${remarks.pollenizerYield} `,
    );
    expect(notes).not.toMatch(/Add one/);
  });
});
