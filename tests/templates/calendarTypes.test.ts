/** What the sheets hand to the calendar and get from it is what calc takes and gives: neither may import the other. */
import { expectTypeOf, test } from 'vitest';
import type * as calc from '../../src/calc/calendar/plotTasks';
import type { Task } from '../../src/templates/drawUpCalendar';
import type { PlotDates } from '../../src/templates/readPlotDates';

test('plots and tasks are of one shape on both sides; the compiler looks at it', () => {
  expectTypeOf<PlotDates>().toEqualTypeOf<calc.PlotDates>();
  expectTypeOf<Task>().toEqualTypeOf<calc.Task>();
});
