/** Markup in which every text put in is text: `markup\`<p>${text}</p>\``. */
export interface Markup {
  readonly html: string;
}

type Part = string | Markup | readonly Markup[];

export function markup(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  const [first = '', ...rest] = strings;
  return { html: first + rest.map((string, i) => htmlOf(parts[i] ?? '') + string).join('') };
}

function htmlOf(part: Part): string {
  if (typeof part === 'string') return escapeText(part);
  return 'html' in part ? part.html : part.map(({ html }) => html).join('');
}

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escapeText(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => entities[sign] ?? sign);
}
