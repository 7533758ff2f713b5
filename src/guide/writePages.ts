/** The pages of the function reference as files of HTML that need no script to be read. */
import type { WorkingLine } from '../functions/explain';
import { catalogue } from '../texts/catalogue';
import { guide } from '../texts/guide';
import { fill } from '../texts/fill';
import { language, pagesIn } from '../texts/language';
import type { ListedFunction } from '../workbook/functionHelp';
import type { FunctionPage } from './functionPage';
import { markup, type Markup } from './markup';
import type { Calculation } from './readCalculations';

const words = guide.functions;
const {
  functionList,
  language: { tag: otherLanguage },
} = catalogue.pane;
const refusedValues: Readonly<Record<string, string>> = guide.refusedValues;
const index = 'index.html';

/** The way from a page to what the pages of all languages share. */
const top = pagesIn(language) === '' ? '' : '../';

const fileOf = (id: string): string => `${id}.html`;

/** By file name: a page a function, and the index. */
export function writePages(pages: readonly FunctionPage[]): ReadonlyMap<string, string> {
  const families = new Map<string, FunctionPage[]>();
  for (const page of pages) families.set(page.help.family, [...(families.get(page.help.family) ?? []), page]);
  return new Map([
    [index, writeIndex(families)],
    ...pages.map((page) => {
      const related = families.get(page.help.family)?.filter((other) => other !== page) ?? [];
      return [fileOf(page.help.id), writePage(page, related)] as const;
    }),
  ]);
}

function writeIndex(families: ReadonlyMap<string, readonly FunctionPage[]>): string {
  const lists = [...families].map(
    ([family, pages]) => markup`<section><h2>${family}</h2>${searchedList(pages)}</section>`,
  );
  return frame(
    words.indexTitle,
    markup`<nav>${leadToOther(index)}</nav>
<h1>${words.indexTitle}</h1>
<p>${words.indexLead}</p>
<ul>${words.conventions.map((one) => markup`<li>${one}</li>`)}</ul>
<search hidden data-ignored="${functionList.ignored}"><label for="search">${functionList.search}</label><input id="search" type="search" autocomplete="off"><p role="status" data-found="${words.found}" data-none="${functionList.none}"></p></search>
<div id="functions">${lists}</div>`,
    markup`<script src="${top}search.js" defer></script>`,
  );
}

function searchedList(pages: readonly FunctionPage[]): Markup {
  const items = pages.map(({ help }) => markup`<li data-words="${help.foundBy}">${leadTo(help)}</li>`);
  return markup`<ul class="functions">${items}</ul>`;
}

function listOf(pages: readonly FunctionPage[]): Markup {
  return markup`<ul class="functions">${pages.map(({ help }) => markup`<li>${leadTo(help)}</li>`)}</ul>`;
}

function leadTo({ id, description }: ListedFunction): Markup {
  return markup`<a href="${fileOf(id)}">${id}</a> ${description}`;
}

/** To the same page in the other language, in whose words it is said. */
function leadToOther(file: string): Markup {
  return markup`<a href="${top}${pagesIn(otherLanguage)}${file}" lang="${otherLanguage}" hreflang="${otherLanguage}">${words.inOther}</a>`;
}

function writePage(page: FunctionPage, related: readonly FunctionPage[]): string {
  const { help, gives, result } = page;
  return frame(
    fill(words.pageTitle, { id: help.id }),
    markup`<nav><a href="${index}">${words.all}</a> ${leadToOther(fileOf(help.id))}</nav>
<h1>${help.id}</h1>
<p>${help.description}</p>
<p>${formula(syntaxOf(help))}</p>
${part(words.asks, help.parameters.length === 0 ? markup`<p>${words.asksNothing}</p>` : writeArguments(page))}
${part(words.gives, inEnglish(markup`<p>${gives}</p>`))}
${part(words.example, markup`<p>${formula(help.example)} ${words.exampleGives} <output>${result}</output></p><p>${fill(words.putIntoCell, { id: help.id, heading: functionList.heading, open: functionList.open, put: functionList.put })}</p>`)}
${writeWorking(page)}
${unless(page.calculations, (all) => part(words.calculation, inEnglish(markup`${all.map(writeCalculation)}`)))}
${unless(page.refuses, (all) => part(words.refuses, markup`<p>${words.refusesLead}</p><ul>${all.map((one) => markup`<li>${withVariables(one)}</li>`)}</ul>`))}
${unless(page.cautions, (all) => part(words.cautions, plainList(all)))}
${unless(related, (all) => part(fill(words.related, { family: help.family }), listOf(all)))}`,
  );
}

