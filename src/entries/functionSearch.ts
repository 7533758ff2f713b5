/** Search in the index of the function reference, which is there to read without it. */
import { hasWords, isNamedBy, searchedWords } from '../taskpane/hasWords';
import { fill } from '../texts/fill';

const field = document.querySelector<HTMLInputElement>('#search');
const box = field?.closest('search');
const found = document.querySelector<HTMLElement>('[data-found]');
const families = [...document.querySelectorAll<HTMLElement>('#functions section')];

function show(): void {
  const searched = field?.value ?? '';
  const ignored = box?.getAttribute('data-ignored') ?? '';
  const words = searchedWords(searched, ignored);
  let count = 0;
  for (const family of families) {
    const items = [...family.querySelectorAll<HTMLElement>('li')];
    for (const item of items) {
      const id = item.querySelector('a')?.textContent ?? '';
      item.hidden = !isNamedBy(id, words) && !hasWords(item.dataset['words'] ?? '', words, ignored);
    }
    const shown = items.filter(({ hidden }) => !hidden).length;
    family.hidden = shown === 0;
    count += shown;
  }
  const said = found?.dataset[count === 0 ? 'none' : 'found'] ?? '';
  if (found !== null) found.textContent = fill(said, { count, searched });
}

box?.removeAttribute('hidden');
field?.addEventListener('input', show);
