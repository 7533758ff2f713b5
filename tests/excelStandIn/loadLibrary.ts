/// <reference types="office-js" />

/**
 * The vendor's own client library, the one that drives Excel on the web, started in Node. It sends its requests to a
 * bridge object when it finds one at its start; the stand-in's workbook sits behind it.
 *
 * @microsoft/office-js is not MIT: its licence allows design, development and test use with Microsoft 365. It is a
 * pinned development dependency, for tests only. Pinned also because the bridge is not documented.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createContext, Script } from 'node:vm';

export interface Bridge {
  /** Set by the library. */
  onMessageFromHost(text: string): void;
  sendMessageToHost(text: string): void;
}

export type IsSetSupported = (name: string, version: string) => boolean;

const fileName = 'excel-web-16.00.debug.js';
const file = createRequire(import.meta.url).resolve(`@microsoft/office-js/dist/${fileName}`);

const library = new Script(readFileSync(file, 'utf8'), { filename: fileName });

/**
 * The published package ends with ExcelApi 1.15; the library that pages load goes on. Notes on cells (1.18) are made
 * here by the library's own means after the published types, so about them alone this is no witness.
 */
const addNotes = new Script(`{
  const { BatchApiHelper, ClientObject } = OfficeExtension;
  class Note extends ClientObject {}
  class NoteCollection extends ClientObject {
    add(cellAddress, content) {
      return BatchApiHelper.createMethodObject(Note, this, 'Add', 0, [cellAddress, content], false, true, null, 0);
    }
  }
  Object.defineProperty(Excel.Worksheet.prototype, 'notes', {
    get() {
      return BatchApiHelper.createPropertyObject(NoteCollection, this, 'Notes', true, 4);
    },
  });
}`);

export function loadLibrary(bridge: Bridge, isSetSupported: IsSetSupported): typeof Excel {
  // The library looks for the script element that brought it, and refuses another file name.
  const script = { src: `https://host/${fileName}`, id: '', getAttribute: () => null };
  const document = {
    readyState: 'complete',
    currentScript: script,
    head: { appendChild: () => undefined },
    documentElement: {},
    getElementsByTagName: (name: string) => (name === 'script' ? [script] : []),
    createElement: () => ({}),
    addEventListener: () => undefined,
  };
  const storage = { getItem: () => null, setItem: () => undefined, removeItem: () => undefined };
  const window: Record<string, unknown> = {
    _richApiNativeBridge: bridge,
    console,
    document,
    navigator: { userAgent: 'node', language: 'en-US' },
    location: { href: 'https://host/', search: '', hash: '', protocol: 'https:', host: 'host' },
    localStorage: storage,
    sessionStorage: storage,
    addEventListener: () => undefined,
    postMessage: () => undefined,
    setTimeout,
    clearTimeout,
  };
  for (const name of ['window', 'self', 'top', 'parent']) window[name] = window;
  const context = createContext(window);
  library.runInContext(context);
  window['Office'] = { context: { requirements: { isSetSupported } } };
  addNotes.runInContext(context);
  return window['Excel'] as typeof Excel;
}
