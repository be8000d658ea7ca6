import type { SvgElement } from './readSvgTree';

/** What decides whether an element is seen. */
export interface Look {
  readonly display?: string;
  readonly visibility?: string;
  readonly transform?: string;
}

const declarations = (text: string): Look => {
  const look: Record<string, string> = {};
  for (const part of text.split(';')) {
    const at = part.indexOf(':');
    const name = part.slice(0, Math.max(0, at)).trim().toLowerCase();
    if (name === 'display' || name === 'visibility' || name === 'transform')
      look[name] = part
        .slice(at + 1)
        .replace(/!\s*important/i, '')
        .trim()
        .toLowerCase();
  }
  return look;
};

/** A rule for an element name, a class or an id alone; other selectors are not read. */
const SIMPLE = /^(?:\*|[\w-]+|[.#][\w-]+)$/;

/** Selectors of one kind, weak ones first: what comes later wins. */
const strength = (selector: string): number => (selector.startsWith('#') ? 3 : selector.startsWith('.') ? 2 : 1);

/** The rules of all style elements by selector, as far as they decide what is seen. */
export const readStyleRules = (root: SvgElement): ReadonlyMap<string, Look> => {
  const rules = new Map<string, Look>();
  const read = (text: string): void => {
    for (const rule of text.replace(/\/\*.*?\*\//gs, '').split('}')) {
      const at = rule.lastIndexOf('{');
      if (at < 0) continue;
      const look = declarations(rule.slice(at + 1));
      if (Object.keys(look).length === 0) continue;
      for (const selector of rule.slice(rule.lastIndexOf('{', at - 1) + 1, at).split(','))
        if (SIMPLE.test(selector.trim())) rules.set(selector.trim(), { ...rules.get(selector.trim()), ...look });
    }
  };
  const visit = (element: SvgElement): void => {
    if (element.name === 'style') read(element.text);
    for (const child of element.children) visit(child);
  };
  visit(root);
  return rules;
};

/** How an element is to be seen: by attribute, by rule and by its own style, each stronger than the one before. */
export const lookOf = ({ name, attributes }: SvgElement, rules: ReadonlyMap<string, Look>): Look => {
  const plain: Record<string, string> = {};
  for (const key of ['display', 'visibility'] as const) {
    const value = attributes.get(key);
    if (value !== undefined) plain[key] = value.trim();
  }
  const classes = (attributes.get('class') ?? '').split(/\s+/).map((one) => `.${one}`);
  const selectors = ['*', name, ...classes, `#${attributes.get('id') ?? ''}`].sort((a, b) => strength(a) - strength(b));
  const ruled = selectors.map((selector) => rules.get(selector) ?? {});
  return Object.assign({}, plain, ...ruled, declarations(attributes.get('style') ?? ''));
};
