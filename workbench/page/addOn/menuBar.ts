import type { Menu, MenuItem } from '../../host/Host.ts';
import { htmlElement } from '../htmlElement.ts';

interface OpenMenu {
  readonly title: HTMLElement;
  readonly list: HTMLElement;
}

/**
 * The add-on's menus as an ARIA menu bar: arrow keys, Home, End, Enter, Escape.
 *
 * @param choose - runs the chosen item
 */
export function menuBar(
  bar: HTMLElement,
  menus: readonly Menu[],
  choose: (item: MenuItem & { readonly run: string }) => void,
): void {
  const built = menus.map((menu, index) => menuOf(menu, index, run));
  let open: OpenMenu | undefined;
  bar.replaceChildren(
    ...built.map(({ title, list }) => htmlElement('div', { class: 'menu' }, title, list)),
  );

  function close(focus: 'back' | 'away') {
    if (!open) return;
    open.list.hidden = true;
    open.title.setAttribute('aria-expanded', 'false');
    if (focus === 'back') open.title.focus();
    open = undefined;
  }

  function show(menu: OpenMenu, at: 'first' | 'last') {
    close('away');
    open = menu;
    menu.list.hidden = false;
    menu.title.setAttribute('aria-expanded', 'true');
    const items = itemsOf(menu.list);
    (at === 'first' ? items[0] : items.at(-1))?.focus();
  }

  function run(item: MenuItem & { readonly run: string }) {
    close('back');
    choose(item);
  }

  built.forEach((menu, index) => {
    const beside = (step: number) => built[(index + step + built.length) % built.length] ?? menu;
    menu.title.tabIndex = index === 0 ? 0 : -1;
    menu.title.addEventListener('click', () => {
      if (open === menu) close('back');
      else show(menu, 'first');
    });
    menu.title.addEventListener('keydown', (event) => {
      if (event.key === 'ArrowDown') stop(event, () => show(menu, 'first'));
      if (event.key === 'ArrowUp') stop(event, () => show(menu, 'last'));
      if (event.key === 'ArrowRight') stop(event, () => beside(1).title.focus());
      if (event.key === 'ArrowLeft') stop(event, () => beside(-1).title.focus());
    });
    menu.list.addEventListener('keydown', (event) => {
      if (event.key === 'Escape') stop(event, () => close('back'));
      if (event.key === 'Tab') close('away');
      if (event.key === 'ArrowRight') stop(event, () => show(beside(1), 'first'));
      if (event.key === 'ArrowLeft') stop(event, () => show(beside(-1), 'first'));
      moveInside(menu.list, event);
    });
  });
  document.addEventListener('pointerdown', (event) => {
    if (event.target instanceof Node && !bar.contains(event.target)) close('away');
  });
  // A click into the grid or a frame takes the focus without an event on this document.
  window.addEventListener('blur', () => close('away'));
}

function menuOf(
  menu: Menu,
  index: number,
  choose: (item: MenuItem & { readonly run: string }) => void,
): OpenMenu {
  const title = htmlElement(
    'button',
    {
      type: 'button',
      role: 'menuitem',
      class: 'menu-title',
      id: `menu-${index}`,
      'aria-haspopup': 'menu',
      'aria-expanded': 'false',
    },
    menu.title,
  );
  const list = htmlElement('div', {
    role: 'menu',
    class: 'menu-list',
    'aria-labelledby': title.id,
  });
  list.hidden = true;
  for (const item of menu.items) list.append(itemOf(item, choose));
  return { title, list };
}

function itemOf(
  item: MenuItem,
  choose: (item: MenuItem & { readonly run: string }) => void,
): HTMLElement {
  const { label, run } = item;
  if (run === undefined) return htmlElement('div', { role: 'separator' });
  const made = htmlElement(
    'button',
    { type: 'button', role: 'menuitem', class: 'menu-item', tabindex: '-1' },
    label,
  );
  made.addEventListener('click', () => choose({ label, run }));
  return made;
}

function itemsOf(list: HTMLElement): readonly HTMLElement[] {
  return [...list.querySelectorAll<HTMLElement>('[role="menuitem"]')];
}

function moveInside(list: HTMLElement, event: KeyboardEvent): void {
  const items = itemsOf(list);
  const focused = document.activeElement;
  const at = focused instanceof HTMLElement ? items.indexOf(focused) : -1;
  const go = (to: number) => stop(event, () => items[(to + items.length) % items.length]?.focus());
  if (event.key === 'ArrowDown') go(at + 1);
  if (event.key === 'ArrowUp') go(at - 1);
  if (event.key === 'Home') go(0);
  if (event.key === 'End') go(-1);
}

function stop(event: Event, run: () => void): void {
  event.preventDefault();
  event.stopPropagation();
  run();
}
