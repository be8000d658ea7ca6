import type { Point } from '../../core/geom/types';
import { dxfBulge, dxfPlace } from './dxfNumber';
import { asciiDxfText } from './dxfText';
import { CONTINUOUS, LINE_TYPES } from './lineTypes';
import type { DxfDrawing, DxfLayer, Entity } from './types';

/** A group of a DXF: its code, which says what the value is, and the value. */
type Group = readonly [code: number, value: string | number];

const place = ({ x, y }: Point, code = 10): readonly Group[] => [
  [code, dxfPlace(x)],
  [code + 10, dxfPlace(y)],
  [code + 20, 0],
];

const ACROSS = { start: 0, middle: 1, end: 2 } as const;
/** Of the codes for where a text stands up and down: at its middle. */
const MIDWAY = 2;

const entity = (kind: string, layer: string, ...groups: readonly Group[]): readonly Group[] => [
  [0, kind],
  [8, layer],
  ...groups,
];

const entityGroups = (item: Entity): readonly Group[] => {
  const { layer } = item;
  switch (item.kind) {
    case 'line':
      return entity('LINE', layer, ...place(item.from), ...place(item.to, 11));
    case 'circle':
      return entity('CIRCLE', layer, ...place(item.centre), [40, dxfPlace(item.radius)]);
    case 'polyline':
      return [
        ...entity('POLYLINE', layer, [66, 1], ...place({ x: 0, y: 0 }), [70, item.closed ? 1 : 0]),
        ...item.corners.flatMap(({ at, bulge }) => entity('VERTEX', layer, ...place(at), [42, dxfBulge(bulge)])),
        ...entity('SEQEND', layer),
      ];
    case 'text':
      return entity(
        'TEXT',
        layer,
        ...place(item.at),
        [40, dxfPlace(item.height)],
        [1, asciiDxfText(item.text)],
        [50, dxfPlace(item.degrees)],
        [72, ACROSS[item.anchor]],
        [73, MIDWAY],
        ...place(item.at, 11),
      );
    case 'spline':
      throw new RangeError('writeR12: a curve was left, which R12 does not have');
  }
};

const section = (name: string, groups: readonly Group[]): readonly Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...groups,
  [0, 'ENDSEC'],
];

const table = (name: string, entries: readonly (readonly Group[])[]): readonly Group[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flatMap((groups): readonly Group[] => [[0, name], ...groups]),
  [0, 'ENDTAB'],
];

const lineType = (name: string, description: string, pattern: readonly number[]): readonly Group[] => [
  [2, name],
  [70, 0],
  [3, description],
  [72, 65],
  [73, pattern.length],
  [40, dxfPlace(pattern.reduce((sum, length) => sum + Math.abs(length), 0))],
  ...pattern.map((length): Group => [49, length]),
];

const layerEntry = ({ name, colour, lineType: type }: DxfLayer): readonly Group[] => [
  [2, name],
  [70, 0],
  [62, colour],
  [6, type],
];

const STANDARD_STYLE: readonly Group[] = [
  [2, 'STANDARD'],
  [70, 0],
  [40, 0],
  [41, 1],
  [50, 0],
  [71, 0],
  [42, 1],
  [3, 'txt'],
  [4, ''],
];

/**
 * A DXF of release 12, ASCII: polylines with bulges, circles, lines and text alone. $INSUNITS came later than R12; programs
 * that do not know it pass over it, and those that do are told millimetres.
 *
 * @throws RangeError when a spline is among the entities
 */
export const writeR12 = ({ layers, entities, least, most }: DxfDrawing): string => {
  const groups: readonly Group[] = [
    [999, 'Millimetres, 1:1'],
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$INSUNITS'],
      [70, 4],
      [9, '$MEASUREMENT'],
      [70, 1],
      [9, '$LTSCALE'],
      [40, 1],
      [9, '$EXTMIN'],
      ...place(least),
      [9, '$EXTMAX'],
      ...place(most),
    ]),
    ...section('TABLES', [
      ...table('LTYPE', [
        lineType(CONTINUOUS, 'Solid line', []),
        ...LINE_TYPES.map(({ name, description, pattern }) => lineType(name, description, pattern)),
      ]),
      ...table('LAYER', [{ name: '0', colour: 7, lineType: CONTINUOUS }, ...layers].map(layerEntry)),
      ...table('STYLE', [STANDARD_STYLE]),
    ]),
    ...section('ENTITIES', entities.flatMap(entityGroups)),
    [0, 'EOF'],
  ];
  return groups.map(([code, value]) => `${code}\n${value}\n`).join('');
};
