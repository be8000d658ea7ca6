import { createAround } from '../../../../src/core/derive/createAround';
import { createDerive } from '../../../../src/core/derive/createDerive';
import { deriveAreas } from '../../../../src/core/derive/deriveAreas';
import type { Sole } from '../../../../src/core/document/soleTypes';
import type { Project } from '../../../../src/core/document/types';
import type { Item } from '../../../../src/core/drawing/types';
import type { Bounds } from '../../../../src/core/geom/types';
import type { SheetContext, SheetPart } from '../../../../src/core/sheets/parts/types';
import type { LengthStyle } from '../../../../src/core/units/formatLength';
import { itemBox } from '../itemBox';

export const MM: LengthStyle = { unit: 'mm', decimals: 1 };
export const INCH: LengthStyle = { unit: 'in', denominator: 64 };

/** What a sheet is told of this project. */
export const contextOf = async (project: Project, style: LengthStyle = MM): Promise<SheetContext> => {
  const derived = createDerive()(project);
  const areas = await deriveAreas(project.bridge, project.limits, derived.bridge);
  return {
    project,
    derived,
    around: createAround(() => null)(project, derived),
    areas: areas.ok ? areas.value : null,
    style,
    date: '2026-01-02',
  };
};

export const partNamed = (parts: readonly SheetPart[], id: string): SheetPart => {
  const part = parts.find((each) => each.id === id);
  if (part === undefined) throw new Error(`There is no ${id}.`);
  return part;
};

/** An item by the end of its id, after the name of its part. */
export const itemOf = (part: SheetPart, id: string): Item => {
  const item = part.items.find((each) => each.id === `${part.id}-${id}`);
  if (item === undefined) throw new Error(`There is no ${id} in ${part.id}.`);
  return item;
};

export const boxIn = (part: SheetPart, id: string): Bounds => itemBox(itemOf(part, id));

/** All that is written on a part, a line a text. */
const wordsOn = (part: SheetPart): string =>
  part.items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join('\n');

/** The same as one text, its lines joined. */
export const proseOn = (part: SheetPart): string => wordsOn(part).replaceAll('\n', ' ');

export const middleOf = ({ minX, maxX, minY, maxY }: Bounds) => ({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 });

/** A top of 28 ft, 8534.4 mm, told by its radius. */
export const DOME_28_FT: Sole['top'] = {
  from: 'radius',
  across: 8534.4,
  along: 8534.4,
  gaps: { bassTip: 0, bassWing: 0, centre: 0, trebleWing: 0, trebleTip: 0 },
  under: null,
};
