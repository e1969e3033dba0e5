import type { AnswerOf, CommandName, PayloadOf } from '../../shared/commands/commandTypes.ts';

/**
 * Calls a verb of the workbook.
 * @throws Error (as a rejection) with one sentence when the call fails or its answer cannot be read
 */
export function call<V extends CommandName>(verb: V, payload: PayloadOf<V>): Promise<AnswerOf<V>> {
  return new Promise((resolve, reject) => {
    const runner = google.script.run
      .withSuccessHandler((answer) => {
        if (isAnswer(answer))
          resolve(answer as AnswerOf<V>); // its kind was checked on this line
        else
          reject(new Error('The answer of the workbook could not be read. Open the panel anew.'));
      })
      .withFailureHandler(reject);
    runner[verb](payload);
  });
}

function isAnswer(answer: unknown): boolean {
  if (typeof answer !== 'object' || answer === null || !('kind' in answer)) return false;
  if (answer.kind === 'ok') return true;
  return answer.kind === 'refused' && 'problems' in answer && Array.isArray(answer.problems);
}
