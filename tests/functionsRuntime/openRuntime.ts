/**
 * The vendor's own runtime for worksheet functions, with our built bundle in it, and Excel's side of its bridge.
 * The package @microsoft/office-js is not MIT: its licence allows design, development and test of apps that work
 * with the vendor's products. It is used here only, at a pinned version, and nothing of it ships. The bridge is no
 * published interface: what it says of Excel is as good as the runtime's own code.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';

/** What would go back to Excel. The code of an error: 1 #N/A, 6 #NUM!, 7 #VALUE!; 2 is an error of no kind. */
export type Delivered = { readonly value: unknown } | { readonly code: number; readonly message: unknown };

export interface Invocation {
  readonly id: string;
  /** As they go over the bridge; see arguments.ts. */
  readonly args: readonly unknown[];
  readonly flags?: number;
}

export interface Runtime {
  /** Ids that the bundle has registered. */
  readonly registered: readonly string[];
  /** All in one message, as a recalculation sends them; in the same order. */
  call(invocations: readonly Invocation[]): Promise<readonly Delivered[]>;
}

interface Action {
  readonly Id: number;
  readonly Name: string;
  readonly ArgumentInfo?: { readonly Arguments: readonly unknown[] };
}
interface Request {
  readonly id: number;
  readonly message: { readonly body: { readonly Actions: readonly Action[] } };
}
interface Bridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost?(text: string): void;
}
interface Page {
  readonly CustomFunctions: { readonly _association: { readonly mappings: object } };
  readonly Office: { context?: unknown };
}

const library = 'custom-functions-runtime.debug.js';
const libraryFile = createRequire(import.meta.url).resolve(`@microsoft/office-js/dist/${library}`);

/** @param isSetSupported Excel's answer about a requirement set; the runtime's own inner sets are always there */
export function openRuntime(
  folder: string,
  isSetSupported: (set: string, version: string) => boolean,
  scripts = ['texts.js', 'functions.js'],
): Runtime {
  let nextId = 1;
  const waiting = new Map<number, (delivered: Delivered) => void>();
  const bridge: Bridge = {
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as Request;
      const { Actions } = message.body;
      for (const { Name, ArgumentInfo } of Actions) {
        if (Name !== 'SetInvocationArrayResults') continue;
        const [results] = ArgumentInfo?.Arguments ?? [];
        for (const result of results as readonly unknown[][]) settle(result);
      }
      const body = JSON.stringify({ Results: Actions.map(({ Id }) => ({ ActionId: Id, Value: null })) });
      bridge.onMessageFromHost?.(
        JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body } }),
      );
    },
  };
  function settle([id, succeeded, value, code]: readonly unknown[]): void {
    waiting.get(id as number)?.(succeeded === true ? { value } : { code: code as number, message: value });
    waiting.delete(id as number);
  }

  const page = openPage(bridge);
  runInContext(readFileSync(libraryFile, 'utf8'), page, { filename: library });
  const { Office } = page as unknown as Page;
  const isInner = (set: string): boolean => set === 'CustomFunctions' || set.startsWith('RichApiRuntime');
  Office.context = {
    requirements: {
      isSetSupported: (set: string, version: string) => isInner(set) || isSetSupported(set, version),
    },
  };
  for (const filename of scripts) {
    runInContext(readFileSync(join(folder, filename), 'utf8'), page, { filename });
  }

  return {
    registered: Object.keys((page as unknown as Page).CustomFunctions._association.mappings),
    call(invocations) {
      const entries: unknown[] = [];
      const delivered = invocations.map(({ id, args, flags = 0 }) => {
        const invocation = nextId++;
        entries.push([1, 1000, null, JSON.stringify([invocation, id, args, 'Sheet1!A1', flags]), '']);
        return new Promise<Delivered>((resolve) => waiting.set(invocation, resolve));
      });
      bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries } }));
      return Promise.all(delivered);
    },
  };
}

/** As much of a page as the library looks for when it loads. */
function openPage(bridge: Bridge): object {
  const nothing = (): null => null;
  const store = { getItem: nothing, setItem: nothing, removeItem: nothing };
  const page: Record<string, unknown> = {
    _richApiNativeBridge: bridge,
    console: { ...console, log: nothing, warn: nothing },
    setTimeout,
    clearTimeout,
    addEventListener: nothing,
    navigator: { userAgent: 'test' },
    location: { href: 'https://localhost/', search: '', hash: '' },
    history: {},
    sessionStorage: store,
    localStorage: store,
    document: {
      readyState: 'complete',
      URL: 'https://localhost/',
      addEventListener: nothing,
      createElement: () => ({ setAttribute: nothing }),
      getElementById: nothing,
      // The library looks for its own script by its file name, and would fetch more of itself into the head.
      getElementsByTagName: (tag: string) =>
        tag === 'script' ? [{ src: `https://localhost/${library}` }] : [{ appendChild: nothing }],
    },
  };
  page['window'] = page;
  return createContext(page);
}
