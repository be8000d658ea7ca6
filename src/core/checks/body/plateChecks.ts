import type { Hole } from '../../bridge/types';
import type { Path } from '../../geom/types';
import { reamed, wallToEdge } from '../mouths';
import type { DesignCheck } from '../types';
import { checkPart, placedWall, thinnest } from '../wallCheck';
import type { Bodied } from './bodied';
import { bodyLimit } from './bodyLimits';

const BENEATH = 'Every pin hole lies over the plate';

interface OverPlate {
  readonly hole: Hole;
  /** Plate around it, mm, − when it is not wholly over the plate. */
  readonly wall: number;
}

const overPlate = (plate: Path, holes: readonly Hole[]): readonly OverPlate[] =>
  holes.map((hole) => ({ hole, wall: wallToEdge(plate, hole).wall }));

const noPlate = (pins: readonly Hole[]): DesignCheck => ({
  id: 'plate-pins',
  verdict: 'look',
  message: 'No bridge plate is entered: without one every ball end would bear on the top alone.',
  lengths: [],
  source: 'common practice, no source',
  at: pins.map(({ centre }) => centre),
  part: checkPart(BENEATH),
});

const pinCheck = (plate: Path, pins: readonly Hole[], own: Bodied['limits']): readonly DesignCheck[] => {
  const least = thinnest(pins.map((hole) => ({ ...wallToEdge(plate, hole), hole })));
  if (least === null) return [];
  const limit = bodyLimit('plateAroundPins', own);
  const check = placedWall('plate-pins', BENEATH, least, ['plateAroundPins', limit]);
  const off = pins.filter((hole) => wallToEdge(plate, hole).wall < 0);
  const { label } = least.hole;
  switch (check.verdict) {
    case 'wrong': {
      const which = off.length === 1 ? label : `${off.length} pin holes`;
      const message = `Beyond the plate: ${which}, by up to {0}. The ball end would pull on the bare top.`;
      return [{ ...check, message, at: off.map(({ centre }) => centre) }];
    }
    case 'look':
      return [{ ...check, message: `Only {0} of plate around ${label}; a ball end wants {1} to bear on.` }];
    case 'good':
      return [{ ...check, message: `${BENEATH}, with {0} of it around.` }];
  }
};

/** A hole may go through the plate or clear of it, not through its edge. */
const wireCheck = (plate: Path, hole: Hole): DesignCheck => {
  const { wall } = wallToEdge(plate, hole);
  const name = 'The wire hole and the plate';
  const about = { id: 'plate-wire', source: 'common practice, no source', at: [hole.centre], part: checkPart(name) };
  if (wall >= 0)
    return {
      ...about,
      verdict: 'good',
      message: 'The wire hole goes through the plate, {0} from its edge.',
      lengths: [wall],
    };
  if (wall <= -hole.diameter)
    return {
      ...about,
      verdict: 'good',
      message: 'The wire hole goes through the top {0} beyond the plate.',
      lengths: [0 - wall - hole.diameter],
    };
  return {
    ...about,
    verdict: 'look',
    message: 'The wire hole breaks through the edge of the plate: the drill wanders there. Move it by {0}.',
    lengths: [Math.min(0 - wall, wall + hole.diameter)],
  };
};

const locatingCheck = (plate: Path, locating: readonly Hole[]): readonly DesignCheck[] => {
  const name = 'Locating pins and the plate';
  const beyond = overPlate(plate, locating).filter(({ wall }) => wall < 0);
  const part = checkPart(name);
  if (locating.length === 0) return [];
  if (beyond.length === 0)
    return [
      {
        id: 'plate-locating',
        verdict: 'good',
        message: 'Locating-pin holes go into the plate.',
        lengths: [],
        source: null,
        at: locating.map(({ centre }) => centre),
        part,
      },
    ];
  const names = beyond.map(({ hole }) => hole.label.replace('locating pin, ', '')).join(' and ');
  return [
    {
      id: 'plate-locating',
      verdict: 'look',
      message: `Locating-pin holes beyond the plate: ${names}. There only the top holds the pin, and a drill breaks out inside: back it up, or drill no deeper than the top.`,
      lengths: [],
      source: 'common practice, no source',
      at: beyond.map(({ hole }) => hole.centre),
      part,
    },
  ];
};

/** The plate beneath: whether the pins pull on it, and what becomes of the other holes. */
export const plateChecks = ({ place, design, bridge, limits }: Bodied): readonly DesignCheck[] => {
  const { plate, wireHole } = place;
  const { pins, locating } = design;
  const holes = pins === null ? [] : reamed(pins, bridge.pins);
  if (plate === null) return holes.length === 0 ? [] : [noPlate(holes)];
  return [
    ...pinCheck(plate, holes, limits),
    ...(locating.site === 'outer-pin-holes' ? [] : locatingCheck(plate, bridge.locating)),
    ...(wireHole === null ? [] : [wireCheck(plate, wireHole)]),
  ];
};
