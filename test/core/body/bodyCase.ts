import { type BodyStep, createBodyStep } from '../../../src/core/derive/createBodyStep';
import { createDerive } from '../../../src/core/derive/createDerive';
import type { Body, Brace, Plate } from '../../../src/core/document/bodyTypes';
import type { Hand, Project } from '../../../src/core/document/types';

/** A brace 8 wide along the centreline from 600 to 700 behind the nut, on the centreline. */
export const braceWith = (changes: Partial<Brace> = {}): Brace => ({
  id: 'b1',
  name: 'leg',
  kind: 'x-leg',
  from: { x: 0, y: 600 },
  to: { x: 0, y: 700 },
  width: 8,
  height: null,
  read: true,
  ...changes,
});

/** A rectangle 100 × 50, its front edge 630 from the nut. */
export const plateWith = (changes: Partial<Plate> = {}): Plate => ({
  front: 630,
  aside: 0,
  along: 50,
  acrossFront: 100,
  acrossBack: 100,
  thickness: 2.5,
  read: true,
  ...changes,
});

export const bodyWith = (changes: Partial<Body> = {}): Body => ({
  hand: null,
  from: 'nut',
  across: null,
  tail: null,
  braces: [],
  plate: null,
  soundhole: null,
  cutaway: null,
  wireHole: null,
  ...changes,
});

/** The project with this body, strung for this hand. */
export const bodied = (project: Project, body: Partial<Body>, hand: Hand = 'right'): Project => ({
  ...project,
  instrument: { ...project.instrument, hand },
  body: bodyWith(body),
});

/** What is found of a body that has to be there. */
export const stepOf = (project: Project): BodyStep => {
  const step = createBodyStep()(project, createDerive()(project));
  if (step === null) throw new Error('Nothing is said of the body.');
  return step;
};
