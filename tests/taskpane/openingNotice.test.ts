// @vitest-environment jsdom
import { expect, test, vi } from 'vitest';
import { showOpening, type OpeningNotice } from '../../src/taskpane/openingNotice';
import { english } from '../../src/texts/english';

function open(): {
  root: HTMLElement;
  notice: OpeningNotice;
  tryAgain: () => void;
  again: HTMLButtonElement;
} {
  const root = document.createElement('main');
  const tryAgain = vi.fn();
  const notice = showOpening(root, tryAgain);
  return { root, notice, tryAgain, again: root.querySelector('button') as HTMLButtonElement };
}

test('says at once what it waits for', () => {
  const { root, again } = open();
  expect(root.querySelector('h1')?.textContent).toBe('Cucurbit planning');
  expect(root.querySelector('[role=status]')?.textContent).toBe('Connecting to Excel…');
  expect(again.hidden).toBe(true);
});

test('when it takes long, says what to do, and offers another try', () => {
  const { root, notice, tryAgain, again } = open();
  notice.slow();
  expect(root.querySelector('[role=status]')?.textContent).toMatch(/not answered yet.*connection/);
  expect(again.hidden).toBe(false);
  again.click();
  expect(tryAgain).toHaveBeenCalledTimes(1);
});

test.each(Object.keys(english.pane.opening.reasons) as (keyof typeof english.pane.opening.reasons)[])(
  'when it will not come (%s), says why in an alert, and no longer that it waits',
  (reason) => {
    const { root, notice, again } = open();
    notice.slow();
    notice.failed(reason);
    expect(root.querySelector('[role=alert]')?.textContent).toBe(english.pane.opening.reasons[reason]);
    expect(root.querySelector('[role=status]')?.textContent).toBe('');
    // Another try helps only where something was blocked.
    expect(again.hidden).toBe(reason !== 'blocked');
  },
);
