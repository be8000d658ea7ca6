import { sideSection } from '../../drawing/sideView/sideSection';
import type { HeightChain } from '../../height/types';
import { fail, failed, ok, type Result } from '../../result';
import { formatLength } from '../../units/formatLength';
import { showLength } from '../../units/showLength';
import { cardTable } from './items/cardTable';
import { fineLength } from './items/fineLength';
import { partOfItems } from './items/partOfItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

const VERDICT: Readonly<Record<HeightChain['verdict'], string>> = {
  go: 'GO: this bridge works at this neck angle',
  'change-bridge': 'CHANGE THE BRIDGE: not at this neck angle',
  'set-neck-first': 'SET THE NECK FIRST: no bridge within the limits would do',
};

/** Heights from the frets to the saddle's top, with the bridge from the side. Codes: those of the side view, sheet.noSection. */
const make = ({ project, derived, around, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { scale, saddle, slot, bridge: place } = derived;
  if (!scale.ok || !saddle.ok || !slot.ok || !place.ok) return failed(derived.issues);
  const heights = around?.side.heights ?? null;
  if (heights === null) return fail('height', 'sheet.noHeights', 'The heights were not computed yet. Try again.');
  if (!heights.ok) return heights;
  const { chain, read, airspace } = heights.value;
  const section = sideSection(
    {
      project,
      limits: project.limits,
      heights: heights.value,
      saddle: saddle.value,
      slot: slot.value,
      place: place.value,
      scaleLength: scale.value.scaleLength,
      string: null,
    },
    style,
  );
  if (section === null) return fail('bridge', 'sheet.noSection', 'The centreline passes beside the bridge.');
  const { bridge, height, setup, instrument, strings } = project;
  const show = (mm: number): string => showLength(mm, style);
  const bare = (mm: number): string => formatLength(mm, style);
  const table = cardTable(
    'strings',
    { x: 0, y: 0 },
    [
      { name: `at the saddle, ${style.unit === 'mm' ? 'mm' : 'inches'}`, width: 46 },
      { name: 'over the frets', width: 26, role: 'heading' },
      { name: 'over the bridge', width: 28, role: 'heading' },
      { name: 'saddle, whole', width: 28, role: 'key' },
      { name: 'in the slot', width: 20 },
      { name: 'break angle', width: 22 },
    ],
    chain.strings.map((each, index) => ({
      id: `${index + 1}`,
      cells: [
        `string ${index + 1} ${strings[index]?.name ?? ''}`,
        bare(each.height),
        bare(each.proud),
        bare(each.saddle),
        `${Math.round(each.share * 100)} %`,
        each.breakDeg === null ? '' : `${each.breakDeg.toFixed(1)}°`,
      ],
    })),
  );
  const taken = read ? 'as read' : 'NOT READ: the middle of its limits is taken';
  const { action, nutHeight } = setup;
  return ok([
    partOfItems(
      'height-section',
      'Bridge from the side',
      withNotes(section.items, `SECTION along the centreline, true size · ${instrument.hand} hand`, [
        read
          ? 'Drawn with the straightedge as read. Nut to the left for either hand.'
          : 'The straightedge was NOT READ: the middle of its limits is drawn.',
      ]),
    ),
    partOfItems(
      'height-card',
      'Height card',
      withNotes(
        table,
        `${read ? VERDICT[chain.verdict] : 'READ THE STRAIGHTEDGE FIRST: nothing is decided without it'} · ${instrument.hand} hand`,
        [
          `Straightedge on the frets, at the saddle: ${airspace < 0 ? `${show(0 - airspace)} below` : `${show(airspace)} above`} the top of the bridge (${taken}).`,
          `Bridge ${show(bridge.thickness)} thick at the slot, slot ${show(bridge.slot.depth)} deep, ${show(chain.woodUnder)} of wood under it; pickup ${height.pickup > 0 ? show(height.pickup) : 'none'}. Saddle over the bridge ${show(chain.proud.least)} to ${show(chain.proud.most)}; blank at least ${show(chain.blankNeeded)} high.`,
          `Wanted: action over the 12th fret ${show(action.treble)} treble, ${show(action.bass)} bass; string over the fret tops at the nut ${show(nutHeight.treble)} and ${show(nutHeight.bass)}; relief ${fineLength(setup.relief, style.unit)} ${style.unit}.`,
          ...(chain.thickness === null
            ? []
            : [`Thickness within all limits: ${show(chain.thickness.least)} to ${show(chain.thickness.most)}.`]),
          `To lower the action over the 12th fret by a length, take twice that off the saddle. Take it off the foot, so that the top keeps its shape.`,
        ],
      ),
    ),
  ]);
};

/** The height card. */
export const heightCard: SheetKind = {
  id: 'height-card',
  name: 'Height card',
  about: 'The bridge from the side, the chain of heights, and how high the saddle is under every string.',
  make,
};
