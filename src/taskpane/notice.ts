/** What an action came to: spoken politely when it went well, at once when it did not. */
import { element, setText } from './elements';

export interface Notice {
  readonly element: HTMLElement;
  say(text: string): void;
  warn(text: string): void;
}

export function createNotice(): Notice {
  const good = element('p', { role: 'status', class: 'notice' });
  const bad = element('p', { role: 'alert', class: 'notice notice-bad' });
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
  };
}
