/** As many as are read at a glance: judgement. */
const mostDays = 7;

/**
 * The heat of each day as it is added up in the working, of the first seven days where there are more.
 *
 * @param heats of the days [degree days], in order
 * @example heatPutIn([2.5, 20]) // '2.5 + 20'
 */
export function heatPutIn(heats: readonly number[]): string {
  const shown = heats.slice(0, mostDays).map((heat) => String(Number(heat.toPrecision(6))));
  return [...shown, ...(heats.length > mostDays ? ['…'] : [])].join(' + ');
}
