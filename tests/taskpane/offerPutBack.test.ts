// @vitest-environment jsdom
import { expect, test, vi } from 'vitest';
import { offerPutBack, type Restorable } from '../../src/taskpane/offerPutBack';
import { HostError } from '../../src/workbook/port';

interface Offer {
  readonly root: HTMLElement;
  readonly putBack: ReturnType<typeof vi.fn<Restorable['putBack']>>;
  /** Whether the pane may open now. */
  isOver(): boolean;
  press(text: string): Promise<void>;
}

async function offer(findCutOff: Restorable['findCutOff']): Promise<Offer> {
  const root = document.createElement('main');
  const putBack = vi.fn<Restorable['putBack']>(async () => undefined);
  let over = false;
  void offerPutBack(root, { findCutOff, putBack }).then(() => {
    over = true;
  });
  const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
  await settle();
  return {
    root,
    putBack,
    isOver: () => over,
    async press(text) {
      const button = [...root.querySelectorAll('button')].find((one) => one.textContent === text);
      if (button === undefined) throw new Error(`no button says ${text}`);
      button.click();
      await settle();
    },
  };
}

const cutOff = async (): Promise<string> => 'Fill the sheets';

test('nothing is shown when nothing was cut off, or when that cannot be read', async () => {
  for (const find of [async () => null, () => Promise.reject(new HostError({ code: 'noAnswer' }))]) {
    const { root, isOver } = await offer(find);
    expect(isOver()).toBe(true);
    expect(root.textContent).toBe('');
  }
});

test('names the change and waits; put back, the pane opens', async () => {
  const { root, isOver, press, putBack } = await offer(cutOff);
  expect(root.querySelector('[role=alert]')?.textContent).toMatch(/"Fill the sheets" was cut off/);
  expect(isOver()).toBe(false);
  await press('Put it back');
  expect(putBack).toHaveBeenCalledTimes(1);
  expect(isOver()).toBe(true);
});

test('left for now, the pane opens and nothing is touched', async () => {
  const { isOver, press, putBack } = await offer(cutOff);
  await press('Leave it for now');
  expect(putBack).not.toHaveBeenCalled();
  expect(isOver()).toBe(true);
});

test('what is in the way is said, and can be tried again', async () => {
  const { root, isOver, press, putBack } = await offer(cutOff);
  putBack.mockRejectedValueOnce(new HostError({ code: 'sheetLocked', sheet: 'Plots' }));
  await press('Put it back');
  expect(root.textContent).toContain('The sheet "Plots" is protected');
  expect(isOver()).toBe(false);
  await press('Put it back');
  expect(isOver()).toBe(true);
});

test('while it works, a second click does nothing', async () => {
  const { isOver, press, putBack } = await offer(cutOff);
  let finish = (): void => undefined;
  putBack.mockImplementation(
    () =>
      new Promise((resolve) => {
        finish = resolve;
      }),
  );
  await press('Put it back');
  await press('Put it back');
  await press('Leave it for now');
  expect(putBack).toHaveBeenCalledTimes(1);
  expect(isOver()).toBe(false);
  finish();
  await vi.waitFor(() => expect(isOver()).toBe(true));
});
