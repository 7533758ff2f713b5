/** A picture over everything else on the page, and as a file. Escape and a button lead back to where it was asked for. */
import { catalogue } from '../texts/catalogue';
import { element } from './elements';
import { handOut } from './handOut';
import { failureSentence } from './problemSentence';
import { showDrawing, type Drawn } from './showDrawing';

const words = catalogue.plotPictures.pane.larger;

/** A narrower page scrolls over it; wider than paper on its side serves nobody. */
const widths = { least: 960, most: 1600 };
/** Of the page's width, for what stands around the picture. */
const aroundPx = 96;

export interface PictureToEnlarge {
  readonly fileName: string;
  draw(widthPx: number): Promise<Drawn>;
  drawFile(): Promise<{ readonly value: { readonly png: Uint8Array } } | { readonly wrong: string }>;
}

export interface LargerPicture {
  readonly element: HTMLElement;
  open(picture: PictureToEnlarge): Promise<void>;
}

export function createLargerPicture(): LargerPicture {
  const save = element('button', { type: 'button' }, words.save);
  const close = element('button', { type: 'button' }, words.close);
  const said = element('p', { role: 'status', class: 'wrong' });
  const place = element('div', { class: 'pictures', role: 'region', tabindex: 0 });
  const dialog = element('dialog', {}, element('div', { class: 'buttons' }, close, save), said, place);
  let shown: PictureToEnlarge | null = null;
  const saveShown = async (): Promise<void> => {
    if (shown === null) return;
    const { fileName } = shown;
    const file = await shown.drawFile().catch((cause: unknown) => ({ wrong: failureSentence(cause) }));
    if ('wrong' in file) said.textContent = file.wrong;
    else handOut(fileName, new Uint8Array(file.value.png), 'image/png');
  };
  save.addEventListener('click', () => void saveShown());
  close.addEventListener('click', () => dialog.close());
  return {
    element: dialog,
    async open(picture) {
      const free = document.documentElement.clientWidth - aroundPx;
      const drawn = await picture.draw(Math.min(Math.max(free, widths.least), widths.most));
      const title = 'value' in drawn ? drawn.value.title : words.heading;
      shown = picture;
      said.textContent = '';
      dialog.setAttribute('aria-label', title);
      place.setAttribute('aria-label', title);
      place.replaceChildren(showDrawing(drawn));
      if (!dialog.open) dialog.showModal();
    },
  };
}
