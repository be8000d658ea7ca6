import { describe, expect, it } from 'vitest';
import { checkMessage } from '../../../../src/core/checks/checkMessage';
import type { DesignCheck } from '../../../../src/core/checks/types';
import type { Body } from '../../../../src/core/document/bodyTypes';
import type { Hand, Pins, Project } from '../../../../src/core/document/types';
import { bodied, braceWith, plateWith, stepOf } from '../../body/bodyCase';
import { plainBridge } from '../plainBridge';

/**
 * The plain bridge: front edge 639.75, slot 645.75 to 648.25 over ±40, pins 1 to 4 at x 21, 7, −7, −21 and y 656.25, holes 5
 * as drilled and reamed, locating pins 1.5875 at ±38.75 in the slot; all by hand.
 */
const checksOf = (body: Partial<Body>, project: Project = plainBridge(), hand: Hand = 'right') =>
  stepOf(bodied(project, body, hand)).checks;
const said = (check: DesignCheck | undefined): string =>
  check === undefined ? 'not asked' : `${check.verdict}: ${checkMessage(check, (mm) => `${mm.toFixed(2)} mm`)}`;
const sayOf = (id: string, ...of: Parameters<typeof checksOf>): string =>
  said(checksOf(...of).find((check) => check.id === id));
const along = (x: number) => braceWith({ from: { x, y: 600 }, to: { x, y: 700 } });
const pinsWith = (pins: Partial<Pins>): Project => plainBridge({}, pins);

describe('pin holes and braces', () => {
  it('are clear by a half ball end and 2.5', () => {
    // 40 − 21 − 4 − 2.5; the limit 4.7625/2 + 2.5 = 4.88.
    expect(sayOf('brace-pins', { braces: [along(-40)] })).toBe(
      'good: Pin holes clear the braces by 12.50 mm: the nearest is leg.',
    );
    const [check] = checksOf({ braces: [along(-40)] }).filter(({ id }) => id === 'brace-pins');
    expect(check?.lengths[1]).toBeCloseTo(4.88125, 9);
    expect(check?.source).toContain('from memory, no source');
  });

  it('ask for a look when a ball end has no room, at the pin', () => {
    expect(sayOf('brace-pins', { braces: [along(-30)] })).toBe(
      'look: Pin 4 comes within 2.50 mm of leg; the ball end wants 4.88 mm. Find the brace from inside before drilling.',
    );
    expect(checksOf({ braces: [along(-30)] }).find(({ id }) => id === 'brace-pins')).toMatchObject({
      at: [{ x: expect.closeTo(-21, 9), y: expect.closeTo(656.25, 9) }],
      part: 'check: pin holes clear the braces',
      limit: 'limits.braceToPin',
    });
  });

  it('are wrong when a hole runs into a brace, and say what the pilot hole does', () => {
    // 26.6 − 21 = 5.6: reamed to 6 it is 1.4 short, drilled to 3 it has 0.1.
    expect(sayOf('brace-pins', { braces: [along(-26.6)] }, pinsWith({ hole: 3, underHead: 6 }))).toBe(
      'wrong: Pin 4 runs 1.40 mm into leg. The pilot hole clears it by 0.10 mm.',
    );
    expect(sayOf('brace-pins', { braces: [along(-26)] }, pinsWith({ hole: 5, underHead: 6 }))).toBe(
      'wrong: Pin 4 runs 2.00 mm into leg. So does the pilot hole, by 1.50 mm.',
    );
  });

  it('take the maker’s own limit', () => {
    const project = { ...plainBridge(), limits: { braceToPin: 2 } };
    const check = checksOf({ braces: [along(-30)] }, project).find(({ id }) => id === 'brace-pins');
    expect(check).toMatchObject({ verdict: 'good', source: 'set by the maker' });
  });

  it('are not asked about without pins or braces', () => {
    expect(sayOf('brace-pins', { braces: [along(-40)] }, plainBridge({}, null))).toBe('not asked');
    expect(sayOf('brace-pins', {})).toBe('not asked');
  });
});

