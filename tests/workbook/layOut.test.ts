import { expect, test } from 'vitest';
import { seasonTemplate } from '../../src/templates/season';
import { columnWidths } from '../../src/workbook/layOut';
import type { SheetTemplate } from '../../src/workbook/template';

const withPlace = (content: string | null): SheetTemplate => ({
  ...seasonTemplate,
  form: seasonTemplate.form.map((line) => (line.name === 'PLACE' ? { ...line, content } : line)),
});

test('a form alone on its sheet is as wide as the texts put into it, within reason, and no narrower than usual', () => {
  const [, usual = 0] = columnWidths(withPlace(null));
  const place = 'Invented garden on the creek';
  expect(columnWidths(withPlace(place))[1]).toBeGreaterThan(place.length);
  expect(columnWidths(withPlace('Creek'))[1]).toBe(usual);
  expect(columnWidths(withPlace('x'.repeat(500)))[1]).toBeLessThan(60);
});
