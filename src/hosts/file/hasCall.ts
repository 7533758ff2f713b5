import type { Expression } from '../../workbook/port';

/** Whether one of our functions takes part. Such a cell is stored as its value: no other program could compute it. */
export function hasCall(expression: Expression | null): boolean {
  if (expression === null) return false;
  if ('call' in expression) return true;
  if ('native' in expression) return expression.args.some(hasCall);
  return 'operator' in expression && (hasCall(expression.left) || hasCall(expression.right));
}
