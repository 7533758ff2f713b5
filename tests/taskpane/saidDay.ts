const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A day as the pane says it in English: "2027-05-09" is "May 9, 2027". */
export function saidDay(isoDay: string): string {
  const [year, month = 1, day] = isoDay.split('-').map(Number);
  return `${months[month - 1]} ${day}, ${year}`;
}
