/** The language that somebody chose, kept in this browser. */
import type { Speak } from '../taskpane/paneTools';

const key = 'cucurbit-functions language';

/** A browser may keep nothing for a page, and says so by an error. */
export function keptLanguage(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

export const speak: Speak = (tag) => {
  try {
    localStorage.setItem(key, tag);
  } catch {
    return false;
  }
  location.reload();
  return true;
};
