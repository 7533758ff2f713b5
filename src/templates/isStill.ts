import { native, operate } from '../workbook/expressions';
import { isCellError, type Expression, type ReadValue } from '../workbook/port';

/** Programs add up in another order. */
const nearness = 0.0005;

/** Whether a cell holds now what it held. */
export function isStill(now: Expression, was: ReadValue): Expression {
  if (isCellError(was)) return native('ISERROR', now);
  if (typeof was !== 'number') return operate(operate(now, '&', ''), '=', String(was ?? ''));
  return native(
    'AND',
    operate(operate(now, '-', was), '<', nearness),
    operate(operate(was, '-', now), '<', nearness),
  );
}
