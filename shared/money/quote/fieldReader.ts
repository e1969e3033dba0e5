import { describe } from '../../errors/describe.ts';
import { InputError } from '../../errors/InputError.ts';
import type { Problem } from '../../errors/refuse.ts';
import type { QuoteKey, QuoteValues } from './quoteFieldTypes.ts';

/** Reads typed fields one by one and gathers what is wrong with them. */
export interface FieldReader {
  readonly problems: readonly Problem[];
  /** The parsed field, or undefined where it is blank or was refused. */
  readonly take: <Value>(key: QuoteKey, parse: (text: string) => Value) => Value | undefined;
}

export function fieldReader(values: QuoteValues): FieldReader {
  const problems: Problem[] = [];
  return {
    problems,
    take: (key, parse) => {
      const text = (values[key] ?? '').trim();
      if (text === '') return undefined;
      try {
        return parse(text);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        problems.push({ field: key, text: describe(error) });
        return undefined;
      }
    },
  };
}
