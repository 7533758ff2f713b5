/** The floors of the house, and what breaks them. The same table stands in DEVELOPERS.md and in .oxlintrc.json. */
import { posix } from 'node:path';
import ts from 'typescript';

interface Floor {
  /** Folders (or single modules) of src, besides its own. "*" is everything. */
  readonly mayImport: readonly string[];
  /** Whether it may import packages, and the machine ("node:"). */
  readonly packages: 'none' | 'libraries' | 'libraries and node';
}

export const floors: Readonly<Record<string, Floor>> = {
  reference: { mayImport: [], packages: 'none' },
  texts: { mayImport: [], packages: 'none' },
  calc: { mayImport: ['reference'], packages: 'libraries' },
  workbook: { mayImport: [], packages: 'libraries' },
  templates: { mayImport: ['workbook', 'reference', 'texts'], packages: 'none' },
  functions: {
    mayImport: ['calc', 'reference', 'texts', 'workbook/serialDate', 'workbook/parseNumber'],
    packages: 'none',
  },
  pictures: { mayImport: ['texts', 'workbook/serialDate'], packages: 'libraries' },
  guide: {
    mayImport: ['calc', 'functions', 'reference', 'texts', 'workbook'],
    packages: 'libraries and node',
  },
  'hosts/excel': { mayImport: ['workbook'], packages: 'libraries' },
  'hosts/browser': { mayImport: ['workbook'], packages: 'libraries' },
  'hosts/file': { mayImport: ['workbook'], packages: 'libraries and node' },
  commands: { mayImport: ['workbook', 'templates', 'texts'], packages: 'libraries and node' },
  taskpane: { mayImport: ['workbook', 'templates', 'texts', 'functions/explain'], packages: 'libraries' },
  entries: { mayImport: ['*'], packages: 'libraries and node' },
};

/** Words that a floor's code never says; comments may. */
const forbiddenWords: readonly { in: RegExp; words: readonly string[] }[] = [
  { in: /^src\/(?!hosts\/excel\/)/, words: ['Excel', 'Office'] },
  {
    in: /^src\/(calc|reference)\//,
    words: ['document', 'window', 'fetch', 'console', 'process', 'Promise', 'async', 'await'],
  },
];
const forbiddenCalls = { in: /^src\/(calc|reference)\//, calls: ['Date.now', 'Math.random', 'new Date()'] };

/** The engine of sheets would do for a bookkeeper too. */
const subjectWords = /crop|cucumber|squash|melon|plant|seed|frost|plot|garden|harvest|grower/i;

const namesOfNothing = new Set(['util', 'utils', 'helper', 'helpers', 'common', 'manager', 'misc']);
const mostLines = 250;
const mostEntryLines = 30;

const parse = (path: string, text: string): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);

function everyNode(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => everyNode(child, visit));
}

function floorOf(path: string): string | undefined {
  const inside = path.replace(/^src\//, '');
  return Object.keys(floors).find((name) => inside.startsWith(`${name}/`));
}

/** Every module that a file names: import, export from, import(), import types, require. */
export function importsOf(text: string): string[] {
  return ts.preProcessFile(text, true, true).importedFiles.map(({ fileName }) => fileName);
}

function breakOf(path: string, target: string): string | null {
  const name = floorOf(path);
  if (name === undefined) return `${path}: stands on no floor (see tests/architecture/floors.ts)`;
  const { mayImport, packages } = floors[name] as Floor;
  if (!target.startsWith('.')) {
    const isNode = target.startsWith('node:');
    const isLet = packages === 'libraries and node' || (packages === 'libraries' && !isNode);
    return isLet
      ? null
      : `${path} → ${target}: ${name} imports ${packages === 'none' ? 'no package' : 'no node: module'}`;
  }
  const landed = posix.join(posix.dirname(path), target);
  const allowed = [name, ...mayImport];
  const isLet = allowed.some(
    (one) => one === '*' || landed === `src/${one}` || landed.startsWith(`src/${one}/`),
  );
  return isLet ? null : `${path} → ${landed}: ${name} may import only ${allowed.join(', ')}`;
}

export const brokenArrows = (path: string, text: string): string[] =>
  importsOf(text).flatMap((target) => breakOf(path, target) ?? []);

export function saidWords(path: string, text: string): string[] {
  const words = forbiddenWords.flatMap((rule) => (rule.in.test(path) ? rule.words : []));
  const calls = forbiddenCalls.in.test(path) ? forbiddenCalls.calls : [];
  const isOfWorkbook = path.startsWith('src/workbook/');
  const said = new Set<string>();
  everyNode(parse(path, text), (node) => {
    const isName =
      ts.isIdentifier(node) || node.kind === ts.SyntaxKind.AsyncKeyword || ts.isAwaitExpression(node);
    const word = ts.isAwaitExpression(node) ? 'await' : node.getText();
    if (isName && words.includes(word)) said.add(word);
    const isCall = ts.isPropertyAccessExpression(node) || ts.isNewExpression(node);
    if (isCall && calls.includes(node.getText())) said.add(node.getText());
    const isText =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (isOfWorkbook && (ts.isIdentifier(node) || isText)) {
      const found = subjectWords.exec(node.text);
      if (found !== null) said.add(found[0]);
    }
  });
  return [...said].map((word) => `${path}: says "${word}"`);
}

export function poorNames(path: string): string[] {
  const words = path
    .replace(/^src\//, '')
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^a-z0-9]+/);
  return words.filter((word) => namesOfNothing.has(word)).map((word) => `${path}: "${word}" names no job`);
}

/** A long file says in its first comment that it is long, and why. */
export function unexplainedLength(path: string, text: string): string[] {
  const lines = text.replace(/\n$/, '').split('\n').length;
  const [first] = ts.getLeadingCommentRanges(text, 0) ?? [];
  const comment = first === undefined ? '' : text.slice(first.pos, first.end);
  // An import alone may be what an entry is there for: the functions register themselves.
  const ownLines = lines - (text.match(/^import '.*\n/gm) ?? []).length;
  if (path.startsWith('src/entries/') && ownLines > mostEntryLines) {
    return [`${path}: ${ownLines} lines; an entry chooses and hands over in ${mostEntryLines}`];
  }
  if (lines <= mostLines || /\blong(er)?\b/i.test(comment)) return [];
  return [`${path}: ${lines} lines, over ${mostLines}; split it, or say in its first comment why it is long`];
}
