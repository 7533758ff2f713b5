/** What an action came to, until the next: spoken politely when it went well, at once when it did not. */
import type { Actions } from './actions';
import { element, setText } from './elements';

export interface Notice {
  readonly element: HTMLElement;
  say(text: string): void;
  warn(text: string): void;
  /** What went well may be undone since; a warning stays. */
  forgetGood(): void;
}

export function createNotice(actions: Pick<Actions, 'onRun'>): Notice {
  const good = element('p', { role: 'status', class: 'notice' });
  const bad = element('p', { role: 'alert', class: 'notice notice-bad' });
  actions.onRun(() => {
    setText(good, '');
    setText(bad, '');
  });
  return {
    element: element('div', {}, good, bad),
    say(text) {
      setText(bad, '');
      setText(good, text);
    },
    warn(text) {
      setText(good, '');
      // Emptied first: the same warning again must be spoken again.
      setText(bad, '');
      setText(bad, text);
    },
    forgetGood: () => setText(good, ''),
  };
}
