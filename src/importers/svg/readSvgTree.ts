import { SaxesParser } from 'saxes';
import { fail, ok, type Result } from '../../core/result';
import { IMPORT_LIMITS } from '../importLimits';
import { declaredEntities } from './declaredEntities';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';
const XLINK_NAMESPACE = 'http://www.w3.org/1999/xlink';

/** An element of SVG; those of other namespaces, with all that is in them, are left out. */
export interface SvgElement {
  readonly name: string;
  /** By local name: those without a namespace, and href of XLink where there is no other. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly SvgElement[];
  /** Of a style element. */
  readonly text: string;
}

interface Growing extends SvgElement {
  readonly children: Growing[];
  text: string;
}

/** Characters read between two looks at the faults found: few, since the parser grows slow with depth. */
const CHUNK = 4096;

/**
 * The elements of an SVG. Names that the file itself declares are put in only where they stand for plain text, and up to a
 * limit; nothing from outside of the file is ever put in.
 *
 * Codes: svg.damaged (not well-formed), svg.root (the root is not an svg element), svg.entity, import.tooMany, import.deep.
 */
export function readSvgTree(text: string): Result<SvgElement> {
  let fault: { code: string; message: string } | undefined;
  const found = (code: string, message: string): void => {
    fault ??= { code, message };
  };
  let root: Growing | undefined;
  let count = 0;
  /** null for an element that is left out. */
  const open: (Growing | null)[] = [];

  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    const name = /undefined entity/.test(error.message) ? 'svg.entity' : 'svg.damaged';
    const [, line = '', reason = error.message] = /^(\d+):\d+: (.*)$/s.exec(error.message) ?? [];
    const place = line === '' ? '' : ` in line ${line}`;
    if (name === 'svg.entity')
      return found(
        name,
        `The file uses a name of its own${place} that stands for more than plain text. Save it again as plain SVG.`,
      );
    found(name, `The file is damaged${place}: ${reason.trim().slice(0, 120)} Expected well-formed SVG.`);
  });
  parser.on('doctype', (doctype) => {
    declaredEntities(doctype, parser.ENTITIES, () =>
      found(
        'svg.entity',
        'The file repeats a name of its own so often that it would never end. Save it again as plain SVG.',
      ),
    );
  });
  parser.on('opentag', (tag) => {
    if (fault !== undefined) return;
    if (++count > IMPORT_LIMITS.elements)
      return found(
        'import.tooMany',
        `The file has more than ${IMPORT_LIMITS.elements} elements. Save the bridge's outline alone.`,
      );
    if (open.length >= IMPORT_LIMITS.depth)
      return found(
        'import.deep',
        `The file nests elements more than ${IMPORT_LIMITS.depth} deep. Save the bridge's outline alone.`,
      );
    const parent = open.at(-1);
    const inside = open.length === 0 || (parent !== null && parent !== undefined);
    if (!inside || tag.uri !== SVG_NAMESPACE) {
      if (open.length === 0)
        found('svg.root', `Expected a drawing (svg), and the file is of another kind (${tag.name.slice(0, 40)}).`);
      open.push(null);
      return;
    }
    const attributes = new Map<string, string>();
    for (const { local, uri, value } of Object.values(tag.attributes))
      if (uri === '' || (uri === XLINK_NAMESPACE && local === 'href' && !attributes.has('href')))
        attributes.set(local, value);
    const element: Growing = { name: tag.local, attributes, children: [], text: '' };
    if (parent) parent.children.push(element);
    else root = element;
    open.push(element);
  });
  const addText = (added: string): void => {
    const parent = open.at(-1);
    if (parent?.name === 'style') parent.text += added;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.on('closetag', () => {
    open.pop();
  });

  for (let at = 0; at < text.length && fault === undefined; at += CHUNK) parser.write(text.slice(at, at + CHUNK));
  if (fault === undefined) parser.close();
  if (fault !== undefined) return fail('', fault.code, fault.message);
  if (root === undefined) return fail('', 'svg.root', 'Expected a drawing (svg), and the file has none.');
  if (root.name !== 'svg')
    return fail(
      '',
      'svg.root',
      `Expected a drawing (svg), and the file is of another kind (${root.name.slice(0, 40)}).`,
    );
  return ok(root);
}
