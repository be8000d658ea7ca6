import { type FenceSettings, fenceSettings } from '../../bridge/fenceSettings';
import { slotCuts, slotSlope } from '../../bridge/slotCuts';
import type { Bridge } from '../../document/types';
import type { Item } from '../../drawing/types';
import { distance } from '../../geom/points';
import { failed, ok, type Result } from '../../result';
import type { LengthStyle } from '../../units/formatLength';
import { showLength } from '../../units/showLength';
import { slotDrawing } from './card/slotDrawing';
import { cardTable } from './items/cardTable';
import { fineLength } from './items/fineLength';
import { partOfItems } from './items/partOfItems';
import { stackItems } from './items/stackItems';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** A fence farther ahead of the front edge is not drawn, so that the drawing keeps to a page that lies on its side, mm. */
const FARTHEST = 50;

/** Settings of the fence for each pass, at both ends of the bridge. */
const fenceTable = (fence: FenceSettings, bridge: Bridge, style: LengthStyle): readonly Item[] => {
  const { unit } = style;
  const fine = (mm: number): string => fineLength(mm, unit);
  return cardTable(
    'fence',
    { x: 0, y: 0 },
    [
      { name: `fence ahead of the front-edge line, ${unit === 'mm' ? 'mm' : 'inches'}`, width: 76 },
      { name: 'treble end', width: 38, role: 'key' },
      { name: 'bass end', width: 38, role: 'key' },
    ],
    fence.passes.map(({ wall, treble, bass }) => ({
      id: wall,
      cells: [
        fence.passes.length === 1
          ? 'one pass, cutter as wide as the slot'
          : `${wall}-wall pass, cutter ${fine(bridge.cutting?.cutter ?? 0)}`,
        ...[treble, bass].map((ahead) => (ahead < 0 ? `−${fine(0 - ahead)}` : fine(ahead))),
      ],
    })),
  );
};

/** The slot from the bridge’s own edges, and the fence that cuts it. Codes: those of the bridge, cutting.wide. */
const make = ({ project, derived, style }: SheetContext): Result<readonly SheetPart[]> => {
  if (!derived.bridge.ok || !derived.slot.ok || !derived.placement.ok) return failed(derived.issues);
  const [place, slot] = [derived.bridge.value, derived.slot.value];
  const { bridge, instrument } = project;
  const settings = bridge.cutting === null ? null : fenceSettings(bridge.cutting, bridge.slot.width, slot, place);
  if (settings !== null && !settings.ok) return settings;
  const fence = settings?.value ?? null;
  const { unit } = style;
  const fine = (mm: number): string => fineLength(mm, unit);
  const names = unit === 'mm' ? 'mm' : 'inches';
  const drawn = fence?.passes.every((pass) => Math.max(pass.treble, pass.bass) <= FARTHEST) ? fence : null;
  const cuts = slotCuts(slot, place);
  const length = distance(slot.ends.treble, slot.ends.bass);
  const across = Math.abs(slot.ends.treble.x - slot.ends.bass.x);
  const rise = Math.abs(slotSlope(slot)) * across;
  const degrees = ((Math.abs(derived.placement.value.slant) * 180) / Math.PI).toFixed(2);
  const back = derived.placement.value.slant < 0 ? 'treble' : 'bass';
  const WHERE = {
    treble: 'T, treble end of the slot',
    centre: 'C, centreline',
    bass: 'B, bass end of the slot',
  } as const;
  const walls = cardTable(
    'walls',
    { x: 0, y: 0 },
    [
      { name: `from the front edge of the bridge there, ${names}`, width: 76 },
      { name: 'to the front wall', width: 38, role: 'key' },
      { name: 'to the back wall', width: 38, role: 'key' },
    ],
    cuts.map(({ id, toFrontWall, toBackWall }) => ({ id, cells: [WHERE[id], fine(toFrontWall), fine(toBackWall)] })),
  );
  const drawing = slotDrawing(place, slot, cuts, `slot ${fine(length)} over all`, fence, instrument.hand);
  return ok([
    partOfItems(
      'slot-drawing',
      'Slot, drawing',
      withNotes(drawing, `SLOT, from above, true size · ${instrument.hand} hand`, [
        'T, C and B: the distances of the slot card, along the centreline from the front edge of the bridge there.',
        ...(fence === null
          ? []
          : [
              drawn === null
                ? 'The fence lies farther ahead than this drawing reaches: set it by the slot card.'
                : 'Beyond the front edge: where the edge of the fence lies for each pass.',
            ]),
      ]),
    ),
    partOfItems(
      'slot-card',
      'Slot card',
      withNotes(
        stackItems([walls, ...(fence === null ? [] : [fenceTable(fence, bridge, style)])]),
        `SLOT: ${fine(length)} long over all · ${fine(bridge.slot.width)} wide · ${fine(bridge.slot.depth)} deep · ${names} · ${instrument.hand} hand`,
        [
          `Ends ${bridge.slot.run === 'open' ? 'open at both ends of the bridge' : bridge.slot.ends}. Slant: ${rise < 0.005 ? 'none, square to the centreline' : `the ${back} end lies ${showLength(rise, style)} farther back over ${showLength(across, style)} across (${degrees}°)`}. Wood under the slot ${fine(bridge.thickness - bridge.slot.depth)} ${names}.`,
          'The figures run along the centreline. They hold for the bridge as drawn: after gluing read where the front edge truly lies from the nut and put right what differs.',
          ...(fence === null || bridge.cutting === null
            ? ['No cutter and base were entered at Draw, so that no fence is told.']
            : [
                `Fence on the NUT SIDE, base ${fine(bridge.cutting.base)} from the middle of the cutter to its edge. Lay the settings off at both ends of the bridge, ${showLength(fence.half, style)} from the centreline, from the thin line through the front edge on the centreline.`,
              ]),
          'Try cutter, fence and depth in waste of the same thickness, with the saddle itself. Depth in light passes; against the feed, stop before the ends.',
          'CAUTION. Power off and unplugged while setting. Bridge and fence clamped, hands clear of the cutter. Eyes and ears protected; dust: extraction and a respirator.',
        ],
      ),
    ),
  ]);
};

/** The slot card. */
export const slotCard: SheetKind = {
  id: 'slot-card',
  name: 'Slot card',
  about: 'Front edge to both walls of the slot at both ends, and where the fence goes for your cutter and base.',
  make,
};
