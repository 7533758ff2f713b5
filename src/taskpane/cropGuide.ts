/** The crop guide: crops searched and chosen, and what is known of them side by side. */
import { sayCrop } from '../templates/sayCrop';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { createCautionList } from './cautionsSection';
import { element, paneId, setText } from './elements';
import { hasWords, searchedWords } from './hasWords';
import type { UnitSystem } from './paneTools';

const words = catalogue.pane.crops;

/** One thing that is said of a crop; "" for what it does not have. */
export interface SaidOfCrop {
  readonly text: string;
  readonly remark: string;
  readonly source: string;
}

export interface GuideCrop {
  readonly name: string;
  readonly otherNames: readonly string[];
  /** Some of the guide's. */
  readonly uses: readonly string[];
  /** By the guide's headings. */
  readonly said: Readonly<Record<string, readonly SaidOfCrop[]>>;
}

export interface CropGuide {
  /** From top to bottom. */
  readonly headings: readonly string[];
  readonly uses: readonly string[];
  readonly crops: readonly GuideCrop[];
  readonly cautions: readonly string[];
}

/** Side by side in the widest pane. */
const mostCompared = 3;

/** @param guideIn the guide with its figures in one system; the one that the plan is in stands first */
export function createCropGuide(
  guideIn: (system: UnitSystem) => CropGuide,
  system: UnitSystem,
): { readonly element: HTMLElement; focus(): void } {
  const { crops, uses } = guideIn(system);
  const search = element('input', { id: paneId('crop-search'), type: 'search', autocomplete: 'off' });
  const use = createSelect('crop-use', [['', words.anyUse], ...uses.map((one) => [one, one] as const)]);
  const units = createSelect('crop-units', Object.entries(words.unitSystems));
  units.value = system;
  const withSources = element('input', { id: paneId('crop-sources'), type: 'checkbox' });
  const count = element('p', { role: 'status', class: 'hint' });
  const tooMany = element('p', { role: 'alert', class: 'notice notice-bad' });
  const compared = element('div');
  const lines = crops.map((crop) => {
    const box = element('input', { type: 'checkbox' });
    const line = element(
      'label',
      { class: 'line' },
      box,
      element(
        'span',
        {},
        element('span', { class: 'line-name' }, sayCrop(crop.name)),
        element(
          'span',
          { class: 'line-details' },
          fill(words.names, { names: crop.otherNames.slice(0, 3).join(', ') }),
        ),
      ),
    );
    box.addEventListener('change', () => choose(box));
    return { crop, box, element: line };
  });

  const chosen = (): readonly string[] => lines.flatMap(({ crop, box }) => (box.checked ? crop.name : []));
  const choose = (box: HTMLInputElement): void => {
    const isOver = chosen().length > mostCompared;
    if (isOver) box.checked = false;
    setText(tooMany, isOver ? fill(words.tooMany, { most: mostCompared }) : '');
    show();
  };
  /** A crop that is looked at stays in the list, whatever is searched for. */
  const filter = (): void => {
    const wanted = searchedWords(search.value);
    const isWanted = ({ name, otherNames, uses: goodFor, said }: GuideCrop): boolean =>
      (use.value === '' || goodFor.includes(use.value)) &&
      hasWords(
        [
          sayCrop(name),
          ...otherNames,
          ...Object.values(said)
            .flat()
            .map(({ text }) => text),
        ].join(' '),
        wanted,
      );
    for (const line of lines) line.element.hidden = !line.box.checked && !isWanted(line.crop);
    const isFound = lines.some((line) => isWanted(line.crop));
    const listed = lines.filter((line) => !line.element.hidden).length;
    setText(
      count,
      isFound
        ? fill(words.count, { count: listed })
        : fill(words.none, { any: words.anyUse, use: words.use }),
    );
  };
  const show = (): void => {
    filter();
    const guide = guideIn(units.value === 'metric' ? 'metric' : 'us');
    const names = chosen();
    const shown = guide.crops.filter(({ name }) => names.includes(name));
    const rows = guide.headings.filter((heading) => shown.some(({ said }) => said[heading]?.length));
    compared.replaceChildren(
      ...(shown.length === 0 ? [element('p', { class: 'hint' }, words.nobody)] : []),
      ...rows.flatMap((heading) => [
        element('h3', {}, heading),
        element(
          'dl',
          { class: 'side-by-side' },
          ...shown.map((crop) => sayOf(crop, heading, withSources.checked)),
        ),
      ]),
      ...(shown.length === 0 ? [] : [element('h3', {}, words.cautions), createCautionList(guide.cautions)]),
    );
  };
  search.addEventListener('input', filter);
  use.addEventListener('change', filter);
  units.addEventListener('change', show);
  withSources.addEventListener('change', show);
  show();

  return {
    element: element(
      'div',
      {},
      element(
        'div',
        { class: 'fields' },
        fieldOf(words.search, search, words.searchHelp),
        fieldOf(words.use, use),
        fieldOf(words.units, units),
      ),
      element(
        'fieldset',
        {},
        element('legend', {}, fill(words.choose, { most: mostCompared })),
        count,
        element('div', { class: 'lines' }, ...lines.map((line) => line.element)),
      ),
      tooMany,
      element('label', { class: 'line', for: withSources.id }, withSources, words.sources),
      compared,
    ),
    focus: () => search.focus(),
  };
}

function createSelect(
  name: string,
  options: readonly (readonly [value: string, text: string])[],
): HTMLSelectElement {
  return element(
    'select',
    { id: paneId(name) },
    ...options.map(([value, text]) => element('option', { value }, text)),
  );
}

function fieldOf(label: string, control: HTMLElement, help = ''): HTMLElement {
  const helpId = `${control.id}-help`;
  if (help !== '') control.setAttribute('aria-describedby', helpId);
  return element(
    'div',
    { class: 'field' },
    element('label', { for: control.id }, label),
    element('div', { class: 'control' }, control),
    ...(help === '' ? [] : [element('p', { id: helpId, class: 'help' }, help)]),
  );
}

function sayOf({ name, said }: GuideCrop, heading: string, withSources: boolean): HTMLElement {
  const lines = (said[heading] ?? []).map(({ text, remark, source }) =>
    element(
      'dd',
      {},
      text,
      ...[remark, withSources ? source : '']
        .filter((one) => one !== '')
        .map((one) => element('span', { class: 'line-details' }, one)),
    ),
  );
  return element(
    'div',
    {},
    element('dt', {}, sayCrop(name)),
    ...(lines.length === 0 ? [element('dd', { class: 'help' }, words.noFigure)] : lines),
  );
}
