// @vitest-environment jsdom
import { beforeEach, expect, test, vi } from 'vitest';
import { listenForKeys } from '../../src/taskpane/pageKeys';

const workbook = {
  takeFocus: vi.fn(),
  undo: vi.fn(async (): Promise<string | null> => 'Remove a plot'),
  redo: vi.fn(async (): Promise<string | null> => 'Remove a plot'),
};
document.body.innerHTML =
  '<div id="grid" tabindex="0"></div><main id="pane" tabindex="-1">' +
  '<button></button><input type="text"><input type="date"><textarea></textarea>' +
  '<input type="checkbox"><select></select></main>';
const pane = document.getElementById('pane') as HTMLElement;
listenForKeys(pane, workbook);
beforeEach(() => vi.clearAllMocks());

/** What the key did, and whether it is left to whatever else listens. */
function press(where: string, key: string, held: KeyboardEventInit = {}): string {
  const element = document.querySelector<HTMLElement>(where);
  element?.focus();
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...held });
  const isLeft = element?.dispatchEvent(event);
  const done = Object.entries(workbook).flatMap(([name, { mock }]) => mock.calls.map(() => name));
  return [...done, ...(isLeft === true ? ['left'] : [])].join();
}

test.each([
  ['z', { ctrlKey: true }, 'undo'],
  ['z', { metaKey: true }, 'undo'],
  ['Z', { ctrlKey: true, shiftKey: true }, 'redo'],
  ['Z', { metaKey: true, shiftKey: true }, 'redo'],
  ['y', { ctrlKey: true }, 'redo'],
  ['Y', { ctrlKey: true }, 'redo'],
  ['z', {}, 'left'],
  ['z', { ctrlKey: true, altKey: true }, 'left'],
  ['a', { ctrlKey: true }, 'left'],
])('%s with %o on a button of the pane', (key, held, expected) => {
  expect(press('#pane button', key, held)).toBe(expected);
});

test.each([
  ['#pane', 'undo'],
  ['[type=checkbox]', 'undo'],
  ['select', 'undo'],
  ['[type=text]', 'left'],
  ['[type=date]', 'left'],
  ['textarea', 'left'],
  ['#grid', 'left'],
])('Ctrl+Z at %s', (where, expected) => {
  expect(press(where, 'z', { ctrlKey: true })).toBe(expected);
});

test('F6 leads to the grid, and back to what had the keyboard in the pane', () => {
  expect(press('select', 'F6')).toBe('takeFocus');
  expect(press('#grid', 'F6')).toBe('takeFocus');
  expect(document.activeElement?.tagName).toBe('SELECT');
});

test.each([
  ['z', 'Remove a plot', 'Undone: Remove a plot.'],
  ['y', 'Remove a plot', 'Done again: Remove a plot.'],
  ['z', '', 'Undone in the sheets.'],
  ['y', '', 'Done again in the sheets.'],
  ['z', null, 'There is nothing to undo.'],
  ['y', null, 'There is nothing to do again.'],
])('Ctrl+%s of a change titled %j is read aloud', async (key, title, expected) => {
  workbook[key === 'z' ? 'undo' : 'redo'].mockResolvedValueOnce(title);
  press('#pane button', key, { ctrlKey: true });
  await vi.waitFor(() => expect(document.querySelector('[role=status]')?.textContent).toBe(expected));
});

test('what was undone stands until the next key or click, but a key that is only held', async () => {
  const said = document.querySelector('[role=status]');
  for (const [goOn, isGone] of [
    [() => press('select', 'Control'), false],
    [() => press('select', 'Tab'), true],
    [() => document.body.dispatchEvent(new Event('pointerdown', { bubbles: true })), true],
  ] as const) {
    press('#pane button', 'z', { ctrlKey: true });
    await vi.waitFor(() => expect(said?.textContent).toBe('Undone: Remove a plot.'));
    goOn();
    expect(said?.textContent === '').toBe(isGone);
  }
});
