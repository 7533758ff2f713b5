// @vitest-environment jsdom
import axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import { english } from '../../src/texts/english';
import { guide } from '../../src/texts/english/guide';
import { enter, fillFake, openPane, until, type OpenPane } from './openPane';

async function openCrops(prepare?: Parameters<typeof openPane>[0]): Promise<OpenPane> {
  const pane = await openPane(prepare);
  pane.button('Show the crops').click();
  await until(() => pane.field('Search the crops'));
  return pane;
}
const lines = (pane: OpenPane): HTMLElement[] => [
  ...pane.section('Crops').querySelectorAll<HTMLElement>('.lines > .line'),
];
const nameOf = (line: HTMLElement): string => line.querySelector('.line-name')?.textContent ?? '';
const listed = (pane: OpenPane): string[] =>
  lines(pane)
    .filter(({ hidden }) => !hidden)
    .map(nameOf);
function tick(pane: OpenPane, name: string): HTMLInputElement {
  const box = lines(pane)
    .find((line) => nameOf(line) === name)
    ?.querySelector('input');
  if (box == null) throw new Error(`no ${name}`);
  box.click();
  return box;
}
function select(pane: OpenPane, label: string, value: string): void {
  const field = pane.field(label);
  field.value = value;
  field.dispatchEvent(new Event('change'));
}
/** What is said under a heading, crop by crop. */
const said = (pane: OpenPane, heading: string): (string | null)[] => {
  const title = [...pane.section('Crops').querySelectorAll('h3')].find((one) => one.textContent === heading);
  return [...(title?.nextElementSibling?.querySelectorAll(':scope > div, li') ?? [])].map(
    (one) => one.textContent,
  );
};

describe('the crop guide in the pane', () => {
  it('lists every crop, and finds them by trade name, by use and by sign', async () => {
    const pane = await openCrops();
    expect(document.activeElement).toBe(pane.field('Search the crops'));
    expect(listed(pane)).toHaveLength(13);
    enter(pane.field('Search the crops'), 'zucchini');
    expect(listed(pane)).toEqual(['summer squash']);
    expect(pane.section('Crops').textContent).toContain('1 crop');
    enter(pane.field('Search the crops'), 'bulges');
    expect(listed(pane)).toEqual(['English cucumber']);
    enter(pane.field('Search the crops'), '');
    select(pane, 'Good for', guide.crops.uses.pickles);
    expect(listed(pane)).toEqual(['pickling cucumber', 'slicing cucumber', 'bush cucumber']);
    select(pane, 'Good for', guide.crops.uses.underCover);
    expect(listed(pane)).toEqual(['English cucumber']);
  });

  it('sets up to three side by side, keeps them in the list, and says why no fourth', async () => {
    const pane = await openCrops();
    for (const name of ['pickling cucumber', 'watermelon', 'gourd']) tick(pane, name);
    const spacing = said(pane, 'row spacing');
    expect(spacing).toHaveLength(3);
    expect(spacing[0]).toMatch(/^pickling cucumber4 to 6 ft/);
    expect(spacing[2]).toBe('watermelon8 ft');
    expect(said(pane, 'germination standard')[1]).toBe('gourdnone published');
    const fourth = tick(pane, 'muskmelon');
    expect(fourth.checked).toBe(false);
    expect(pane.spoken()).toContain('3 crops at most stand side by side');
    enter(pane.field('Search the crops'), 'muskmelon');
    expect(listed(pane)).toEqual(['pickling cucumber', 'gourd', 'muskmelon', 'watermelon']);
    tick(pane, 'gourd');
    expect(pane.spoken()).not.toContain('at most');
    expect(tick(pane, 'muskmelon').checked).toBe(true);
  });

  it('says sources when asked, and what has none always; cautions stand below', async () => {
    const pane = await openCrops();
    tick(pane, 'gourd');
    const text = (): string => pane.section('Crops').textContent ?? '';
    expect(text()).toContain('judgement');
    expect(text()).not.toContain('Iowa State University');
    pane.field('With sources').click();
    expect(text()).toContain('Iowa State University');
    expect(said(pane, 'Cautions')).toEqual([
      english.cautions.bitterFruit,
      english.cautions.treatedSeed,
      english.cautions.pesticides,
      english.cautions.canning,
    ]);
  });

  it('takes the units of the plan, and others when asked', async () => {
    const pane = await openCrops(async (workbook) => {
      await fillFake(workbook, []);
      workbook.type(workbook.named('UNITS'), 'metric');
    });
    expect(pane.field('Units of the figures').value).toBe('metric');
    tick(pane, 'watermelon');
    expect(said(pane, 'row spacing')).toEqual(['watermelon2.44 m']);
    select(pane, 'Units of the figures', 'us');
    expect(said(pane, 'row spacing')).toEqual(['watermelon8 ft']);
  });

  it('is in order for somebody who does not see the page', async () => {
    const pane = await openCrops();
    tick(pane, 'English cucumber');
    tick(pane, 'summer squash');
    document.documentElement.lang = 'en';
    document.title = 'pane';
    // What cannot be known without a laid-out page is computed in paneColours.test.ts and looked at.
    const { violations } = await axe.run(pane.section('Crops'), {
      rules: { 'color-contrast': { enabled: false } },
    });
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });
});
