/** A value as JSON in which one letter is one byte: what the platform's stores of properties hold is counted in bytes. */
export function asciiJson(value: unknown): string {
  return JSON.stringify(value).replace(/[^ -~]/g, escaped);
}

function escaped(letter: string): string {
  return `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`;
}
