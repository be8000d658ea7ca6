import { failed, ok, type Result } from '../../result';
import { partOfItems } from './items/partOfItems';
import type { SheetContext, SheetKind, SheetPart } from './types';
import { drillRows } from './worksheet/drillRows';
import { glueRows } from './worksheet/glueRows';
import { placeRows } from './worksheet/placeRows';
import { readyRows } from './worksheet/readyRows';
import { worksheetItems } from './worksheet/worksheetItems';

/** The order of the work, in blocks of half a page. Codes: those of the placement. */
const make = (context: SheetContext): Result<readonly SheetPart[]> => {
  const { placement, bridge } = context.derived;
  if (!placement.ok || !bridge.ok) return failed(context.derived.issues);
  const holes = bridge.value.locating.length;
  const blocks = [
    { id: 'ready', name: 'Worksheet: make ready', rows: readyRows(context) },
    { id: 'place', name: 'Worksheet: place', rows: placeRows(context, placement.value) },
    { id: 'drill', name: 'Worksheet: drill, clear, try dry', rows: drillRows(context, holes) },
    { id: 'glue', name: 'Worksheet: glue and string', rows: glueRows(context, placement.value, holes) },
  ];
  return ok(
    blocks.map(({ id, name, rows }) =>
      partOfItems(`worksheet-${id}`, `${name} · ${context.project.instrument.hand} hand`, worksheetItems(rows)),
    ),
  );
};

/** The bench worksheet. */
export const worksheet: SheetKind = {
  id: 'worksheet',
  name: 'Bench worksheet',
  about:
    'The order of the work, with boxes to tick, figures to expect and blanks for what you read. Two pages at most.',
  make,
};
