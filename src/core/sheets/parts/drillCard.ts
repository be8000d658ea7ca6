import type { Project } from '../../document/types';
import { ok, type Result } from '../../result';
import type { LengthStyle } from '../../units/formatLength';
import { seatWords, stopWords } from './card/depthWords';
import { type DrillRow, drillRows } from './card/drillRows';
import { drillTable } from './card/drillTable';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const notesOf = (project: Project, rows: readonly DrillRow[], style: LengthStyle): readonly string[] => {
  const { pins } = project.bridge;
  const order = [
    ...(rows.some(({ id }) => id === 'ties') ? ['string holes along the bridge, before it is glued'] : []),
    'first locating hole, through the bridge where it is taped',
    'its pin in, read by rule again',
    'second locating hole, its pin in',
    ...(pins === null ? [] : ['pilots of the pins once the glue is hard', 'ream each to its own pin']),
    ...(rows.some(({ id }) => id === 'wire') ? ['wire hole last, into the slot'] : []),
  ];
  return [
    `Order: ${order.map((step, index) => `${index + 1} ${step}`).join('; ')}.`,
    ...stopWords(project, style),
    ...(pins === null ? [] : [seatWords(pins, style)]),
    'Beside each drill: how much larger it is than the hole. Of two, take the smaller: a hole can be opened, not closed. Try the drill in waste with the pin itself.',
    'CAUTION. Find braces and plate first, with mirror and light. Back up the plate with a block, never with a hand. Drill slowly, square to the top, stop set. Dust: extraction and a respirator. Labels and local rules come before this card.',
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
        notesOf(project, rows, style),
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