describe('a converted body', () => {
  const body = { hand: 'right', braces: [along(-30)] } as const;

  it('keeps its braces, which then lie by the pins of the other side', () => {
    // Built right-handed, 30 to the left: under string 1 once it is strung left-handed.
    expect(sayOf('brace-pins', body)).toMatch(/^look: Pin 4 comes within 2\.50 mm/);
    expect(sayOf('brace-pins', body, plainBridge(), 'left')).toMatch(/^look: Pin 1 comes within 2\.50 mm/);
  });

  it('is no conversion when nothing else is said of its hand', () => {
    expect(sayOf('brace-pins', { ...body, hand: null }, plainBridge(), 'left')).toMatch(/^look: Pin 4 /);
    expect(sayOf('hand', { ...body, hand: null }, plainBridge(), 'left')).toBe(
      'good: Strings, bridge and body are all left-handed.',
    );
  });

  it('is told as converted', () => {
    expect(sayOf('hand', body, plainBridge(), 'left')).toMatch(
      /^look: Converted: the body was built right-handed and is strung left-handed\. Braces, plate and soundhole stay/,
    );
    expect(sayOf('hand', body)).toBe('good: Strings, bridge and body are all right-handed.');
  });
});

describe('the hand throughout', () => {
  it('finds braces that lie on another side than their names', () => {
    const braces = [
      { ...along(-40), name: 'X-leg, treble' },
      { ...along(40), id: 'b2', name: 'X-leg, treble' },
    ];
    expect(sayOf('hand', { braces })).toMatch(/^wrong: X-leg, treble: on the other side/);
    expect(sayOf('hand', { braces: braces.slice(1) })).toMatch(/^good/);
    // Legs that meet on the centreline are judged by their middle.
    const leg = { ...braceWith({ to: { x: -60, y: 700 } }), name: 'Bass leg' };
    expect(sayOf('hand', { braces: [leg] })).toMatch(/^good/);
  });

  it('looks at a cutaway on the bass side', () => {
    const cutaway = { side: 'bass', aside: 40, end: 450 } as const;
    expect(sayOf('hand', { cutaway })).toMatch(/^look: The cutaway is on the bass side of a body built right-handed/);
    expect(sayOf('hand', { cutaway: { ...cutaway, side: 'treble' } })).toMatch(/^good/);
  });
});

describe('locating pins and braces', () => {
  // The bass one at −38.75, its rim nearest to the middle at −37.956; the brace reaches 4 beyond its own middle.
  it.each([
    [-30, 'good: Locating pins clear the braces by 3.96 mm: the nearest is leg.'],
    [
      -33.5,
      'look: Locating pin, bass comes within 0.46 mm of leg; 1.00 mm is usual. Find the brace from inside before drilling.',
    ],
    [
      -38,
      'wrong: Locating pin, bass runs 4.04 mm into leg. Put the locating pins elsewhere, or stop the hole in the top.',
    ],
  ])('a brace at %f', (x, words) => expect(sayOf('brace-locating', { braces: [along(x)] })).toBe(words));

  it('are the pins’ own matter when they stand in pin holes', () => {
    const project = plainBridge(
      {},
      {},
      { locating: { site: 'outer-pin-holes', drill: 2, points: null, clearance: 0.5 } },
    );
    expect(sayOf('brace-locating', { braces: [along(-38)] }, project)).toBe('not asked');
    expect(sayOf('plate-locating', { plate: plateWith() }, project)).toBe('not asked');
  });
});

