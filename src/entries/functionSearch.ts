/** Search in the index of the function reference, which is there to read without it. */
import { hasWords } from '../taskpane/hasWords';
import { fill } from '../texts/fill';

const field = document.querySelector<HTMLInputElement>('#search');
const found = document.querySelector<HTMLElement>('[data-found]');
const families = [...document.querySelectorAll<HTMLElement>('#functions section')];

function show(): void {
  let count = 0;
  for (const family of families) {
    const task = family.querySelector('h2')?.textContent ?? '';
    const items = [...family.querySelectorAll<HTMLElement>('li')];
    for (const item of items) item.hidden = !hasWords(`${item.textContent} ${task}`, field?.value ?? '');
    const shown = items.filter(({ hidden }) => !hidden).length;
    family.hidden = shown === 0;
    count += shown;
  }
  if (found !== null) found.textContent = fill(found.dataset['found'] ?? '', { count });
}

field?.closest('search')?.removeAttribute('hidden');
field?.addEventListener('input', show);
