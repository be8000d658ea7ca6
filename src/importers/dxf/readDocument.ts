import type { Group } from './readGroups';

/** An entity by its groups; a polyline has its vertices with it. */
export interface Entity {
  readonly kind: string;
  readonly groups: readonly Group[];
  readonly vertices: readonly Entity[];
}

export interface Block {
  readonly groups: readonly Group[];
  readonly entities: readonly Entity[];
}

/** What a DXF holds, as far as it bears on outlines. */
export interface DxfDocument {
  /** The first value of each variable of the header. */
  readonly header: ReadonlyMap<string, string>;
  readonly blocks: ReadonlyMap<string, Block>;
  readonly entities: readonly Entity[];
  /** Names of layers that are switched off or frozen. */
  readonly hidden: ReadonlySet<string>;
}

/** The first value with a code, or undefined. */
export const textOf = (groups: readonly Group[], code: number): string | undefined =>
  groups.find((group) => group.code === code)?.value;

/** The first number with a code: `usual` when there is none, NaN when it is not one. */
export const numberOf = (groups: readonly Group[], code: number, usual: number): number => {
  const value = textOf(groups, code);
  return value === undefined ? usual : toNumber(value);
};

/** A number as DXF writes it, or NaN; an empty line is none. */
export const toNumber = (value: string): number => (value === '' ? Number.NaN : Number(value));

/** Groups cut before each code 0: an entity, a vertex, the end of a block. */
const cut = (groups: readonly Group[]): Entity[] => {
  const parts: { kind: string; groups: Group[]; vertices: Entity[] }[] = [];
  for (const group of groups) {
    if (group.code === 0) parts.push({ kind: group.value.toUpperCase(), groups: [], vertices: [] });
    else parts.at(-1)?.groups.push(group);
  }
  return parts;
};

/** Vertices put with the polyline before them. */
const gather = (parts: readonly Entity[]): Entity[] => {
  const entities: { kind: string; groups: readonly Group[]; vertices: Entity[] }[] = [];
  for (const part of parts) {
    const last = entities.at(-1);
    if (part.kind === 'VERTEX' && last?.kind === 'POLYLINE') last.vertices.push(part);
    else if (part.kind !== 'SEQEND') entities.push({ ...part, vertices: [] });
  }
  return entities;
};

const readBlocks = (groups: readonly Group[]): Map<string, Block> => {
  const blocks = new Map<string, Block>();
  let head: Entity | undefined;
  let body: Entity[] = [];
  for (const part of cut(groups)) {
    if (part.kind === 'BLOCK') {
      head = part;
      body = [];
    } else if (part.kind === 'ENDBLK') {
      const name = head && textOf(head.groups, 2);
      if (head !== undefined && name !== undefined)
        blocks.set(name.toUpperCase(), { groups: head.groups, entities: gather(body) });
      head = undefined;
    } else body.push(part);
  }
  return blocks;
};

const readHeader = (groups: readonly Group[]): Map<string, string> => {
  const header = new Map<string, string>();
  let name: string | undefined;
  for (const { code, value } of groups) {
    if (code === 9) name = value.toUpperCase();
    else if (name !== undefined && !header.has(name)) header.set(name, value);
  }
  return header;
};

const readHidden = (groups: readonly Group[]): Set<string> => {
  const layers = cut(groups).filter(({ kind }) => kind === 'LAYER');
  const hidden = layers.filter(
    (layer) => numberOf(layer.groups, 62, 7) < 0 || (numberOf(layer.groups, 70, 0) & 1) === 1,
  );
  return new Set(hidden.map((layer) => (textOf(layer.groups, 2) ?? '').toUpperCase()));
};

/** A DXF by its sections. Names of blocks and layers are in capitals, since DXF does not tell them apart. */
export const readDocument = (groups: readonly Group[]): DxfDocument => {
  const sections = new Map<string, Group[]>();
  let section: Group[] | undefined;
  for (const [at, group] of groups.entries()) {
    if (group.code === 0 && group.value === 'SECTION') {
      const next = groups[at + 1];
      section = [];
      if (next?.code === 2) sections.set(next.value.toUpperCase(), section);
    } else if (group.code === 0 && group.value === 'ENDSEC') section = undefined;
    else section?.push(group);
  }
  const of = (name: string): readonly Group[] => sections.get(name) ?? [];
  return {
    header: readHeader(of('HEADER')),
    blocks: readBlocks(of('BLOCKS')),
    entities: gather(cut(of('ENTITIES'))),
    hidden: readHidden(of('TABLES')),
  };
};
