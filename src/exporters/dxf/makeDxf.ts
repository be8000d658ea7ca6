import type { Item } from '../../core/drawing/types';
import type { DrawingFormat, FileDrawing } from '../../core/ports';
import { ok, type Result } from '../../core/result';
import { checkItems } from '../checkItems';
import { drawingFrame } from '../drawingFrame';
import { withoutCubics } from './biarcs';
import { entitiesOf } from './entitiesOf';
import { layerOf } from './layerOf';
import type { DxfDrawing, DxfLayer } from './types';
import { write2007 } from './write2007';
import { writeR12 } from './writeR12';

type DxfVersion = Extract<DrawingFormat, { kind: 'dxf' }>['version'];

const arcsAlone = (item: Item): Item => (item.kind === 'path' ? { ...item, path: withoutCubics(item.path) } : item);

const layersOf = (items: readonly Item[]): readonly DxfLayer[] => [
  ...new Map(items.map((item) => [layerOf(item).name, layerOf(item)])).values(),
];

/**
 * A drawing as text DXF at true size: units declared as millimetres, y up, so that y is minus the distance from the nut
 * datum; a layer for each kind of line, closed outlines, circles and arcs as such. 2007 keeps curves as exact splines; R12 has
 * arcs and lines within 0.005 mm in their place. Codes: as checkItems.
 */
export const makeDxf = ({ items }: Pick<FileDrawing, 'items'>, version: DxfVersion): Result<string> => {
  const checked = checkItems(items);
  if (!checked.ok) return checked;
  const { minX, minY, maxX, maxY } = drawingFrame(items);
  const plain = version === 'R12' ? items.map(arcsAlone) : items;
  const drawing: DxfDrawing = {
    layers: layersOf(items),
    entities: plain.flatMap(entitiesOf),
    least: { x: minX, y: 0 - maxY },
    most: { x: maxX, y: 0 - minY },
  };
  return ok(version === 'R12' ? writeR12(drawing) : write2007(drawing));
};
