/** What a person does at the grid, with mouse and keyboard alone: go to a cell, type, copy what is shown. */
import type { Page } from 'playwright-core';
import { vi } from 'vitest';

/** The grid's editor follows a key press a moment later. */
const momentMs = 300;
/** For a machine under load. */
const patience = { timeout: 60_000, interval: 100 };

export interface GridHands {
  /** The address that the grid's name box shows. */
  where(): Promise<string>;
  goTo(address: string): Promise<void>;
  press(keys: string): Promise<void>;
  /** Each text into the next cell to the right, from `address` on. An empty text passes a cell over. */
  typeAlong(address: string, texts: readonly string[]): Promise<void>;
  /** What the cells of the area show, line by line. */
  shown(area: string): Promise<string[][]>;
}

export function gridHands(page: Page): GridHands {
  const nameBox = page.locator('[data-u-comp="defined-name"] input');
  const press = async (keys: string): Promise<void> => {
    await page.keyboard.press(keys);
    await page.waitForTimeout(momentMs);
  };
  const goTo = async (address: string): Promise<void> => {
    await nameBox.click();
    await nameBox.fill(address);
    await press('Enter');
  };
  const readClipboard = (): Promise<string> => page.evaluate(() => navigator.clipboard.readText());
  return {
    where: () => nameBox.inputValue(),
    goTo,
    press,
    async typeAlong(address, texts) {
      await goTo(address);
      for (const text of texts) {
        const from = await nameBox.inputValue();
        const hasMoved = async (): Promise<boolean> => (await nameBox.inputValue()) !== from;
        // Typed again until it is taken: a grid that is just being drawn anew lets keys pass.
        await vi.waitUntil(async () => {
          await page.keyboard.type(text, { delay: 30 });
          await press('Tab');
          const isTaken = await vi.waitUntil(hasMoved, { ...patience, timeout: 10_000 }).catch(() => false);
          if (!isTaken) await goTo(from);
          return isTaken;
        }, patience);
      }
    },
    async shown(area) {
      await page.evaluate(() => navigator.clipboard.writeText(''));
      // Asked again until it is there: a grid that is just being drawn anew lets keys pass.
      const copied = await vi.waitUntil(async () => {
        await goTo(area);
        await press('Control+c');
        return readClipboard();
      }, patience);
      await press('Escape');
      return copied.split('\n').map((line) => line.split('\t'));
    },
  };
}
