/**
 * Text that a cell keeps as text: anything the platform could read as a formula, a number, a date or its own text mark gets the text mark in front,
 * which is not part of the value. Every text a user typed goes through here before `setValues`.
 */
export function safeText(text: string): string {
  return text === '' ? '' : `'${text}`;
}
