type Attributes = Readonly<Record<string, string | undefined>>;

/** An element with attributes and children; a string child becomes a text node, never markup. */
export function el<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

/** A button that says what it does; `id` brings the focus back after the page is drawn anew. */
export function button(
  { id, label, look = 'plain', isOff = false }: ButtonLooks,
  press: () => void,
): HTMLButtonElement {
  const made = el('button', { id, type: 'button', class: look }, label);
  made.disabled = isOff;
  made.addEventListener('click', press);
  return made;
}

export interface ButtonLooks {
  readonly id: string;
  readonly label: string;
  readonly look?: 'plain' | 'main';
  readonly isOff?: boolean;
}
