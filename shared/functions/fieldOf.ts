/** The words of a parameter in messages and stubs: `cavityVolume` is `cavity volume`. */
export function fieldOf(key: string, parameter: { readonly field?: string }): string {
  return parameter.field ?? key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