describe('the plate beneath', () => {
  it('holds every pin with wood around', () => {
    // 656.25 − 630 and 680 − 656.25 − 2.5 = 21.25; 50 − 21 − 2.5 = 26.5.
    expect(sayOf('plate-pins', { plate: plateWith() })).toBe(
      'good: Every pin hole lies over the plate, with 21.25 mm of it around.',
    );
  });

  it('must go on for a ball end beside the hole', () => {
    // Back edge at 661.75: 661.75 − 656.25 − 2.5 = 3.
    expect(sayOf('plate-pins', { plate: plateWith({ front: 611.75 }) })).toBe(
      'look: Only 3.00 mm of plate around pin 1; a ball end wants 4.76 mm to bear on.',
    );
  });

  it('is wrong where pins lie beyond it', () => {
    // Half of 36 is 18: pins 1 and 4 at ±21 stand with their far rims 5.5 beyond.
    const narrow = plateWith({ acrossFront: 36, acrossBack: 36 });
    expect(sayOf('plate-pins', { plate: narrow })).toBe(
      'wrong: Beyond the plate: 2 pin holes, by up to 5.50 mm. The ball end would pull on the bare top.',
    );
    const aside = plateWith({ acrossFront: 60, acrossBack: 60, aside: 8 });
    expect(sayOf('plate-pins', { plate: aside })).toMatch(/^wrong: Beyond the plate: pin 4, by up to 1\.50 mm/);
    // Converted, the same plate lies 8 to the other side.
    expect(sayOf('plate-pins', { hand: 'right', plate: aside }, plainBridge(), 'left')).toMatch(
      /pin 1, by up to 1\.50/,
    );
  });

  it('is missed where pins would pull on the top alone', () => {
    expect(sayOf('plate-pins', {})).toMatch(/^look: No bridge plate is entered/);
    expect(sayOf('plate-pins', {}, plainBridge({}, null))).toBe('not asked');
  });

  it('tells which locating pins go through bare top', () => {
    expect(sayOf('plate-locating', { plate: plateWith() })).toBe('good: Locating-pin holes go into the plate.');
    const short = plateWith({ acrossFront: 70, acrossBack: 70 });
    expect(sayOf('plate-locating', { plate: short })).toMatch(
      /^look: Locating-pin holes beyond the plate: treble and bass\./,
    );
    expect(sayOf('plate-locating', { plate: { ...short, aside: 10 } })).toMatch(/beyond the plate: bass\./);
  });
});

describe('the wire hole', () => {
  const wire = (x: number, diameter: number, y = 647) => ({ wireHole: { at: { x, y }, diameter } });

  it('lies inside the slot', () => {
    expect(sayOf('wire-slot', wire(-30, 2))).toBe('good: The wire hole lies inside the slot, 0.25 mm from its walls.');
    expect(sayOf('wire-slot', wire(-30, 3))).toBe(
      'wrong: A wire hole of 3.00 mm is wider than the slot of 2.50 mm: it would cut into its walls.',
    );
    expect(sayOf('wire-slot', wire(-30, 2, 647.5))).toBe(
      'wrong: The wire hole runs 0.25 mm out of the slot, into its walls.',
    );
    expect(sayOf('wire-slot', wire(-39.5, 2))).toMatch(/^wrong: The wire hole runs 0\.50 mm out/);
  });

  it('clears the braces', () => {
    expect(sayOf('brace-wire', { ...wire(-30, 2), braces: [along(-36)] })).toMatch(/^good: .* by 1\.00 mm/);
    expect(sayOf('brace-wire', { ...wire(-30, 2), braces: [along(-35.5)] })).toMatch(/^look: Pickup wire hole comes/);
    expect(sayOf('brace-wire', { ...wire(-30, 2), braces: [along(-32)] })).toMatch(
      /^wrong: Pickup wire hole runs 3\.00/,
    );
  });

  it('goes through the plate or clear of it, not through its edge', () => {
    const plate = (half: number) => plateWith({ acrossFront: 2 * half, acrossBack: 2 * half });
    expect(sayOf('plate-wire', { ...wire(-30, 2), plate: plate(32) })).toBe(
      'good: The wire hole goes through the plate, 1.00 mm from its edge.',
    );
    expect(sayOf('plate-wire', { ...wire(-30, 2), plate: plate(28) })).toBe(
      'good: The wire hole goes through the top 1.00 mm beyond the plate.',
    );
    // The edge 0.4 outside the middle of the hole: inward by 0.6 it is over the plate.
    expect(sayOf('plate-wire', { ...wire(-30, 2), plate: plate(30.4) })).toMatch(/^look: .* Move it by 0\.60 mm\.$/);
    expect(sayOf('plate-wire', { ...wire(-30, 2), plate: plate(29.6) })).toMatch(/^look: .* Move it by 0\.60 mm\.$/);
  });
});

