/** How texts are set in pictures, measured without a page, so that every host gets the same picture. */

export const fontFamily = 'Roboto, sans-serif';
export const sizes = { text: 12, title: 14, line: 17, edge: 8 };

/** Of a letter, as a share of the size: on the wide side, for text that is broken into lines before it is drawn. */
const letterWidth = 0.56;

/** About how wide a text is drawn. */
export function textPx(text: string): number {
  return text.length * sizes.text * letterWidth;
}

/** Stands for a space that no line ends at. */
const joint = '\u00a0';

/** The text in lines that fit into a picture, set in that size. A number stays with what it counts. */
export function breakLines(text: string, size: number, widthPx: number): string[] {
  const mostLetters = Math.floor((widthPx - 2 * sizes.edge) / (size * letterWidth));
  const lines: string[] = [];
  for (const word of text.replace(/(\d) /g, `$1${joint}`).split(' ')) {
    const line = lines[lines.length - 1];
    if (line !== undefined && line.length + 1 + word.length <= mostLetters) {
      lines[lines.length - 1] = `${line} ${word}`;
    } else lines.push(word);
  }
  return lines.map((line) => line.replaceAll(joint, ' '));
}
