import { describe, expect, it } from 'vitest';
import type { Body } from '../../../../src/core/document/bodyTypes';
import type { Project } from '../../../../src/core/document/types';
import type { Result } from '../../../../src/core/result';
import { addBrace } from '../../../../src/store/commands/body/addBrace';
import { centrePlate } from '../../../../src/store/commands/body/centrePlate';
import { chooseBody } from '../../../../src/store/commands/body/chooseBody';
import { chooseBodyHand } from '../../../../src/store/commands/body/chooseBodyHand';
import { chooseCutaway } from '../../../../src/store/commands/body/chooseCutaway';
import { choosePlate } from '../../../../src/store/commands/body/choosePlate';
import { chooseSoundhole } from '../../../../src/store/commands/body/chooseSoundhole';
import { chooseWireHole } from '../../../../src/store/commands/body/chooseWireHole';
import { markBraceFound } from '../../../../src/store/commands/body/markBraceFound';
import { markPlateFound } from '../../../../src/store/commands/body/markPlateFound';
import { mirrorBrace } from '../../../../src/store/commands/body/mirrorBrace';
import { otherSideName } from '../../../../src/store/commands/body/otherSideName';
import { removeBrace } from '../../../../src/store/commands/body/removeBrace';
import { swapSides } from '../../../../src/store/commands/body/swapSides';
import { takeBracing } from '../../../../src/store/commands/body/takeBracing';
import { bodied, braceWith, plateWith } from '../../../core/body/bodyCase';
import { plainBridge } from '../../../core/checks/plainBridge';
import { steelProject } from '../../../core/document/steelProject';
import { valueOf as answerOf, codesOf } from '../../../core/document/valueOf';
import { expectReversible } from '../../expectReversible';
import { startStore } from '../../startStore';

/** Runs a command as one step that can be undone and saved; the body afterwards, which has to be there. */
const bodyAfter = (command: (project: Project) => Result<Project>, start: Project): Body => {
  const { body } = expectReversible('Body', ({ change }) => change('Body', command), start);
  if (body === null) throw new Error('no body');
  return body;
};
/** Scale 645, pins over 42 at y 656.25, slot 645.75 to 648.25 over ±40. */
const plain = bodied(plainBridge(), {});
const broken = bodied(plainBridge({ length: 10, width: 12, ends: 'round' }), { plate: plateWith() });
const untold: Project = { ...steelProject, body: null };

describe('chooseBody', () => {
  it('says nothing yet, and can be taken back', () => {
    const body = bodyAfter((project) => chooseBody(project, true), untold);
    expect(body).toEqual({
      hand: null,
      from: 'octave',
      across: null,
      tail: null,
      braces: [],
      plate: null,
      soundhole: null,
      cutaway: null,
      wireHole: null,
    });
    const left = expectReversible('Off', ({ change }) => change('Off', (project) => chooseBody(project, false)), plain);
    expect(left.body).toBeNull();
  });

  it('keeps what was said', () => expect(answerOf(chooseBody(plain, true))).toEqual(plain));
});

describe('every command', () => {
  it.each([
    (project: Project) => chooseBodyHand(project, 'left'),
    (project: Project) => takeBracing(project, 'x-braced'),
    addBrace,
    (project: Project) => mirrorBrace(project, 'b1'),
    (project: Project) => removeBrace(project, 'b1'),
    (project: Project) => markBraceFound(project, 'b1', true),
    (project: Project) => choosePlate(project, true),
    centrePlate,
    (project: Project) => markPlateFound(project, true),
    (project: Project) => chooseSoundhole(project, true),
    (project: Project) => chooseCutaway(project, true),
    (project: Project) => chooseWireHole(project, true),
    swapSides,
  ])('%# refuses while nothing is said of the body', (command) =>
    expect(codesOf(command(untold))).toEqual(['body.none']),
  );
});

