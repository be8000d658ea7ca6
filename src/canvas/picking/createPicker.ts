import paperCore from 'paper/dist/paper-core';
import { isBold } from '../../core/drawing/lineStyles';
import type { Item, PartName, PathItem, TextItem } from '../../core/drawing/types';
import type { Point } from '../../core/geom/types';
import { CAPITAL_HEIGHT } from '../../core/text/capitalHeight';
import { FONT_FAMILY, lineLook, textLook } from '../itemLook';
import { isFilled } from '../theme';
import { toPaperPath } from './toPaperPath';

/** How near a line a pointer must come to pick it, screen pixels. */
const REACH = 6;

const DEGREES = 180 / Math.PI;

/** Paper.js has this method, its types do not. */
type RemovableScope = paper.PaperScope & { remove(): void };

/** Says which part lies where. */
export interface Picker {
  /** The topmost part at a point of the drawing, mm, as it is painted at this magnification; null where there is none. */
  partAt(items: readonly Item[], zoom: number, point: Point): PartName | null;
  stop(): void;
}

/** Paper.js, which knows what lies at a point. */
export const createPicker = (): Picker => {
  const scope = new paperCore.PaperScope() as RemovableScope;
  scope.setup(new scope.Size(1, 1));
  let laid: readonly Item[] = [];
  let laidAt = 0;

  const ofPath = ({ path, role }: PathItem, zoom: number): paper.Item => {
    const shape = toPaperPath(scope, path);
    shape.strokeColor = new scope.Color('black');
    shape.strokeWidth = lineLook(role, zoom, false).width;
    if (isFilled(role)) shape.fillColor = new scope.Color('white');
    return shape;
  };
  const ofText = (item: TextItem, zoom: number): paper.Item | null => {
    const size = textLook(item, zoom);
    if (size === null) return null;
    return new scope.PointText({
      insert: false,
      content: item.text,
      justification: item.anchor === 'start' ? 'left' : item.anchor === 'end' ? 'right' : 'center',
      fontFamily: FONT_FAMILY,
      fontWeight: isBold(item.role) ? 'bold' : 'normal',
      fontSize: size,
      fillColor: new scope.Color('black'),
      matrix: new scope.Matrix()
        .translate(new scope.Point(item.at.x, item.at.y))
        .rotate(item.angle * DEGREES, new scope.Point(0, 0))
        .scale(1 / zoom)
        .translate(new scope.Point(0, (CAPITAL_HEIGHT / 2) * size)),
    });
  };
  const lay = (items: readonly Item[], zoom: number): void => {
    if (items === laid && zoom === laidAt) return;
    scope.project.activeLayer.removeChildren();
    for (const item of items) {
      const shape = item.kind === 'path' ? ofPath(item, zoom) : ofText(item, zoom);
      if (shape === null) continue;
      shape.data = item.part;
      scope.project.activeLayer.addChild(shape);
    }
    [laid, laidAt] = [items, zoom];
  };

  return {
    partAt: (items, zoom, point) => {
      scope.activate();
      lay(items, zoom);
      const hit = scope.project.hitTest(new scope.Point(point.x, point.y), {
        fill: true,
        stroke: true,
        tolerance: REACH / zoom,
      });
      return typeof hit?.item.data === 'string' ? hit.item.data : null;
    },
    stop: () => scope.remove(),
  };
};
