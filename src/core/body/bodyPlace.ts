import type { Body, Brace, Plate } from '../document/bodyTypes';
import { distance } from '../geom/points';
import { COINCIDENT_MM } from '../geom/tolerances';
import type { Path } from '../geom/types';
import { ovalPath } from './ovalPath';
import type { BodyPlace, BracePlace } from './types';

/** What a brace is called: by its name, or by its number when it has none. index from 0. */
export const braceName = ({ name }: Pick<Brace, 'name'>, index: number): string =>
  name.trim() === '' ? `brace ${index + 1}` : name.trim();

/** The part of the drawing that a brace is; two braces of one name are two parts. index from 0. */
export const bracePart = (brace: Pick<Brace, 'name'>, index: number): string => {
  const name = braceName(brace, index);
  const number = `brace ${index + 1}`;
  return name === number ? number : `${number}, ${name}`;
};

/** Whether two points give a brace a direction. */
export const hasLength = ({ from, to }: Pick<Brace, 'from' | 'to'>): boolean => distance(from, to) > COINCIDENT_MM;

const platePath = ({ front, aside, along, acrossFront, acrossBack }: Plate): Path => {
  const start = { x: aside - acrossFront / 2, y: front };
  const corners = [
    { x: aside + acrossFront / 2, y: front },
    { x: aside + acrossBack / 2, y: front + along },
    { x: aside - acrossBack / 2, y: front + along },
    start,
  ];
  return { start, segments: corners.map((to) => ({ kind: 'line', to })), closed: true };
};

/** What was said of the body as geometry, body frame. */
export const bodyPlace = ({ braces, plate, soundhole, wireHole, cutaway }: Body): BodyPlace => ({
  braces: braces.flatMap((brace, index): readonly BracePlace[] => {
    if (!hasLength(brace)) return [];
    const { id, kind, from, to, width, read } = brace;
    return [{ id, kind, from, to, width, read, name: braceName(brace, index), part: bracePart(brace, index) }];
  }),
  plate: plate && platePath(plate),
  soundhole:
    soundhole && ovalPath({ x: 0, y: soundhole.centre }, soundhole.across, soundhole.along ?? soundhole.across),
  wireHole: wireHole && {
    id: 'wire-hole',
    label: 'pickup wire hole',
    centre: wireHole.at,
    diameter: wireHole.diameter,
  },
  cutaway,
});
