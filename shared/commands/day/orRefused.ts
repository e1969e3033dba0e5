import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import { type Refused, refuse } from '../../errors/refuse.ts';

/** An answer of the planner, or the figure of the book that it refuses. */
export function orRefused<Answer>(plan: () => Answer): Answer | Refused {
  try {
    return plan();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return refuse('', describe(error));
  }
}
