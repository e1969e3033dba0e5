import { randomBytes } from 'node:crypto';

/** Pages of the add-on that frames of a window may load, each under an address nobody can guess. */
export interface FramePages {
  add(window: string, html: string): string;
  find(path: string): string | undefined;
  forget(window: string): void;
}

export const FRAMES = '/frame/';

/** @param script - runs first in every page and gives it `google.script` */
export function framePages(script: string): FramePages {
  const pages = new Map<string, { readonly window: string; readonly html: string }>();
  return {
    add: (window, html) => {
      const path = FRAMES + randomBytes(16).toString('hex');
      pages.set(path, { window, html: withScript(html, script) });
      return path;
    },
    find: (path) => pages.get(path)?.html,
    forget: (window) => {
      for (const [path, page] of pages) if (page.window === window) pages.delete(path);
    },
  };
}

/** Puts the script before everything else of the page, but after its doctype. */
function withScript(html: string, script: string): string {
  const doctype = /^\s*<!doctype[^>]*>/i.exec(html)?.[0] ?? '<!DOCTYPE html>';
  const rest = html.replace(/^\s*<!doctype[^>]*>/i, '');
  return `${doctype}<meta charset="utf-8"><script>${script.replaceAll('</script', '<\\/script')}</script>${rest}`;
}
