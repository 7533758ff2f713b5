/**
 * Lets many small questions, asked in one breath, go to Excel as one request: each request is a round trip to it.
 * When one of them cannot be answered, each is asked by itself, so that it fails alone.
 */
export function askTogether<Question, Answer>(
  ask: (questions: readonly Question[]) => Promise<readonly Answer[]>,
): (question: Question) => Promise<Answer> {
  let waiting: { readonly question: Question; readonly answer: (given: Promise<Answer>) => void }[] = [];

  async function askAll(): Promise<void> {
    const asked = waiting;
    waiting = [];
    const one = async (question: Question): Promise<Answer> => (await ask([question]))[0] as Answer;
    const [first, ...others] = asked;
    if (others.length === 0) return first?.answer(one(first.question));
    const answers = await ask(asked.map(({ question }) => question)).catch(() => null);
    asked.forEach(({ question, answer }, i) =>
      answer(answers === null ? one(question) : Promise.resolve(answers[i] as Answer)),
    );
  }

  return (question) =>
    new Promise((resolve) => {
      waiting.push({ question, answer: resolve });
      if (waiting.length === 1) queueMicrotask(() => void askAll());
    });
}
