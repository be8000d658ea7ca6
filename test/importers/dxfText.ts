/** A pair of lines of a DXF. */
export type Pair = readonly [code: number, value: string | number];

/** The text of an entity by its groups. */
export const entity = (kind: string, ...pairs: readonly Pair[]): string => text([[0, kind], ...pairs]);

export const text = (pairs: readonly Pair[]): string => pairs.map(([code, value]) => `${code}\n${value}\n`).join('');

const section = (name: string, content: string): string =>
  text([
    [0, 'SECTION'],
    [2, name],
  ]) +
  content +
  text([[0, 'ENDSEC']]);

/** A block by its name, its base point and its entities. */
export const block = (name: string, x: number, y: number, ...content: readonly string[]): string =>
  entity('BLOCK', [8, '0'], [2, name], [10, x], [20, y]) + content.join('') + entity('ENDBLK');

/** A light polyline of corners, with a bulge where three numbers are given. */
export const polyline = (closed: boolean, ...corners: readonly (readonly number[])[]): string =>
  entity(
    'LWPOLYLINE',
    [90, corners.length],
    [70, closed ? 1 : 0],
    ...corners.flatMap(([x = 0, y = 0, bulge = 0]): Pair[] => [
      [10, x],
      [20, y],
      [42, bulge],
    ]),
  );

interface Parts {
  readonly units?: number;
  readonly measurement?: number;
  readonly blocks?: string;
  readonly tables?: string;
}

/** A DXF of entities; in millimetres unless said otherwise. */
export const dxf = (
  entities: readonly string[],
  { units = 4, measurement = 1, blocks = '', tables = '' }: Parts = {},
): string => {
  const header = text([
    [9, '$ACADVER'],
    [1, 'AC1015'],
    [9, '$INSUNITS'],
    [70, units],
    [9, '$MEASUREMENT'],
    [70, measurement],
  ]);
  const sections = [section('HEADER', header), section('TABLES', tables), section('BLOCKS', blocks)];
  return `${sections.join('')}${section('ENTITIES', entities.join(''))}${entity('EOF')}`;
};
