/** What the pictures are drawn in: told apart by lightness and dashes, so that grey will do. */
export interface Colours {
  readonly text: string;
  readonly quiet: string;
  /** Bars that are not to stand out, axes. */
  readonly soft: string;
  /** Lines to guide the eye, and what is filled under a curve. */
  readonly faint: string;
  readonly ground: string;
}

/** In a sheet, and on its print. */
export const paperColours: Colours = {
  text: '#1f2a1f',
  quiet: '#4a554a',
  soft: '#6f7b6f',
  faint: '#d5d8cf',
  ground: '#ffffff',
};

/** In the pane, which is light or dark: the colours of taskpane/colours.css by what they are for. */
export const paneColours: Colours = {
  text: 'var(--text)',
  quiet: 'var(--text-quiet)',
  soft: 'var(--edge)',
  faint: 'var(--rule)',
  ground: 'var(--ground)',
};