describe('braces', () => {
  const braced = bodied(plainBridge(), { braces: [braceWith({ name: 'X-leg, bass', from: { x: -10, y: 600 } })] });

  it('come in sight of the bridge, not found yet, each with an id of its own', () => {
    const body = bodyAfter(addBrace, braced);
    // Front edge at 639.75, so that the new one runs from 25 ahead of it to 45 behind it.
    expect(body.braces[1]).toMatchObject({
      id: 'b2',
      name: 'brace 2',
      from: { y: 614.8 },
      to: { y: 684.8 },
      read: false,
    });
    const gone = answerOf(removeBrace(answerOf(addBrace(braced)), 'b1'));
    expect(answerOf(addBrace(gone)).body?.braces.map(({ id }) => id)).toEqual(['b2', 'b3']);
  });

  it('go', () => {
    expect(bodyAfter((project) => removeBrace(project, 'b1'), braced).braces).toEqual([]);
    expect(codesOf(removeBrace(braced, 'b9'))).toEqual(['body.noBrace']);
  });

  it('come as mirror images, called after the other side', () => {
    const body = bodyAfter((project) => mirrorBrace(project, 'b1'), braced);
    expect(body.braces[1]).toMatchObject({
      id: 'b2',
      name: 'X-leg, treble',
      from: { x: 10, y: 600 },
      to: { x: 0, y: 700 },
      read: false,
    });
    expect(codesOf(mirrorBrace(braced, 'b9'))).toEqual(['body.noBrace']);
  });

  it('are found, or not', () => {
    const body = bodyAfter((project) => markBraceFound(project, 'b1', false), braced);
    expect(body.braces[0]?.read).toBe(false);
    expect(codesOf(markBraceFound(braced, 'b9', true))).toEqual(['body.noBrace']);
  });

  it('are forty at most', () => {
    const braces = Array.from({ length: 40 }, (_, index) => braceWith({ id: `b${index + 1}` }));
    expect(codesOf(addBrace(bodied(plainBridge(), { braces })))).toEqual(['body.bracesFull']);
    expect(codesOf(mirrorBrace(bodied(plainBridge(), { braces }), 'b1'))).toEqual(['body.bracesFull']);
  });

  it('wait for a bridge to lie under', () => expect(addBrace(broken).ok).toBe(false));
});

describe('otherSideName', () => {
  it.each([
    ['X-leg, bass', 'X-leg, treble'],
    ['Treble leg', 'Bass leg'],
    ['fan 3', 'fan 3'],
    ['bassoon', 'bassoon'],
  ])('%s is %s', (name, other) => expect(otherSideName(name)).toBe(other));
});

describe('takeBracing', () => {
  it('lays a bracing to this scale in place of what was there, and leaves the rest', () => {
    const start = bodied(plainBridge(), { braces: [braceWith()], hand: 'left', from: 'front' });
    const body = bodyAfter((project) => takeBracing(project, 'x-braced'), start);
    expect(body.braces.map(({ name }) => name).slice(0, 2)).toEqual(['X-leg, bass', 'X-leg, treble']);
    // 57 ahead of the octave line at 645.
    expect(body.braces[0]?.from).toEqual({ x: 0, y: 588 });
    expect(body).toMatchObject({ hand: 'left', from: 'front', plate: { front: 635, read: false } });
  });

  it('knows its own', () => expect(codesOf(takeBracing(plain, 'star'))).toEqual(['body.noSet']));
});

describe('the plate', () => {
  it('lies under the middle of the pins', () => {
    // 656.25 less half of 54.
    expect(bodyAfter((project) => choosePlate(project, true), plain).plate).toMatchObject({
      front: 629.3,
      aside: 0,
      read: false,
    });
    const aside = bodied(plainBridge(), { plate: plateWith({ front: 600, aside: 9 }) });
    expect(bodyAfter(centrePlate, aside).plate).toMatchObject({ front: 631.3, aside: 0, along: 50 });
  });

  it('lies under the middle of a bridge without pins', () => {
    const start = bodied(plainBridge({}, null), { plate: plateWith({ front: 600 }) });
    // 639.75 + 14 − 25
    expect(bodyAfter(centrePlate, start).plate).toMatchObject({ front: 628.8 });
  });

  it('goes, is found, and is not centred without one', () => {
    const start = bodied(plainBridge(), { plate: plateWith() });
    expect(bodyAfter((project) => choosePlate(project, false), start).plate).toBeNull();
    expect(bodyAfter((project) => markPlateFound(project, false), start).plate?.read).toBe(false);
    expect(codesOf(centrePlate(plain))).toEqual(['body.noPlate']);
    expect(codesOf(markPlateFound(plain, true))).toEqual(['body.noPlate']);
    expect(centrePlate(broken).ok).toBe(false);
  });
});

