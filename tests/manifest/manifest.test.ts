// @vitest-environment jsdom
/** The manifest that ships, against what ships with it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { afterEach, describe, expect, inject, test, vi } from 'vitest';
import type * as PageFunctions from '../../src/entries/functions';
import { functions } from '../../src/functions';
import { functionNamespace } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { lintManifest, type ReadBuilt } from './lintManifest';

const folder = inject('builtAddin');
const local = 'https://localhost:3000';
const readBuilt: ReadBuilt = (path) =>
  existsSync(join(folder, path)) ? readFileSync(join(folder, path)) : null;
const manifest = readFileSync(join(folder, 'manifest.xml'), 'utf8');

describe('the manifest', () => {
  test('has no fault', () => {
    expect(lintManifest(manifest, local, readBuilt)).toEqual([]);
  });

  test('has the version of package.json, and the namespace that the sheets write', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(manifest).toContain(`<Version>${version}.0</Version>`);
    expect(manifest).toContain(
      `id="Functions.Namespace" DefaultValue="${functionNamespace.replace(/\.$/, '')}"`,
    );
  });

  test('has the button that the pane tells people to look for', () => {
    const [, label = ''] = /id="Pane.Label" DefaultValue="([^"]+)"/.exec(manifest) ?? [];
    expect(english.pane.opening.reasons.outside).toContain(`"${label}"`);
  });
});

describe('what is built for Excel', () => {
  test('describes every function', () => {
    const { functions: described } = JSON.parse(readFileSync(join(folder, 'functions.json'), 'utf8')) as {
      functions: { id: string }[];
    };
    expect(described.map(({ id }) => id).sort()).toEqual([...functions.keys()].sort());
  });

  test('has a page for each function where functions.json says, and all that the pages name', () => {
    const { functions: described } = JSON.parse(readFileSync(join(folder, 'functions.json'), 'utf8')) as {
      functions: { id: string; helpUrl: string }[];
    };
    for (const { id, helpUrl } of described) {
      expect(helpUrl).toBe(`${local}/functions/${id}.html`);
      const page = readBuilt(helpUrl.slice(local.length + 1))?.toString() ?? '';
      expect(page).toContain(`<h1>${id}</h1>`);
      for (const [, file = ''] of page.matchAll(/(?:src|href)="([^"]+)"/g))
        expect(readBuilt(`functions/${file}`), `${id}: ${file}`).not.toBeNull();
    }
    expect(readBuilt('functions/search.js')).not.toBeNull();
  });

  test('is small, and of few packages: not the engine of the browser workbook', () => {
    const packages = inject('packagesInAddin');
    expect(packages).toContain('fastest-levenshtein');
    expect(packages.filter((name) => /^(@univerjs|react|rxjs|exceljs)/.test(name))).toEqual([]);
    const scripts = readdirSync(folder).filter((name) => name.endsWith('.js'));
    // The numbered ones, pictures among them, come when somebody asks for what is in them.
    const atOnce = scripts.filter((name) => !/^\d+\.js$/.test(name));
    expect(atOnce.sort()).toEqual(['functions.js', 'taskpane.js', 'texts.js']);
    for (const name of atOnce) {
      const script = readFileSync(join(folder, name), 'utf8');
      // Excel loads them whenever a workbook with a function of ours is opened.
      expect(script.length, name).toBeLessThan(600_000);
      expect(script, `${name} draws`).not.toContain('zrender');
      expect(script, `${name} writes calendar files`).not.toContain('VCALENDAR');
    }
  });

  test('leaves its functions to the pane, which has no second copy of them', () => {
    const registered: string[] = [];
    const page: Record<string, unknown> = {
      CustomFunctions: { associate: (id: string) => registered.push(id) },
    };
    for (const name of ['texts.js', 'functions.js']) {
      runInNewContext(readFileSync(join(folder, name), 'utf8'), page);
    }
    expect(registered.sort()).toEqual([...functions.keys()].sort());
    const { functionTools } = page['cucurbitFunctions'] as typeof PageFunctions;
    // 43,560 sq ft an acre / (2 ft x 3 ft).
    expect(functionTools.run('PLANTS.DENSITY', [2, 36])).toEqual({ value: 7260 });
    const others = readdirSync(folder).filter((name) => name.endsWith('.js') && name !== 'functions.js');
    expect(others.length).toBeGreaterThan(3);
    const holdsCopy = (name: string): boolean =>
      readFileSync(join(folder, name), 'utf8').includes('CustomFunctions.associate(');
    expect(others.filter(holdsCopy)).toEqual([]);
  });

  test('has a page without a script or a style inside, so that a host may forbid them', () => {
    const page = readFileSync(join(folder, 'taskpane.html'), 'utf8');
    expect(page).not.toMatch(/<style|style=|javascript:|\son[a-z]+=/i);
    const scripts = [...page.matchAll(/<script([^>]*)>([^<]*)<\/script>/g)];
    expect(scripts.map(([, , inside]) => inside)).toEqual(['', '', '', '']);
    expect(scripts.map(([, attributes]) => /src="([^"]+)"/.exec(attributes ?? '')?.[1])).toEqual([
      'https://appsforoffice.microsoft.com/lib/1/hosted/office.js',
      'functions.js',
      'texts.js',
      'taskpane.js',
    ]);
    for (const [, file = ''] of page.matchAll(/(?:src|href)="(?!https:)([^"]+)"/g))
      expect(readBuilt(file), file).not.toBeNull();
  });
});

describe('ADDIN_URL', () => {
  interface Copying {
    readonly patterns?: readonly { from: string; transform?: (text: string) => string }[];
  }
  type Configure = (env: object, options: object) => Promise<{ plugins: readonly Copying[] }>;

  /** The manifest that a build with this address would write. */
  async function manifestAt(address: string): Promise<string> {
    vi.stubEnv('ADDIN_URL', address);
    const require = createRequire(import.meta.url);
    delete require.cache[require.resolve('../../webpack.config.js')];
    const [, excel] = require('../../webpack.config.js') as Configure[];
    const plugins = (await excel?.({}, { mode: 'production' }))?.plugins ?? [];
    const copied = plugins.flatMap(({ patterns = [] }) => patterns);
    const text = copied
      .find(({ from }) => from.endsWith('manifest.xml'))
      ?.transform?.(readFileSync('manifest.xml', 'utf8'));
    if (text === undefined) throw new Error('no manifest is copied');
    return text;
  }
  afterEach(() => vi.unstubAllEnvs());

  test.each([
    ['https://plans.example', 'https://plans.example'],
    ['https://plans.example/garden/', 'https://plans.example/garden'],
    ['', local],
  ])('%j puts every address at %s', async (given, address) => {
    const text = await manifestAt(given);
    expect(lintManifest(text, address, readBuilt)).toEqual([]);
    if (address !== local) expect(text).not.toContain('localhost');
  });

  test.each(['http://plans.example', 'plans.example', 'https://', 'https://a b', 'https://a?x=1&y'])(
    '%j is refused',
    async (given) => {
      await expect(manifestAt(given)).rejects.toThrow(/Give the https address/);
    },
  );
});

