/**
 * What the comments in the code say of each worksheet function: what it gives, and of the calculations behind it the
 * definition, the source and what is refused. The comments are read, so that nothing of them is written twice.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';

/** One calculation, as the comment of its function in `calc` has it. */
export interface Calculation {
  readonly name: string;
  /** Its sentence, then paragraphs of equations, a line each. */
  readonly definition: readonly string[];
  readonly source: string;
  /** Codes of what it refuses. */
  readonly refuses: readonly string[];
}

interface Place {
  readonly name: string;
  readonly path: string;
}

export interface CommentsOfFunction {
  readonly gives: string;
  readonly calculations: readonly Calculation[];
}

/** @param folder `src` of this project */
export function readCalculations(folder: string): ReadonlyMap<string, CommentsOfFunction> {
  const files = new Map<string, ts.SourceFile>();
  const parse = (path: string): ts.SourceFile => {
    const known =
      files.get(path) ?? ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2022, true);
    files.set(path, known);
    return known;
  };
  const calcFiles = new Map(
    readdirSync(join(folder, 'calc'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => [/(\w+)\.ts$/.exec(name)?.[1] ?? '', join(folder, 'calc', name)]),
  );

  /** What of `calc` the node comes to, through what it calls in its own file and in its neighbours. */
  function reach(node: ts.Node, seen: Set<ts.Node>, found: Map<string, Place>): void {
    if (seen.has(node)) return;
    seen.add(node);
    const file = node.getSourceFile();
    const visit = (inner: ts.Node): void => {
      if (ts.isIdentifier(inner)) {
        const { from, name } = importOf(file, inner.text) ?? { from: null, name: inner.text };
        const path = from === null ? file.fileName : join(dirname(file.fileName), `${from}.ts`);
        if (from?.startsWith('../calc/') === true) found.set(name, { name, path });
        else if (from === null || from.startsWith('./')) {
          const declared = declarationOf(parse(path), name);
          if (declared !== null && !isDefinition(declared)) reach(declared, seen, found);
        }
      }
      inner.forEachChild(visit);
    };
    visit(node);
  }

  /** With the calculations that a source names: "as leastSeeds". */
  function calculationsFrom(found: ReadonlyMap<string, Place>): Calculation[] {
    const read = new Map<string, Calculation>();
    const queue = [...found.values()];
    for (const { name, path } of queue) {
      const comment = commentOf(declarationOf(parse(path), name));
      const calculation = comment === null ? null : readComment(name, comment);
      if (calculation === null || read.has(name)) continue;
      read.set(name, calculation);
      for (const [word] of calculation.source.matchAll(/\b[a-z]+[A-Z]\w*/g)) {
        const named = calcFiles.get(word);
        if (named !== undefined) queue.push({ name: word, path: named });
      }
    }
    return [...read.values()];
  }

  const byId = new Map<string, CommentsOfFunction>();
  const functions = join(folder, 'functions');
  for (const name of readdirSync(functions)) {
    const file = parse(join(functions, name));
    for (const statement of file.statements) {
      const comment = ts.isFunctionDeclaration(statement) ? commentOf(statement) : null;
      const [, id] = /^@customfunction ([A-Z.]+)$/m.exec(comment ?? '') ?? [];
      if (comment === null || id === undefined) continue;
      const [, given = ''] = /^@returns ([^]*)$/m.exec(comment) ?? [];
      const [, definition = ''] = /\btoCells?\((\w+),/.exec(statement.getText()) ?? [];
      const found = new Map<string, Place>();
      const declared = declarationOf(file, definition);
      if (declared !== null)
        reach(isDefinition(declared) ? calculateOf(declared) : declared, new Set(), found);
      byId.set(id, { gives: given.trim(), calculations: calculationsFrom(found) });
    }
  }
  return byId;
}

function isDefinition(statement: ts.Node): boolean {
  return ts.isVariableStatement(statement) && /= define\(/.test(statement.getText());
}

function calculateOf(statement: ts.Node): ts.Node {
  let found = statement;
  const visit = (node: ts.Node): void => {
    const isNamed = ts.isPropertyAssignment(node) || ts.isMethodDeclaration(node);
    if (isNamed && node.name.getText() === 'calculate') found = node;
    else node.forEachChild(visit);
  };
  visit(statement);
  return found;
}

/** The module, and what the thing is called there. */
function importOf(
  file: ts.SourceFile,
  name: string,
): { readonly from: string; readonly name: string } | null {
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement)) continue;
    const bindings = statement.importClause?.namedBindings;
    if (bindings === undefined || !ts.isNamedImports(bindings)) continue;
    const binding = bindings.elements.find((one) => one.name.text === name);
    if (binding !== undefined) {
      const from = (statement.moduleSpecifier as ts.StringLiteral).text;
      return { from, name: (binding.propertyName ?? binding.name).text };
    }
  }
  return null;
}

function declarationOf(file: ts.SourceFile, name: string): ts.Node | null {
  const isIt = (statement: ts.Statement): boolean =>
    ts.isFunctionDeclaration(statement)
      ? statement.name?.text === name
      : ts.isVariableStatement(statement) &&
        statement.declarationList.declarations.some((one) => one.name.getText() === name);
  return file.statements.find(isIt) ?? null;
}

/** Without its stars. */
function commentOf(node: ts.Node | null): string | null {
  if (node === null) return null;
  const text = node.getSourceFile().text;
  const last = (ts.getLeadingCommentRanges(text, node.getFullStart()) ?? []).at(-1);
  const comment = last === undefined ? '' : text.slice(last.pos, last.end);
  return comment.startsWith('/**') ? comment.replace(/^\/\*\*|\*\/$/g, '').replace(/^ *\* ?/gm, '') : null;
}

/** null for one without a source: it checks or reads, and calculates nothing. */
function readComment(name: string, comment: string): Calculation | null {
  const [, source] = /^Source: ([^]*?)(?=^@|^\s*$(?![^]))/m.exec(comment) ?? [];
  if (source === undefined) return null;
  const before = comment.slice(0, comment.search(/^@|^Source: /m));
  const [sentence = '', ...paragraphs] = before.trim().split(/\n\s*\n/);
  const [, thrown = ''] = /^@throws ([^]*?)(?=^@|^Source: )/m.exec(comment) ?? [];
  return {
    name,
    definition: [sentence.replace(/\s+/g, ' '), ...paragraphs.map(joinLines)],
    source: source.replace(/\s+/g, ' ').trim(),
    refuses: [...thrown.matchAll(/\b[a-z]+[A-Za-z]*\b/g)].map(([code]) => code),
  };
}

/** A line that runs to the margin, or before one that is set in, goes on in the next: not before "staggered: …". */
function joinLines(paragraph: string): string {
  return paragraph.split('\n').reduce((text, line) => {
    const before = text.slice(text.lastIndexOf('\n') + 1);
    const isOwn = before.length < 95 || before.endsWith(';') || /^\p{L}[\p{L}\d ]*: /u.test(line);
    return text + (isOwn && !line.startsWith(' ') ? '\n' : ' ') + line.trimStart();
  });
}
