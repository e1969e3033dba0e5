import type { CommandName } from '../../shared/commands/commandTypes.ts';

/** The part of the platform's page API that the pages use; what passes is JSON and is checked by `call`. */
declare global {
  namespace google.script {
    type Runner = {
      withSuccessHandler(handler: (answer: unknown) => void): Runner;
      withFailureHandler(handler: (error: Error) => void): Runner;
    } & { readonly [V in CommandName]: (payload: unknown) => void };

    const run: Runner;
    const host: { close(): void };
  }
}
