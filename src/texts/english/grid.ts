/** What the browser's grid says and its packages have no text for, by the keys they ask for it with. */
export const grid = {
  'sheets-formula': {
    progress: {
      analyzing: 'Looking for what to calculate…',
      calculating: 'Calculating…',
      'array-analysis': 'Looking for what else to calculate…',
      'array-calculation': 'Calculating what fills several cells…',
      done: 'Calculated',
    },
  },
  'sheets-ui': {
    merge: {
      confirm: {
        warning: 'Merged cells',
        dismantleMergeCellWarning: 'Some merged cells will be split. Go on?',
      },
    },
    filter: {
      confirm: {
        error: 'Hidden rows',
        notAllowedToInsertRange:
          'Cells cannot be moved while a filter hides rows here. Clear the filter first.',
      },
    },
    info: {
      error: 'Note',
      forceStringInfo: 'This number is kept as text.',
    },
  },
  'data-validation': { operators: { legal: 'is of the right kind' } },
  ui: { ribbon: { menu: 'Menu' } },
};
