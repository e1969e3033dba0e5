type Attributes = Readonly<Record<string, string>>;

/** Makes an element with attributes and children; text children stay text. */
export function htmlElement<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...children);
  return made;
}

/** A push button that runs something. */
export function pushButton(
  label: string,
  run: () => void,
  attributes: Attributes = {},
): HTMLButtonElement {
  const made = htmlElement('button', { type: 'button', ...attributes }, label);
  made.addEventListener('click', run);
  return made;
}

/** An element of the page's own HTML. */
export function pageElement(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no element ${id}`);
  return found;
}
