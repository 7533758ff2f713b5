/** The homework: its sheet and its key. */
export const homework = {
  sheet: 'Homework',
  keySheet: 'Homework key',
  title: 'Homework',
  keyTitle: 'Homework: the key',
  lead: [
    'Type into Answer: a date as 2027-05-16, a share as 80% or 0.8. Verdict says "right", or the likely slip.',
    'In rows, hills and beds each plant has its whole spacing: half of it stays free at both ends of a row.',
    'Steps of a problem: select its line, then How a figure comes about in the pane; or copy Steps as a formula.',
    'No begins with the number of the homework, with m if it is metric: everybody gets the same problems for it.',
  ],
  keyLead: ['For the teacher. Values only: nothing here is calculated. Answers are rounded to six digits.'],
  percent: '{percent}%',
  numbered: { us: '{number}-{position}', metric: '{number}m-{position}' },
  columns: {
    position: { header: 'No', note: 'The number of the homework, and that of the problem.' },
    problem: { header: 'Problem', note: 'What is asked.' },
    answer: {
      header: 'Answer',
      note: 'Yours: a number, a date or a share. At best as exact as you have it.',
    },
    verdict: {
      header: 'Verdict',
      note: 'CUCURBIT.CHECK.SLIP: "right", or the slip that gives just that answer, or how far off it is.',
    },
    steps: {
      header: 'Steps',
      note: 'A formula as text. Copied into a free cell it shows the steps, one a row.',
    },
    function: { header: 'Function', note: 'The function that gives the answer.' },
    argument: {
      header: 'Argument {position}',
      note: 'What the function is given; blank for nothing. Dates or numbers of a list stand between ;.',
    },
    rightAnswer: { header: 'Right answer', note: '' },
  },
} as const;
