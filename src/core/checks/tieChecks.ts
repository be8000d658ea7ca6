import { tieHoles } from '../bridge/tieHoles';
import type { WholeDesign } from './designed';
import { type Finding, setOne } from './finding';
import { slotFrame } from './slotFrame';
import { stringsAside } from './stringsAside';
import { upward } from './upward';
import { placedWall, thinnest } from './wallCheck';

const round = (mm: number): number => Math.round(mm * 10) / 10;

/** String holes of a tie block or of the back edge: wood between them, ahead of them, above and below; and their strings. */
export const tieChecks = (whole: WholeDesign): readonly Finding[] => {
  const { project, slot, bridge, saddle, limits } = whole;
  const { ties, slot: design, thickness } = project.bridge;
  if (ties === null) return [];
  const holes = tieHoles(ties, project.strings.length, slot, bridge);
  const found: Finding[] = [];
  const count = holes.length;
  const between = limits.wallBetweenHoles;
  const pair = [holes[0]?.mouth, holes[1]?.mouth].flatMap((at) => at ?? []);
  if (count > 1)
    found.push({
      ...placedWall(
        'ties-apart',
        'String holes clear one another',
        { wall: ties.spread / (count - 1) - ties.hole, at: pair },
        ['wallBetweenHoles', between],
      ),
      tries: [
        setOne(
          'bridge.ties.spread',
          upward((ties.hole + between.value) * (count - 1)),
          'String hole spacing, outer {0}',
        ),
      ],
    });
  const { outside } = slotFrame(design, slot);
  const ahead = thinnest(holes.map(({ mouth }) => ({ wall: outside(mouth), at: [mouth] })));
  const around = limits.wallAroundSlot;
  if (ahead !== null)
    found.push({
      ...placedWall('ties-slot', 'String holes clear the slot', ahead, ['wallAroundSlot', around]),
      tries: [
        setOne(
          'bridge.ties.from',
          upward(ties.from + (around.value - ahead.wall) * Math.hypot(1, saddle.slope)),
          'Slot to string holes {0}',
        ),
      ],
    });
  const missing = holes.filter(({ mouth, back }) => back.y - mouth.y <= 0);
  if (missing.length > 0)
    found.push({
      id: 'ties-block',
      verdict: 'wrong',
      message: 'String holes begin behind the back edge of the bridge.',
      lengths: [],
      source: null,
      at: missing.map(({ mouth }) => mouth),
      part: 'check: string holes lie in the bridge',
    });
  const [above, below] = [thickness - ties.rise - ties.hole / 2, ties.rise - ties.hole / 2];
  found.push({
    ...placedWall(
      'ties-wall',
      `String holes keep wood ${above < below ? 'above' : 'beneath'} them`,
      { wall: Math.min(above, below), at: holes.map(({ mouth }) => mouth) },
      ['wallAroundTies', limits.wallAroundTies],
    ),
    tries: [setOne('bridge.ties.rise', round(thickness / 2), 'String holes above the sole {0}')],
  });
  return [
    ...found,
    ...stringsAside(
      whole,
      holes.map(({ id, label, mouth, diameter }) => ({ id, label, centre: mouth, diameter })),
      'bridge.ties.spread',
    ),
  ];
};