describe('the lint itself', () => {
  const mutated = (from: string | RegExp, to: string): string[] => {
    const text = manifest.replace(from, to);
    expect(text, 'the mutation changes something').not.toBe(manifest);
    return lintManifest(text, local, readBuilt);
  };

  test.each<[string, string | RegExp, string, RegExp]>([
    [
      'two elements swapped',
      /(<Version>.*<\/Version>)\s*(<ProviderName>.*<\/ProviderName>)/,
      '$2$1',
      /OfficeApp: its parts/,
    ],
    [
      'Runtimes after the form factors',
      /(<Runtimes>[^]*<\/Runtimes>)([^]*<\/AllFormFactors>)/,
      '$2$1',
      /Host: its parts/,
    ],
    [
      'strings before addresses',
      /(<bt:Urls>[^]*<\/bt:Urls>)\s*(<bt:ShortStrings>[^]*<\/bt:ShortStrings>)/,
      '$2$1',
      /Resources: its parts/,
    ],
    ['a part unknown here', '<Runtimes>', '<Runtimes><Icon/>', /Runtimes: its parts/],
    ['an element unknown here', '<Hosts>', '<Hosts><Guest><Host/></Guest>', /Guest/],
    ['an Id without hyphens', '6b1f0c1e-4c55', '6b1f0c1e4c55', /no GUID/],
    ['a version of letters', /<Version>.*</, '<Version>1.0-beta<', /Version: one to four/],
    [
      'http',
      'https://localhost:3000/functions.js"',
      'http://localhost:3000/functions.js"',
      /must begin with https/,
    ],
    [
      'another origin',
      'https://localhost:3000/functions.js"',
      'https://localhost/functions.js"',
      /elsewhere than/,
    ],
    ['a file that is not built', '/functions.js"', '/function.js"', /makes no such file/],
    ['a resid without resource', 'resid="Pane.Tip"', 'resid="Pane.Hint"', /Pane.Hint: there is no such/],
    ['a resource that nothing uses', 'resid="Pane.Tip"', 'resid="Start.Text"', /Pane.Tip: nothing uses/],
    ['two resources of one id', '<bt:String id="Start.Title"', '<bt:String id="Pane.Label"', /there are two/],
    ['a long id', /Pane\.Tip/g, 'Pane.TipThatIsLongerThanThirtyTwo.', /at most 32/],
    [
      'a long label',
      'DefaultValue="Cucurbits"',
      `DefaultValue="${'x'.repeat(126)}"`,
      /Group.Label: over 125/,
    ],
    ['a long tip', 'Opens the pane', 'x'.repeat(250), /Pane.Tip: over 250/],
    ['a long description', 'Plans cucumbers', 'x'.repeat(250), /Description: over 250/],
    ['no icon of 80', '<bt:Image size="80" resid="Icon.80" />', '', /icon of 80 is missing/],
    ['an icon of 25', 'size="24"', 'size="25"', /icon of 25 is never shown/],
    ['an icon of other pixels', 'icon-24.png', 'icon-20.png', /is 20x20, not 24x24/],
    ['an icon that is none', 'assets/icon-24.png', 'functions.json', /is no picture, not 24x24/],
    [
      'a list icon of other pixels',
      'IconUrl DefaultValue="https://localhost:3000/assets/icon-32',
      'IconUrl DefaultValue="https://localhost:3000/assets/icon-16',
      /is 16x16, not 32x32/,
    ],
    ['no SupportUrl', /<SupportUrl.*>/, '', /SupportUrl: is missing/],
    ['no HighResolutionIconUrl', /<HighResolutionIconUrl.*>/, '', /HighResolutionIconUrl: is missing/],
    ['no Namespace', /<Namespace.*>/, '', /Namespace: is missing/],
    [
      'an AppDomain without https',
      '<Hosts>',
      '<AppDomains><AppDomain>plans.example</AppDomain></AppDomains><Hosts>',
      /needs https/,
    ],
    [
      'a requirement set to come',
      'Name="ExcelApi" MinVersion="1.9"',
      'Name="ExcelApi" MinVersion="1.90"',
      /no such requirement set/,
    ],
    [
      'a requirement set misspelt',
      'Name="SharedRuntime"',
      'Name="SharedRunTime"',
      /SharedRunTime 1.1: no such/,
    ],
    ['no shared runtime required', /<Set Name="SharedRuntime".*>/, '', /SharedRuntime is missing/],
    ['no Runtimes', /<Runtimes>[^]*<\/Runtimes>/, '', /Runtimes: is missing/],
    ['a short life', 'lifetime="long"', 'lifetime="short"', /must be long/],
    [
      'a TaskpaneId',
      '<Action xsi:type="ShowTaskpane">',
      '<Action xsi:type="ShowTaskpane"><TaskpaneId>P</TaskpaneId>',
      /TaskpaneId: not/,
    ],
    [
      'another page for the pane',
      /(<Action[^]*resid=")Pane.Page/,
      '$1Functions.Script',
      /Action SourceLocation: must name/,
    ],
    [
      'another page for functions',
      /(<Page>\s*<SourceLocation resid=")Pane.Page/,
      '$1Functions.Script',
      /Page SourceLocation: must name/,
    ],
    [
      'another page for commands',
      '<FunctionFile resid="Pane.Page"',
      '<FunctionFile resid="Functions.Script"',
      /FunctionFile: must name/,
    ],
    ['too little permission', 'ReadWriteDocument', 'WriteDocument', /Permissions/],
  ])('finds %s', (_, from, to, fault) => {
    expect(mutated(from, to).join('\n')).toMatch(fault);
  });
});
