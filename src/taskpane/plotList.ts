/** The plots on the page, one to choose: a group of radio buttons, so that arrow keys walk through it. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element, paneId, setText } from './elements';
import { focusUnlessElsewhere } from './holdFocus';

const words = catalogue.pane.plots;

export interface PlotRow {
  /** As the person calls it, or the line it stands in. */
  readonly name: string;
  readonly details: string;
  /** "" for a plot that is in order. */
  readonly mark: string;
}

export interface PlotList {
  readonly element: HTMLElement;
  show(rows: readonly PlotRow[]): void;
  /** From 0; null when none is chosen. */
  chosen(): number | null;
  /** Brings it into sight. */
  choose(index: number | null): void;
  /** To the chosen plot, else to the first. */
  focus(): void;
}

/** A search is worth its place from here on. */
const manyPlots = 12;

interface Item {
  readonly element: HTMLElement;
  readonly radio: HTMLInputElement;
  readonly name: HTMLElement;
  readonly details: HTMLElement;
  readonly mark: HTMLElement;
}

/**
 * @param onChoose the person has chosen another
 * @param onPlace which line is chosen, of how many, may have changed
 */
export function createPlotList(
  onChoose: () => void,
  onPlace: (chosen: number | null, count: number) => void,
): PlotList {
  const searchId = paneId('find-plot');
  const search = element('input', { id: searchId, type: 'search', autocomplete: 'off' });
  const searchField = element(
    'div',
    { class: 'field' },
    element('label', { for: searchId }, words.find),
    element('div', { class: 'control' }, search),
  );
  const found = element('p', { role: 'status', class: 'hint' });
  const box = element('div', { class: 'lines' });
  const group = element('fieldset', {}, element('legend', {}, words.list), box);
  const all = element('div', {}, searchField, found, group);
  const items: Item[] = [];
  let rows: readonly PlotRow[] = [];
  let chosen: number | null = null;

  const createItem = (index: number): Item => {
    const radio = element('input', { type: 'radio', name: paneId('plot-line'), value: index });
    radio.addEventListener('change', () => {
      chosen = index;
      onPlace(chosen, rows.length);
      onChoose();
    });
    const name = element('span', { class: 'line-name' });
    const details = element('span', { class: 'line-details' });
    const mark = element('span', { class: 'line-mark' });
    const text = element('span', {}, name, ' ', mark, ' ', details);
    return { element: element('label', { class: 'line' }, radio, text), radio, name, details, mark };
  };
  const filter = (): void => {
    const wanted = search.value.trim().toLowerCase();
    let shown = 0;
    items.forEach((item, index) => {
      const { name = '', details = '', mark = '' } = rows[index] ?? {};
      const isShown = `${name} ${details} ${mark}`.toLowerCase().includes(wanted);
      item.element.hidden = !isShown;
      if (isShown) shown += 1;
    });
    setText(found, wanted === '' ? '' : fill(words.found, { shown, count: rows.length }));
    found.hidden = found.textContent === '';
  };
  search.addEventListener('input', filter);

  const choose = (index: number | null): void => {
    chosen = index !== null && index < rows.length ? index : null;
    items.forEach(({ radio }, i) => (radio.checked = i === chosen));
    onPlace(chosen, rows.length);
  };
  const itemChosen = (): Item | undefined => (chosen === null ? undefined : items[chosen]);

  return {
    element: all,
    show(next) {
      const before = chosen === null ? null : (rows[chosen]?.name ?? null);
      rows = next;
      while (items.length < rows.length) items.push(createItem(items.length));
      const held = items.find(({ radio }) => radio === document.activeElement);
      const gone = items.splice(rows.length);
      // Those that stay are not taken out and put back, which would take the focus from them.
      for (const item of gone) item.element.remove();
      box.append(...items.slice(box.childElementCount).map((item) => item.element));
      rows.forEach(({ name, details, mark }, index) => {
        const item = items[index];
        if (item === undefined) return;
        setText(item.name, name);
        setText(item.details, details);
        setText(item.mark, mark);
      });
      searchField.hidden = rows.length < manyPlots;
      if (searchField.hidden) search.value = '';
      filter();
      choose(chosen === null ? null : followName(rows, chosen, before));
      // The focus follows what is chosen, or the keyboard would stand on another plot than the buttons act on.
      if (held !== undefined) (itemChosen() ?? (gone.includes(held) ? items.at(-1) : held))?.radio.focus();
    },
    chosen: () => chosen,
    choose(index) {
      choose(index);
      const item = itemChosen();
      if (item?.element.hidden === true) {
        search.value = '';
        filter();
      }
      // The page of a test lays nothing out.
      item?.element.scrollIntoView?.({ block: 'nearest' });
    },
    focus: () => {
      const item = itemChosen() ?? items[0];
      if (item !== undefined) focusUnlessElsewhere(item.radio);
    },
  };
}

/**
 * Where a line is after its table was read anew: in its place, or in another under the same name.
 * @param name what it was called
 */
function followName(
  lines: readonly { readonly name: string }[],
  index: number,
  name: string | null,
): number | null {
  if (lines[index]?.name === name) return index;
  const same = lines.flatMap((line, i) => (line.name === name ? [i] : []));
  return same.length === 1 ? (same[0] ?? null) : index < lines.length ? index : null;
}
