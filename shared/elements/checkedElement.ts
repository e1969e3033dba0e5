import { InputError } from '../errors/InputError.ts';
import { requireChoice } from '../errors/requireChoice.ts';
import {
  ELEMENT_ATTRIBUTES,
  ELEMENT_TAGS,
  type PlainElement,
  SVG_ATTRIBUTES,
  SVG_TAGS,
  SVG_VALUES,
  type SvgAttribute,
} from './plainElement.ts';

const SVG_NAMES = Object.keys(SVG_ATTRIBUTES) as SvgAttribute[]; // keys of the one list of them

/** What may be drawn of an element. */
export interface CheckedElement {
  readonly tag: string;
  readonly kind: 'html' | 'svg';
  readonly attributes: readonly (readonly [name: string, value: string])[];
}

/**
 * Tag and attributes of one element, each found on its list; an attribute of a drawing holds the kind of value it takes.
 * @throws InputError for an unlisted tag or attribute, and for a drawing's attribute of another kind
 */
export function checkedElement({ tag, attributes }: PlainElement): CheckedElement {
  const isSvg = SVG_TAGS.some((one) => one === tag);
  const known = requireChoice(tag, 'tag', isSvg ? SVG_TAGS : ELEMENT_TAGS);
  const names = isSvg ? SVG_NAMES : ELEMENT_ATTRIBUTES;
  return {
    tag: known,
    kind: isSvg ? 'svg' : 'html',
    attributes: Object.entries(attributes).map(([name, value]) => {
      const found = requireChoice<string>(name, 'attribute', names);
      if (isSvg) requireValue(found, value);
      return [found, value] as const;
    }),
  };
}

function requireValue(name: string, value: string): void {
  const kind = SVG_ATTRIBUTES[name as SvgAttribute]; // found on the list of them by the caller
  if (SVG_VALUES[kind].test(value)) return;
  throw new InputError({ field: name, rule: { kind: 'form', wanted: kind }, value });
}
