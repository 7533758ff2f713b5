/**
 * The whole pane in a browser, with everything in it opened and with mistakes in its fields: axe-core finds nothing in
 * light, dark and a contrast theme, nothing sticks out, nothing moves by itself, and the keyboard goes through it in
 * order. What there is to open is taken from the page, so that a new section is looked at as well.
 */
import axe from 'axe-core';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { english } from '../../src/texts/english';
import { threeYears } from '../commands/recordText';
import { contrast, luminance } from '../contrast';
import { openPlanPage, type PaneHands, type PlanPage } from './gridPage/planPage';

/** After a press the browser takes for half a second what moves to be wanted. */
const unwantedMs = 500;
const narrow = { width: 320, height: 900 };
const wide = { width: 600, height: 900 };

describe('the pane as a whole', { timeout: 240_000 }, () => {
  let open: PlanPage;
  let pane: PaneHands;
  beforeAll(async () => {
    open = await openPlanPage();
    pane = open.pane;
  }, 240_000);
  afterAll(() => open.close());

  /** What moved in the pane although nobody had pressed anything, since the page was opened or since the last call. */
  let seenUntil = -1;
  const moved = async (): Promise<string[]> => {
    await open.page.waitForTimeout(3 * unwantedMs);
    const shifts = await open.page.evaluate(
      (after) =>
        new Promise<{ at: number; moved: string[] }[]>((resolve) => {
          const observer = new PerformanceObserver((list) => {
            observer.disconnect();
            const root = document.querySelector('#pane');
            const entries = list.getEntries() as (PerformanceEntry & {
              readonly hadRecentInput: boolean;
              readonly sources: readonly { readonly node: Node | null }[];
            })[];
            resolve(
              entries
                .filter(({ startTime, hadRecentInput }) => startTime > after && !hadRecentInput)
                .map(({ startTime, sources }) => ({
                  at: startTime,
                  // The grid's own toolbar arranges itself; what is asked here is the pane.
                  moved: sources.flatMap(({ node }) =>
                    node !== null && root?.contains(node) ? [node.textContent?.slice(0, 60) ?? ''] : [],
                  ),
                })),
            );
          });
          observer.observe({ type: 'layout-shift', buffered: true });
          // Without an entry the observer is silent.
          setTimeout(() => resolve([]), 1000);
        }),
      seenUntil,
    );
    seenUntil = Math.max(seenUntil, ...shifts.map(({ at }) => at));
    return shifts.flatMap((shift) => shift.moved);
  };
  const pressed = async (one: Locator, what: string): Promise<void> => {
    await one.click();
    expect(await moved(), what).toEqual([]);
  };

  test('nothing in it moves by itself while the page opens', async () => {
    expect(await moved()).toEqual([]);
  });

  test('nothing moves by itself when a section is opened', async () => {
    const sections = await pane.root.locator('section').all();
    expect(sections.length).toBeGreaterThan(10);
    for (const section of sections) {
      const name = (await section.locator('h2').first().textContent()) ?? '';
      for (const summary of await section.locator('summary:visible').all()) await pressed(summary, name);
      // A section with one button and nothing else is fetched when it is pressed.
      const controls = section.locator(':is(button, input, select, textarea, summary):visible');
      if ((await controls.count()) === 1 && (await section.locator('button:visible').count()) === 1) {
        await pressed(section.locator('button:visible'), name);
        await expect.poll(() => controls.count(), { timeout: 60_000 }).toBeGreaterThan(1);
        expect(await moved(), name).toEqual([]);
      }
    }
  });

  test('a question is left by Escape, and the keyboard goes back to where it was asked', async () => {
    await pane.root.getByRole('radio').first().check();
    await pane.press('Remove');
    const removeIt = pane.root.getByRole('button', { name: 'Remove it' });
    await expect.poll(() => removeIt.evaluate((one) => one === document.activeElement)).toBe(true);
    await open.page.keyboard.press('Escape');
    expect(await removeIt.isVisible()).toBe(false);
    const radio = pane.root.getByRole('radio').first();
    expect(await radio.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  /** Where the cell is read on the page: where the caret stands after a figure that is typed into it and taken back. */
  const placeOf = async (cell: string): Promise<{ x: number; y: number }> => {
    await open.hands.goTo(cell);
    await open.hands.press('1');
    const caret = open.page.locator('#grid [data-u-comp="editor"]').first();
    const place = async (): Promise<{ x: number; y: number } | null> => {
      const box = await caret.boundingBox();
      return box !== null && box.x > 0 && box.y > 0 ? { x: box.x, y: box.y } : null;
    };
    await expect.poll(place, { timeout: 20_000 }).not.toBeNull();
    const found = await place();
    await open.hands.press('Escape');
    if (found === null) throw new Error(`no caret in ${cell}`);
    return found;
  };

  /** Of the pane as it stands. */
  const looksGood = (): void => {
    for (const size of [narrow, wide]) {
      test(`nothing sticks out at ${size.width} px`, async () => {
        await open.page.setViewportSize(size);
        const beyond = (): Promise<string[]> =>
          pane.root.evaluate((root) =>
            [root, ...root.querySelectorAll('header, section')]
              .filter((one) => one.scrollWidth > one.clientWidth)
              .map((one) => `${one.id} ${one.textContent?.slice(0, 60)}`),
          );
        await expect.poll(beyond, { timeout: 20_000 }).toEqual([]);
      });

      for (const look of ['light', 'dark', 'contrast'] as const) {
        test(`axe-core finds nothing at ${size.width} px, ${look}`, async () => {
          await open.page.setViewportSize(size);
          await open.page.emulateMedia({
            colorScheme: look === 'light' ? 'light' : 'dark',
            forcedColors: look === 'contrast' ? 'active' : 'none',
          });
          await open.page.evaluate(axe.source);
          const { passes, violations } = await open.page.evaluate(async () => {
            const { axe: there } = window as unknown as { axe: typeof axe };
            const found = await there.run('#pane', {
              resultTypes: ['violations'],
              rules: { 'target-size': { enabled: true } },
            });
            return {
              passes: found.passes.length,
              violations: found.violations.map(
                ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' ')}`,
              ),
            };
          });
          expect(violations).toEqual([]);
          expect(passes).toBeGreaterThan(10);
        });
      }
    }
  };

  /** All but the homework, whose sheet takes the place of the plots in front. */
  describe('with results in its sections', () => {
    const { questions, weather, crops } = english.pane;

    beforeAll(async () => {
      const functions = pane.section('Functions');
      await functions.getByLabel(english.pane.functionList.search).fill('spacing');
      await open.page.keyboard.press('Enter');
      const compared = pane.section(crops.heading).getByRole('checkbox');
      for (const one of [0, 1, 2]) await compared.nth(one).check();
      const asked = pane.section(questions.heading);
      await asked.getByLabel(questions.seed.plants.label).fill('100');
      await asked.getByLabel(questions.seed.germination.label).fill('85');
      await pane.press(questions.seed.button);
      await pane.press(questions.fits.button);
      await pane.says(/seeds, at 85/);
      await pane
        .section(weather.heading)
        .locator('input[type=file]')
        .setInputFiles({ name: 'record.csv', mimeType: 'text/csv', buffer: Buffer.from(threeYears) });
      await pane.press('Put 1095 days into the Weather sheets');
      await pane.says('1095 days were put into Weather, Weather record.');
      await pane.press(english.pictures.pane.draw);
      await pane.section(weather.heading).locator('svg').first().waitFor({ timeout: 60_000 });
      await pane.root.getByRole('radio').first().check();
      await pane.press(english.pane.plots.show);
      const cell = await open.plots.addressOf(0, 'Seed to sow');
      await open.hands.goTo(cell);
      await pane.says(`Working of Plots ${cell}`);
    }, 240_000);

    looksGood();
  });

  describe('with everything opened, asked and mistyped', () => {
    beforeAll(async () => {
      await pane.root.getByRole('radio').first().check();
      await pane.press('Change');
      await pane.press('Remove');
      await pane.root.evaluate((root) => {
        for (const details of root.querySelectorAll('details')) details.open = true;
        for (const form of root.querySelectorAll('form')) {
          for (const field of form.querySelectorAll<HTMLInputElement>('input.number')) {
            field.value = 'x';
            field.dispatchEvent(new Event('input', { bubbles: true }));
          }
          form.requestSubmit();
        }
      });
      await pane.says(/"x" is not a number/);
    });

    looksGood();

    test('in a contrast theme what is chosen, and what stands in a cell, differs from its ground', async () => {
      await open.page.setViewportSize({ width: 1200, height: 700 });
      await open.page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active' });
      const coloursOf = (png: Buffer): Promise<string[]> =>
        open.page.evaluate(
          async (bytes) => {
            const picture = await createImageBitmap(new Blob([Uint8Array.from(bytes)]));
            const brush = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
            brush?.drawImage(picture, 0, 0);
            const dots = brush?.getImageData(0, 0, picture.width, picture.height).data ?? [];
            const hex = (value: number): string => value.toString(16).padStart(2, '0');
            return Array.from({ length: dots.length / 4 }, (_, i) =>
              Array.from(dots.slice(4 * i, 4 * i + 3), hex).join(''),
            );
          },
          [...png],
        );
      /** Of the darkest and the lightest dot. WCAG 2.2 asks for 3 of what is no text, and for 4.5 of text. */
      const contrastIn = async (png: Buffer): Promise<number> => {
        const sorted = (await coloursOf(png)).sort(
          (one, other) => luminance(`#${one}`) - luminance(`#${other}`),
        );
        return contrast(`#${sorted[0]}`, `#${sorted.at(-1)}`);
      };
      const radio = pane.root.locator('.line [type=radio]:checked');
      await expect
        .poll(async () => contrastIn(await radio.screenshot()), { timeout: 20_000 })
        .toBeGreaterThan(3);
      const clip = { ...(await placeOf(await open.plots.addressOf(0, 'Plants'))), width: 60, height: 16 };
      expect(await contrastIn(await open.page.screenshot({ clip }))).toBeGreaterThan(4.5);
    });

    test('Tab goes through all of it from top to bottom, always seen', async () => {
      await open.page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
      await pane.root.evaluate((root) => {
        const stops = ':is(a, button, input, select, textarea, summary, [tabindex="0"])';
        const all = [...root.querySelectorAll<HTMLElement>(stops)].filter((one) => one.checkVisibility());
        // Of radio buttons the chosen one is the stop.
        const isStop = (one: HTMLElement): boolean =>
          !(one instanceof HTMLInputElement && one.type === 'radio') || one.checked;
        const wanted = all.filter(isStop);
        Object.assign(window, { wanted });
        wanted[0]?.focus();
      });
      const count = await open.page.evaluate(
        () => (window as unknown as { wanted: unknown[] }).wanted.length,
      );
      expect(count).toBeGreaterThan(60);
      let at = 0;
      // A date has three stops in it and its button.
      for (let step = 0; step < 5 * count && at < count - 1; step++) {
        await open.page.keyboard.press('Tab');
        const now = await open.page.evaluate(() => {
          const { activeElement } = document;
          const { wanted } = window as unknown as { wanted: readonly Element[] };
          const box = activeElement?.getBoundingClientRect();
          return {
            at: activeElement === null ? -1 : wanted.indexOf(activeElement),
            isMarked: activeElement !== null && getComputedStyle(activeElement).outlineStyle !== 'none',
            isInSight: box !== undefined && box.bottom > 0 && box.top < innerHeight,
            what: activeElement?.outerHTML.slice(0, 120),
          };
        });
        expect(now, now.what).toMatchObject({ isMarked: true, isInSight: true });
        expect([at, at + 1], now.what).toContain(now.at);
        at = now.at;
      }
      expect(at).toBe(count - 1);
      expect(open.troubles).toEqual([]);
    });
  });
});
