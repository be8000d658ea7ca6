import type { BridgePlace } from '../../bridge/types';
import type { Project } from '../../document/types';
import { ok, type Result } from '../../result';
import type { LengthStyle } from '../../units/formatLength';
import { seatWords, stopWords } from './card/depthWords';
import { DRILL_CAUTION, DRILL_CHOICE, drillOrder } from './card/drillOrder';
import { type DrillRow, drillRows } from './card/drillRows';
import { drillTable } from './card/drillTable';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const notesOf = (
  project: Project,
  place: BridgePlace,
  rows: readonly DrillRow[],
  style: LengthStyle,
): readonly string[] => {
  const { pins } = project.bridge;
  return [
    `Order: ${drillOrder(rows)
      .map((step, index) => `${index + 1} ${step}`)
      .join('; ')}.`,
    ...stopWords(project, place, style),
    ...(pins === null ? [] : [seatWords(pins, style)]),
    DRILL_CHOICE,
    `CAUTION. ${DRILL_CAUTION}`,
  ];
};

/** Every hole with its drills, depths and order. Codes: those of the bridge. */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { bridge } = derived;
  if (!bridge.ok) return bridge;
  const rows = drillRows(project, bridge.value);
  return ok([
    partOfItems(
      'drill-card',
      'Drill card',
      withNotes(
        drillTable(rows, style.unit),
        `Drills and depths · ${project.instrument.hand} hand`,
        notesOf(project, bridge.value, rows, style),
      ),
    ),
  ]);
};

/** The drill card. */
export const drillCard: SheetKind = {
  id: 'drill-card',
  name: 'Drill card',
  about: 'Every hole of the bridge: how many, nearest drills, depth stop, how deep the reamer goes, order.',
  make,
};