/** A long one goes on in the next line behind a comma. */
function formula(text: string): Markup {
  return markup`<code>${text.split(/(?<=[,;])/).map((piece) => markup`${piece}<wbr>`)}</code>`;
}

/** As it is typed, with what may be left out in brackets. */
function syntaxOf({ id, example, parameters }: ListedFunction): string {
  const namespace = /\b([A-Z]+\.)[A-Z]+\.[A-Z]+\(/.exec(example)?.[1] ?? '';
  const names = parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name));
  return `=${namespace}${id}(${names.join(', ')})`;
}

function writeArguments({ help, refusedArguments }: FunctionPage): Markup {
  const items = help.parameters.map(({ name, description, optional }, i) => {
    const remark = optional === true ? markup` <span class="quiet">${words.optional}</span>` : '';
    const refused = (refusedArguments[i] ?? []).map((one) => markup`<br><span class="quiet">${one}</span>`);
    return markup`<div><dt><code>${name}</code>${remark}</dt><dd>${description}${refused}</dd></div>`;
  });
  return markup`<dl>${items}</dl>`;
}

function writeWorking({ working }: FunctionPage): Markup {
  const steps = working.filter(({ kind }) => kind === 'step' || kind === 'assumption');
  const titles = (kind: string): string[] =>
    working.filter((line) => line.kind === kind).map(({ title }) => title);
  return markup`${unless(steps, (all) => part(words.working, markup`<ol>${all.map(writeStep)}</ol>`))}
${unless(titles('remark'), (all) => part(words.notes, plainList(all)))}
${unless(titles('source'), (all) => part(words.figures, plainList(all)))}`;
}

function writeStep({ title, formula, numbersPutIn, result, unit, rounding }: WorkingLine): Markup {
  const under = [formula, numbersPutIn].filter((one) => one !== '');
  return markup`<li>${title}: <output>${`${result} ${unit}`.trim()}</output>${rounding === '' ? '' : `, ${rounding}`}${under.map((one) => markup`<br><span class="quiet">${one}</span>`)}</li>`;
}

function writeCalculation({ name, definition, source }: Calculation): Markup {
  const [sentence = '', ...equations] = definition;
  return markup`<h3><code>${name}</code></h3><p>${sentence}</p>${equations.map((one) => markup`<p class="equation">${one}</p>`)}<p class="quiet">${fill(words.source, { source })}</p>`;
}

/** Placeholders as slanted words: "{count|cell|cells}" as what goes with many. */
function withVariables(sentence: string): Markup {
  const parts = sentence.split(/(\{[^}]*\})/).map((text) => {
    const [, name = '', many] = /^\{(\w+)(?:\|[^|]*\|([^|]*))?\}$/.exec(text) ?? [];
    if (name === '') return markup`${text}`;
    return many === undefined ? markup`<var>${refusedValues[name] ?? name}</var>` : markup`${many}`;
  });
  return markup`${parts}`;
}

function plainList(sentences: readonly string[]): Markup {
  return markup`<ul>${sentences.map((one) => markup`<li>${one}</li>`)}</ul>`;
}

/** What the comments of the code say, which are in one language. */
function inEnglish(said: Markup): Markup {
  return language === 'en'
    ? said
    : markup`<p class="quiet">${words.inEnglish}</p><div lang="en">${said}</div>`;
}

function part(heading: string, content: Markup): Markup {
  return markup`<section><h2>${heading}</h2>${content}</section>`;
}

function unless<Item>(items: readonly Item[], write: (items: readonly Item[]) => Markup): Markup {
  return items.length === 0 ? markup`` : write(items);
}

function frame(title: string, main: Markup, script = markup``): string {
  return markup`<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="stylesheet" href="${top}pages.css">
${script}</head>
<body class="cucurbit-pane">
<main>
${main}
</main>
</body>
</html>
`.html;
}