describe('what was found', () => {
  it('asks for braces, for reading them, and for two places on each', () => {
    expect(sayOf('braces-none', {})).toMatch(/^look: No brace is entered/);
    const guess = { ...along(-40), read: false };
    expect(sayOf('body-found', { braces: [guess], plate: plateWith({ read: false }) })).toMatch(
      /^look: Not found on this instrument yet: leg and the plate\./,
    );
    const four = [1, 2, 3, 4].map((number) => ({ ...guess, id: `b${number}` }));
    expect(sayOf('body-found', { braces: four })).toMatch(/yet: 4 braces\./);
    expect(sayOf('body-found', { braces: [along(-40)], plate: plateWith() })).toMatch(/^good/);
    const point = braceWith({ to: { x: 0, y: 600 } });
    expect(sayOf('brace-short', { braces: [point] })).toMatch(/^wrong: Both points of leg are the same place/);
  });

  it('asks for a point beyond the bridge where a leg seems to end beneath it', () => {
    const leg = braceWith({ from: { x: -40, y: 600 }, to: { x: -60, y: 650 } });
    expect(sayOf('brace-ends', { braces: [leg] })).toMatch(/^look: As entered, leg ends beneath the bridge/);
    expect(sayOf('brace-ends', { braces: [{ ...leg, kind: 'finger' }] })).toBe('not asked');
    expect(sayOf('brace-ends', { braces: [{ ...leg, to: { x: -60, y: 690 } }] })).toBe('not asked');
  });
});

describe('room around', () => {
  it('tells whether a caul of the plate’s size goes through the soundhole', () => {
    // Section 50 × 28.575: diagonal 57.59.
    const body = (across: number) => ({ plate: plateWith(), soundhole: { centre: 500, across, along: null } });
    expect(sayOf('caul-passes', body(57.6))).toBe(
      'good: A caul as large as the plate, 100.00 mm × 50.00 mm and 28.57 mm thick, goes through the soundhole end first.',
    );
    expect(sayOf('caul-passes', body(57.5))).toMatch(/^look: .* does not go through the soundhole/);
    expect(sayOf('caul-passes', { plate: plateWith() })).toBe('not asked');
  });

  it('keeps the bridge out of a cutaway', () => {
    const cutaway = (aside: number, end: number) => ({ cutaway: { side: 'treble', aside, end } as const });
    expect(sayOf('cutaway', cutaway(40, 450))).toBe('good: The cutaway ends 189.75 mm ahead of the bridge.');
    expect(sayOf('cutaway', cutaway(100, 700))).toBe('good: The cutaway passes the bridge 5.00 mm to the side.');
    expect(sayOf('cutaway', cutaway(90, 650))).toBe(
      'wrong: The bridge runs into the cutaway: 10.25 mm along and 5.00 mm across.',
    );
  });
});

describe('nothing said', () => {
  it('asks nothing', () => expect(() => stepOf({ ...plainBridge(), body: null })).toThrow('Nothing is said'));

  it('asks nothing of a bridge that could not be computed', () => {
    const broken = plainBridge({ length: 10, width: 12, ends: 'round' });
    expect(checksOf({ braces: [along(-40)], plate: plateWith() }, broken)).toEqual([]);
  });
});
