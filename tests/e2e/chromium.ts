/** A browser for the tests: one that is installed, else the one that a package brings along. */
import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';

/** Nothing is fetched, nothing asked; software rendering, and no sandbox where tests run as root. */
const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface OpenBrowser {
  readonly browser: Browser;
  close(): Promise<void>;
}

/** @throws Error that says what to install */
export async function openBrowser(): Promise<OpenBrowser> {
  const installed = installedBrowser();
  if (installed !== null) {
    const browser = await chromium.launch({ executablePath: installed, args: flags });
    return { browser, close: () => browser.close() };
  }
  if (process.platform !== 'linux' || process.arch !== 'x64') throw new Error(advice(null));
  try {
    return await openPackaged();
  } catch (cause) {
    throw new Error(advice(cause), { cause });
  }
}

function installedBrowser(): string | null {
  const chosen = process.env.CHROME_PATH;
  if (chosen !== undefined && chosen !== '') {
    if (!existsSync(chosen)) throw new Error(`CHROME_PATH names ${chosen}, which is not there`);
    return chosen;
  }
  return usualPlaces().find((place) => existsSync(place)) ?? null;
}

function usualPlaces(): string[] {
  if (process.platform === 'darwin') {
    const names = ['Google Chrome', 'Microsoft Edge', 'Chromium'];
    return ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
      names.map((name) => join(folder, `${name}.app`, 'Contents', 'MacOS', name)),
    );
  }
  if (process.platform === 'win32') {
    const { ProgramFiles, 'ProgramFiles(x86)': ProgramFilesX86, LOCALAPPDATA } = process.env;
    const folders = [ProgramFiles, ProgramFilesX86, LOCALAPPDATA].filter((folder) => folder !== undefined);
    return folders.flatMap((folder) => [
      join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
      join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
      join(folder, 'Chromium', 'Application', 'chrome.exe'),
    ]);
  }
  const names = ['google-chrome', 'google-chrome-stable', 'chromium', 'chromium-browser', 'microsoft-edge'];
  return ['/usr/bin', '/usr/local/bin', '/snap/bin'].flatMap((folder) =>
    names.map((name) => join(folder, name)),
  );
}

/**
 * The package takes for whole whatever lies where it unpacks to, so two test files must not share that place. The
 * libraries and fonts that a bare machine lacks it unpacks only where it believes to run in a cloud function; it
 * looks for that when it is imported.
 */
async function openPackaged(): Promise<OpenBrowser> {
  const folder = await mkdtemp(join(tmpdir(), 'packaged-browser-'));
  process.env.TMPDIR = folder;
  process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs22.x';
  const { default: packaged } = await import('@sparticuz/chromium');
  packaged.setGraphicsMode = false;
  const executablePath = await packaged.executablePath();
  const fonts = join(folder, 'fonts');
  const fontSettings = join(fonts, 'fonts.conf');
  await writeFile(fontSettings, (await readFile(fontSettings, 'utf8')).replaceAll('/tmp/fonts', fonts));
  // In a single process, which only cloud functions need, a page that is closed takes the browser along.
  const args = packaged.args.filter((arg) => arg !== '--single-process');
  const browser = await chromium.launch({ executablePath, args: [...args, ...flags] });
  return {
    browser,
    async close() {
      await browser.close();
      await rm(folder, { recursive: true, maxRetries: 3 });
    },
  };
}

function advice(cause: unknown): string {
  const why = cause === null ? '' : ` The packaged one did not start: ${String(cause)}`;
  return (
    'No browser for the tests. Install Google Chrome, Microsoft Edge or Chromium ' +
    `(Debian: apt-get install chromium), or set CHROME_PATH to one.${why}`
  );
}
