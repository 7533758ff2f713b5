/** Lines that a text takes in a box of so many characters; a word is broken only when it is longer than a line. */
export function countLines(text: string, characters: number): number {
  return text.split('\n').reduce((lines, paragraph) => lines + countParagraph(paragraph, characters), 0);
}

function countParagraph(paragraph: string, characters: number): number {
  let lines = 1;
  let used = 0;
  for (const word of paragraph.split(' ')) {
    if (used > 0 && used + word.length > characters) {
      lines += 1;
      used = 0;
    }
    lines += Math.max(0, Math.ceil(word.length / characters) - 1);
    used += word.length + 1;
  }
  return lines;
}
