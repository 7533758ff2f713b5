// @vitest-environment jsdom
/** What holds for all pictures: nothing typed becomes markup, grey will do, the same twice. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { paneColours, paperColours } from '../../src/pictures/colours';
import { drawWeather, type WeatherSeries } from '../../src/pictures/drawWeather';
import { contrast } from '../contrast';
import { chance, heat, narrow, parse, textsOf, wickedPlace, wide, yearsOf } from './pictureData';

const seriesAt = (place: string): WeatherSeries => ({
  chance: { value: { ...chance, place } },
  heat: { value: { ...heat, place } },
  years: { value: { ...yearsOf(40), place } },
});
const drawAll = (series: WeatherSeries, frame: typeof wide) =>
  drawWeather(series, frame).map(({ name, drawn }) => {
    if ('wrong' in drawn) throw new Error(drawn.wrong);
    return { name, ...drawn.value };
  });

describe.each([
  ['paper', paperColours],
  ['pane', paneColours],
])('in the colours of the %s', (_, colours) => {
  test('a place is a text, whatever is typed', () => {
    for (const { svg, alt, title } of drawAll(seriesAt(wickedPlace), { ...wide, colours })) {
      const picture = parse(svg);
      expect(picture.querySelector('script, style, foreignObject, a, image')).toBeNull();
      const shown = textsOf(picture).map(({ text }) => text);
      expect(shown.join(' ')).toContain(wickedPlace);
      expect(title).toContain(wickedPlace);
      expect(alt).toContain(wickedPlace);
      // On a page it is read as HTML.
      const page = document.createElement('div');
      page.innerHTML = svg;
      expect(page.querySelectorAll('script')).toHaveLength(0);
      expect(page.textContent.replace(/\s+/g, ' ')).toContain(wickedPlace);
    }
  });

  test('no rule, id, class or handler that the page around it would share', () => {
    for (const { svg } of drawAll(seriesAt('Invented garden'), { ...wide, colours })) {
      const picture = parse(svg);
      for (const each of picture.querySelectorAll('*')) {
        const names = [...each.attributes].map(({ name }) => name);
        expect(
          names.filter((name) => /^(id|class|on.*|href|xlink:href|clip-path|ecmeta.*)$/.test(name)),
        ).toEqual([]);
      }
    }
  });

  test('drawn twice it is the same to the letter', () => {
    const twice = [1, 2].map(() => drawAll(seriesAt('Invented garden'), { ...narrow, colours }));
    expect(twice[0]).toEqual(twice[1]);
  });

  test('only the colours that are given', () => {
    const given = new Set<string>([...Object.values(colours), 'none', '']);
    for (const { svg } of drawAll(seriesAt('Invented garden'), { ...wide, colours })) {
      for (const each of parse(svg).querySelectorAll('path, text, circle, rect')) {
        const isSeen = (name: string): boolean =>
          each.getAttribute(`${name}-opacity`) !== '0' && each.getAttribute(`${name}-width`) !== '0';
        for (const name of ['fill', 'stroke'].filter(isSeen)) {
          expect([...given], each.outerHTML).toContain(each.getAttribute(name) ?? '');
        }
      }
    }
  });
});

describe('in grey', () => {
  /** Text 4.5 to 1 (WCAG 2.2, 1.4.3), what carries meaning 3 to 1 (1.4.11); luminance alone, so grey print will do. */
  test.each([
    ['text', 'ground', 4.5],
    ['quiet', 'ground', 4.5],
    ['text', 'faint', 4.5],
    ['soft', 'ground', 3],
    // The middle season among the others.
    ['text', 'soft', 3],
  ] as const)('%s on %s is at least %d to 1', (front, back, least) => {
    expect(contrast(paperColours[front], paperColours[back])).toBeGreaterThanOrEqual(least);
  });

  test('the pane has each colour, and on paper they are its light ones', () => {
    const [light = '', dark = ''] = readFileSync('src/taskpane/colours.css', 'utf8').split('@media');
    for (const name of ['text', 'quiet', 'soft', 'faint'] as const) {
      const token = /var\((--[\w-]+)\)/.exec(paneColours[name])?.[1] ?? '';
      expect(light).toContain(`${token}: ${paperColours[name]};`);
      expect(dark).toContain(`${token}: #`);
    }
  });
});

test('what cannot be drawn is said in its place, and what nobody asked for is left out', () => {
  const drawn = drawWeather({ ...seriesAt(''), chance: { wrong: 'It never froze.' }, heat: null }, wide);
  expect(drawn.map(({ name, drawn: one }) => [name, 'wrong' in one ? one.wrong : 'drawn'])).toEqual([
    ['chance', 'It never froze.'],
    ['years', 'drawn'],
  ]);
});
