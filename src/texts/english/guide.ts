/** The pages of the function reference. */

export const guide = {
  functions: {
    /** After the id, in the title of its page. */
    pageTitle: '{id}: Cucurbit functions',
    indexTitle: 'Cucurbit functions, by task',
    indexLead:
      'A page for each worksheet function: what it asks, how it calculates, an example worked through, what it refuses, and where its figures come from.',
    conventions: [
      'Lengths are in feet and plant spacing in inches; with "metric" as the last argument in metres and centimetres.',
      'Shares are fractions or percent: 0.85 or 85%. Dates are dates.',
      'An argument in square brackets may be left out and then takes its default. Every function says what to do when an argument is missing, is an error, or is of another kind than it asks.',
    ],
    search: 'Search the functions',
    found: '{count} {count|function|functions} shown',
    all: 'All functions',
    asks: 'What it asks',
    asksNothing: 'It takes no argument.',
    optional: 'may be left out',
    gives: 'What it gives',
    example: 'An example',
    exampleGives: 'gives',
    working: 'The example worked through',
    notes: 'To keep in mind',
    calculation: 'How it calculates',
    source: 'Source: {source}',
    figures: 'Sources of the figures in the example',
    refuses: 'What it refuses',
    refusesLead:
      'It answers with one of these sentences in place of a number; slanted words stand for the figures and names of the case.',
    cautions: 'Cautions',
    related: 'Others for the same task: {family}',
  },
} as const;
