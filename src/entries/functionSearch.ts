/** Search in the index of the function reference, which is there to read without it. */
import { isBegunBy, isNamedBy, searchedWords, thoseWithWords } from '../taskpane/hasWords';
import { fill } from '../texts/fill';

const field = document.querySelector<HTMLInputElement>('#search');
const box = field?.closest('search');
const found = document.querySelector<HTMLElement>('[data-found]');
const families = [...document.querySelectorAll<HTMLElement>('#functions section')];
const items = families.flatMap((family) => [...family.querySelectorAll<HTMLElement>('li')]);

const taskOf = (item: HTMLElement): string => item.closest('section')?.querySelector('h2')?.textContent ?? '';
const withTask = (item: HTMLElement): string => `${taskOf(item)} ${item.dataset['words']}`;

function show(): void {
  const searched = field?.value ?? '';
  const ignored = box?.getAttribute('data-ignored') ?? '';
  const words = searchedWords(searched, ignored);
  const named = items.filter((item) => isNamedBy(item.querySelector('a')?.textContent ?? '', words));
  const others = items.filter((item) => !named.includes(item));
  const ownWords = (item: HTMLElement): string =>
    isBegunBy(taskOf(item), searched) ? withTask(item) : (item.dataset['words'] ?? '');
  const own = [...named, ...thoseWithWords(others, ownWords, words, ignored)];
  const shown = own.length > 0 ? own : thoseWithWords(items, withTask, words, ignored);
  for (const item of items) item.hidden = !shown.includes(item);
  // In the order in which they are found.
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
