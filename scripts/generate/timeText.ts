/** A time or a verdict in words; `kind` says which. */
export interface TimeOrVerdict {
  readonly kind: string;
  readonly seconds?: number;
}

/** One figure from the solver and from a closed form. */
export interface Compared {
  readonly solved: TimeOrVerdict;
  readonly closed: TimeOrVerdict;
}

/** Above this a closed form is not for plans. */
const LIMIT = 0.15;

/** Closed form over solver less 1; 0 where both give one verdict, undefined where they differ in it. */
export function closedFormError({ solved, closed }: Compared): number | undefined {
  if (solved.kind !== closed.kind) return undefined;
  if (solved.seconds === undefined || closed.seconds === undefined) return 0;
  return closed.seconds / solved.seconds - 1;
}

export function timeText({ kind, seconds }: TimeOrVerdict): string {
  return seconds === undefined ? kind : seconds.toFixed(0);
}

/** Per cent with its sign, bold above the limit; a dash where there is no time, the verdict where it differs. */
export function errorText(compared: Compared): string {
  const error = closedFormError(compared);
  if (error === undefined) return `**${timeText(compared.closed)}**`;
  if (compared.solved.seconds === undefined) return '–';
  return Math.abs(error) > LIMIT ? `**${percent(error)}**` : percent(error);
}

/** The largest error in size, with its sign. */
export function largest(all: readonly Compared[]): string {
  const errors = all.map((one) => closedFormError(one) ?? 0);
  return percent(errors.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0));
}

function percent(error: number): string {
  const rounded = (error * 100).toFixed(1);
  // No sign before a zero.
  if (Number(rounded) === 0) return '0.0 %';
  return `${error > 0 ? '+' : '−'}${rounded.replace('-', '')} %`;
}
