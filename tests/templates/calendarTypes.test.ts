/** What the sheets hand to the calendar and get from it is what calc takes and gives: neither may import the other. */
import { expectTypeOf, test } from 'vitest';
import type * as calc from '../../src/calc/calendar/plotTasks';
import type * as sheets from '../../src/templates/drawUpCalendar';

test('plots and tasks are of one shape on both sides; the compiler looks at it', () => {
  expectTypeOf<sheets.PlotDates>().toEqualTypeOf<calc.PlotDates>();
  expectTypeOf<sheets.Task>().toEqualTypeOf<calc.Task>();
});
