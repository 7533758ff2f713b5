/// <reference types="office-js" />

/** Excel's own library, loaded and connected, or the reason why the page has none. */

/** blocked: its library did not load; outside: the page stands in no Excel; old: in one below our floor. */
export type Unreached = 'blocked' | 'outside' | 'old';
export interface Reached {
  readonly excel: typeof Excel;
  readonly isSetSupported: (name: string, version: string) => boolean;
}

const slowAfterMs = 8000;

/**
 * Waits as long as it takes.
 * @param script the element that loads the library
 * @param onSlow called once, when the wait gets long
 */
export async function reachExcel(script: HTMLElement, onSlow: () => void): Promise<Reached | Unreached> {
  const timer = setTimeout(onSlow, slowAfterMs);
  try {
    if (typeof Office === 'undefined' && !(await loaded(script))) return 'blocked';
    const { host } = await Office.onReady();
    if (host !== Office.HostType.Excel) return 'outside';
    const { requirements } = Office.context;
    // The manifest asks for the same, but not every way of adding it is held to the manifest.
    if (!requirements.isSetSupported('ExcelApi', '1.9')) return 'old';
    return { excel: Excel, isSetSupported: (name, version) => requirements.isSetSupported(name, version) };
  } finally {
    clearTimeout(timer);
  }
}

/** Some filters answer with an empty page: then it loads and brings nothing. */
function loaded(script: HTMLElement): Promise<boolean> {
  return new Promise((resolve) => {
    script.addEventListener('load', () => resolve(typeof Office !== 'undefined'));
    script.addEventListener('error', () => resolve(false));
  });
}
