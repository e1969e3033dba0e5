import { describe as describeError } from '../../shared/errors/describe.ts';
import { InputError } from '../../shared/errors/InputError.ts';

/** The sentence that a refused call leads to. */
export function errorText(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return describeError(error);
    throw error;
  }
  return 'was accepted';
}
