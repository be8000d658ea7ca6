import { parseSync } from 'vite';

/** What a source file says that the table has a say in. */
export interface Source {
  /** Every module it names: import, export from, import(), import types and new URL(…, import.meta.url). */
  readonly imports: readonly string[];
  /** Names it uses that are not properties of something. */
  readonly uses: ReadonlySet<string>;
  /** Names it declares: variables, parameters, functions, types, imports. */
  readonly declares: ReadonlySet<string>;
  /** Whether it calls for chance: Math.random, or Math used as a whole, which would hide it. */
  readonly usesChance: boolean;
  readonly exportsDefault: boolean;
}

type Node = { readonly type: string } & Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const children = (node: Node): [string, Node][] =>
  Object.entries(node).flatMap(([key, value]) =>
    (Array.isArray(value) ? value : [value]).filter(isNode).map((child): [string, Node] => [key, child]),
  );

const isName = (node: unknown, name: string) => isNode(node) && node.type === 'Identifier' && node.name === name;

const textOf = (node: unknown): string | undefined => {
  if (!isNode(node)) return undefined;
  if (node.type === 'TSLiteralType') return textOf(node.literal);
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateLiteral') return undefined;
  const [only, ...rest] = node.quasis as { value: { cooked: string } }[];
  return rest.length === 0 ? only?.value.cooked : undefined;
};

/** The module that a node names, if it is a node of that kind; a dynamic import of no fixed name is '(computed)'. */
const moduleOf = (node: Node): string | undefined => {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'TSImportType':
      return textOf(node.source);
    case 'ImportExpression':
      return textOf(node.source) ?? '(computed)';
    case 'NewExpression': {
      const [address, base] = node.arguments as unknown[];
      const besideThisFile = isNode(base) && base.type === 'MemberExpression' && isNode(base.object);
      const isMeta = besideThisFile && (base.object as Node).type === 'MetaProperty';
      return isName(node.callee, 'URL') && isMeta ? textOf(address) : undefined;
    }
    default:
      return undefined;
  }
};

/** Child keys that hold the name of a property rather than the use of a variable, unless in brackets. */
const namesProperty = (parent: Node, key: string) =>
  ((key === 'property' || key === 'key') && parent.computed !== true) ||
  (parent.type === 'TSQualifiedName' && key === 'right') ||
  key === 'imported' ||
  key === 'exported' ||
  key === 'label';

/** Child keys under which a pattern declares names. */
const declares = (key: string) => key === 'params' || key === 'id' || key === 'local' || key === 'param';

/** Reads one TypeScript source; throws an Error when it does not parse. */
export const readSource = (file: string, code: string): Source => {
  const { program, errors } = parseSync(file, code);
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  const imports: string[] = [];
  const uses = new Set<string>();
  const declared = new Set<string>();
  let usesChance = false;
  let exportsDefault = false;

  const visit = (node: Node, parent: Node, key: string, declaring: boolean): void => {
    const module = moduleOf(node);
    if (module !== undefined) imports.push(module);
    if (node.type === 'ExportDefaultDeclaration') exportsDefault = true;
    if (node.type === 'Identifier' && !namesProperty(parent, key)) {
      (declaring ? declared : uses).add(String(node.name));
      const member = parent.type === 'MemberExpression' && key === 'object' && parent.computed !== true;
      if (node.name === 'Math' && (!member || isName(parent.property, 'random'))) usesChance = true;
    }
    for (const [childKey, child] of children(node)) {
      const isType = childKey === 'typeAnnotation' || child.type.startsWith('TSType');
      const isValue = childKey === 'right' || childKey === 'body' || childKey === 'init' || childKey === 'object';
      const inPattern = declaring && !isType && !isValue;
      visit(child, node, childKey, declares(childKey) || inPattern);
    }
  };
  const top = program as unknown as Node;
  visit(top, top, '', false);
  return { imports, uses, declares: declared, usesChance, exportsDefault };
};
