/** Search in the index of the function reference, which is there to read without it. */
import { fill } from '../texts/fill';
import { foundByWords, isNamedBy, searchedWords } from './hasWords';

const underTasks = {
  headingOf: (item: HTMLElement) => item.closest('section')?.querySelector('h2')?.textContent ?? '',
  wordsOf: (item: HTMLElement) => item.dataset['words'] ?? '',
};

/** Shows the field, and of the functions those that are found, in the order in which they are. */
export function listenForSearch(page: Document): void {
  const field = page.querySelector<HTMLInputElement>('#search');
  const box = field?.closest('search');
  const found = page.querySelector<HTMLElement>('[data-found]');
  const families = [...page.querySelectorAll<HTMLElement>('#functions section')];
  const items = families.flatMap((family) => [...family.querySelectorAll<HTMLElement>('li')]);
  function show(): void {
    const searched = field?.value ?? '';
    const ignored = box?.getAttribute('data-ignored') ?? '';
    const words = searchedWords(searched, ignored);
    const named = items.filter((item) => isNamedBy(item.querySelector('a')?.textContent ?? '', words));
    const shown = [...named, ...foundByWords(items, named, underTasks, searched, ignored)];
    for (const item of items) item.hidden = !shown.includes(item);
    for (const item of shown) item.parentElement?.append(item);
    const inOrder = new Set([...shown, ...items].map((item) => item.closest('section')));
    for (const family of inOrder) family?.parentElement?.append(family);
    for (const family of families) family.hidden = family.querySelector('li:not([hidden])') === null;
    const count = shown.length;
    const said = found?.dataset[count === 0 ? 'none' : 'found'] ?? '';
    if (found !== null) found.textContent = fill(said, { count, searched });
  }
  box?.removeAttribute('hidden');
  field?.addEventListener('input', show);
}
