import type { Path } from '../../core/geom/types';
import { IMPORT_LIMITS } from '../importLimits';
import { isFinitePath } from '../isFinitePath';
import { compose, IDENTITY, type Matrix, moved, scaled, turned } from '../matrix';
import { DAMAGED, entityPath, isInOwnPlane } from './entityPath';
import { type Block, type DxfDocument, type Entity, numberOf, textOf } from './readDocument';

export interface WalkedDxf {
  readonly pieces: readonly Path[];
  readonly leftOut: readonly string[];
  /** What is too much of it. */
  readonly excess: 'elements' | 'depth' | null;
}

/** A direction that leans less than this is upright. */
const UPRIGHT = 1e-9;

const RADIANS = Math.PI / 180;

/**
 * From the plane of an entity to the drawing's: for an extrusion that points away from the viewer its x runs the other way
 * (arbitrary axis algorithm, Autodesk's DXF reference); null for a plane that leans.
 */
const planeOf = (entity: Entity): Matrix | null => {
  if (!isInOwnPlane(entity)) return IDENTITY;
  const [x, y, z] = [numberOf(entity.groups, 210, 0), numberOf(entity.groups, 220, 0), numberOf(entity.groups, 230, 1)];
  if (Math.abs(x) > UPRIGHT || Math.abs(y) > UPRIGHT || z === 0) return null;
  return z < 0 ? scaled(-1, 1) : IDENTITY;
};

/** Every path that is seen in the model space of a drawing, in its units, y down. */
export function walkDxf({ entities, blocks, hidden }: DxfDocument): WalkedDxf {
  const pieces: Path[] = [];
  const counts = new Map<string, number>();
  let [visits, segments] = [0, 0];
  let excess: WalkedDxf['excess'] = null;
  const leave = (what: string): void => {
    counts.set(what, (counts.get(what) ?? 0) + 1);
  };

  const insert = ({ groups }: Entity, block: Block, matrix: Matrix, uses: readonly Block[]): void => {
    const whole = (code: number): number => Math.max(1, Math.trunc(numberOf(groups, code, 1)) || 1);
    const [columns, rows] = [whole(70), whole(71)];
    if (columns * rows > IMPORT_LIMITS.elements) {
      excess ??= 'elements';
      return;
    }
    const spin = turned(numberOf(groups, 50, 0) * RADIANS);
    const place = compose(matrix, compose(moved(numberOf(groups, 10, 0), numberOf(groups, 20, 0)), spin));
    const base = moved(-numberOf(block.groups, 10, 0), -numberOf(block.groups, 20, 0));
    const size = compose(scaled(numberOf(groups, 41, 1), numberOf(groups, 42, 1)), base);
    for (let row = 0; row < rows; row++)
      for (let column = 0; column < columns; column++) {
        const step = moved(column * numberOf(groups, 44, 0), row * numberOf(groups, 45, 0));
        walk(block.entities, compose(place, compose(step, size)), [...uses, block]);
      }
  };

  const draw = (entity: Entity, matrix: Matrix): void => {
    const path = entityPath(entity, matrix);
    if (path === null) return;
    if (typeof path === 'string') {
      leave(path);
      return;
    }
    segments += path.segments.length;
    if (segments > IMPORT_LIMITS.segments) excess ??= 'elements';
    if (isFinitePath(path)) pieces.push(path);
    else leave(DAMAGED);
  };

  const visit = (entity: Entity, matrix: Matrix, uses: readonly Block[]): void => {
    const { kind, groups } = entity;
    if (++visits > IMPORT_LIMITS.elements) excess ??= 'elements';
    if (uses.length > IMPORT_LIMITS.depth) excess ??= 'depth';
    if (excess !== null) return;
    // 67: paper space; 60: not to be seen.
    if (numberOf(groups, 67, 0) === 1 || numberOf(groups, 60, 0) === 1) return;
    if (hidden.has((textOf(groups, 8) ?? '0').toUpperCase())) return;
    const plane = planeOf(entity);
    if (plane === null) {
      leave('piece that leans out of the drawing');
      return;
    }
    const placed = compose(matrix, plane);
    if (kind !== 'INSERT') {
      draw(entity, placed);
      return;
    }
    const block = blocks.get((textOf(groups, 2) ?? '').toUpperCase());
    if (block === undefined) {
      leave('block that the file does not hold');
      return;
    }
    if (uses.includes(block)) {
      leave('block that holds itself');
      return;
    }
    insert(entity, block, placed, uses);
  };

  function walk(all: readonly Entity[], matrix: Matrix, uses: readonly Block[]): void {
    for (const entity of all) {
      if (excess !== null) return;
      visit(entity, matrix, uses);
    }
  }

  walk(entities, scaled(1, -1), []);
  return { pieces, leftOut: [...counts].map(([what, count]) => `${count} × ${what}`), excess };
}