describe('holes and cutaway', () => {
  it('a soundhole starts where one usually is, and goes', () => {
    const start = plain;
    // On 645 as written: 148 ahead of the octave line, 4 in across.
    const body = bodyAfter((project) => chooseSoundhole(project, true), start);
    expect(body.soundhole).toEqual({ centre: 497, across: 101.6, along: null });
    const there = bodied(plainBridge(), { soundhole: { centre: 480, across: 90, along: 80 } });
    expect(answerOf(chooseSoundhole(there, true))).toEqual(there);
    expect(bodyAfter((project) => chooseSoundhole(project, false), there).soundhole).toBeNull();
  });

  it('a wire hole starts inside the slot by its bass end, whichever hand the body was built for', () => {
    // 6 in from −40; the slot is 2.5 wide and lies at 647.
    const body = bodyAfter((project) => chooseWireHole(project, true), plain);
    expect(body.wireHole).toEqual({ at: { x: -34, y: 647 }, diameter: 2.5 });
    const converted = bodied(plainBridge(), { hand: 'right' }, 'left');
    expect(answerOf(chooseWireHole(converted, true)).body?.wireHole?.at.x).toBe(34);
    const narrow = bodied(plainBridge({ width: 2 }), {});
    expect(answerOf(chooseWireHole(narrow, true)).body?.wireHole?.diameter).toBe(2);
    const there = bodied(plainBridge(), { wireHole: { at: { x: 0, y: 647 }, diameter: 2 } });
    expect(bodyAfter((project) => chooseWireHole(project, false), there).wireHole).toBeNull();
    expect(chooseWireHole(broken, true).ok).toBe(false);
  });

  it('a cutaway starts on the treble side, and goes', () => {
    // Body join at the 14th fret: 645 − 645/2^(14/12) = 357.684; and 0.17 · 645 = 109.65.
    const body = bodyAfter((project) => chooseCutaway(project, true), plain);
    expect(body.cutaway).toEqual({ side: 'treble', aside: 40, end: 467.3 });
    const there = bodied(plainBridge(), { cutaway: { side: 'bass', aside: 60, end: 420 } });
    expect(bodyAfter((project) => chooseCutaway(project, false), there).cutaway).toBeNull();
  });
});

describe('hand and sides', () => {
  it('which hand the body was built for changes no figure', () => {
    const start = bodied(plainBridge(), { braces: [braceWith()] });
    expect(bodyAfter((project) => chooseBodyHand(project, 'left'), start)).toEqual({ ...start.body, hand: 'left' });
  });

  it('a body entered for the wrong side is put right, names and all else left', () => {
    const start = bodied(plainBridge(), {
      braces: [braceWith({ name: 'X-leg, bass', from: { x: 10, y: 600 }, to: { x: 60, y: 700 } })],
      plate: plateWith({ aside: 4 }),
      soundhole: { centre: 500, across: 100, along: null },
      cutaway: { side: 'bass', aside: 40, end: 450 },
      wireHole: { at: { x: 34, y: 647 }, diameter: 2 },
    });
    const body = bodyAfter(swapSides, start);
    expect(body).toMatchObject({
      braces: [{ name: 'X-leg, bass', from: { x: -10, y: 600 }, to: { x: -60, y: 700 } }],
      plate: { aside: -4 },
      soundhole: { centre: 500 },
      cutaway: { side: 'treble' },
      wireHole: { at: { x: -34, y: 647 } },
    });
    expect(answerOf(swapSides(answerOf(swapSides(start))))).toEqual(start);
  });
});

describe('the fields of the body', () => {
  it.each([
    ['body.from', 'front'],
    ['body.braces.0.name', 'leg of the X'],
    ['body.braces.0.kind', 'fan'],
    ['body.braces.0.from.x', -12.5],
    ['body.braces.0.to.y', 690],
    ['body.braces.0.width', 7],
    ['body.braces.0.height', 14],
    ['body.plate.acrossBack', 130],
    ['body.soundhole.along', 80],
  ] as const)('%s becomes %s', (path, value) => {
    const start = bodied(plainBridge(), {
      braces: [braceWith()],
      plate: plateWith(),
      soundhole: { centre: 500, across: 100, along: null },
    });
    const { store } = startStore(null, start);
    expect(store.actions.setField(path, value)).toEqual([]);
    let at: unknown = store.getState().project;
    for (const key of path.split('.')) at = (at as Record<string, unknown>)[key];
    expect(at).toBe(value);
  });

  it('keep to their limits, and are none of what is not there', () => {
    const { store } = startStore(null, bodied(plainBridge(), { braces: [braceWith()] }));
    expect(store.actions.setField('body.braces.0.width', 0)[0]?.code).toBe('field.range');
    expect(store.actions.setField('body.braces.1.width', 8)[0]?.code).toBe('field.unknown');
    expect(store.actions.setField('body.plate.front', 640)[0]?.code).toBe('field.unknown');
  });
});
