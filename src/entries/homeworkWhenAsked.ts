import type { HomeworkTools } from '../taskpane/homeworkSection';

/** The problems and their texts are a part of the page that is loaded when they are first asked for. */
export const homeworkWhenAsked: HomeworkTools = {
  homeworkProblems: async (...asked) =>
    (await import('../functions/homeworkProblems')).homeworkProblems(...asked),
};
