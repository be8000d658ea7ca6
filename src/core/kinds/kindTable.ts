import type { Compensation, HeightKindName, ShapeName, TrebleBass } from '../document/types';

/** What a kind of instrument starts from; measuring the instrument beats all of it. Lengths mm. */
export interface KindRow {
  readonly id: string;
  readonly name: string;
  readonly shape: ShapeName;
  readonly stringSet: string;
  readonly scaleLength: number;
  readonly frets: { readonly count: number; readonly bodyJoin: number };
  readonly widths: { readonly nut: number; readonly twelfth: number };
  readonly boardRadius: number | null;
  readonly margin: number;
  readonly spread: number;
  readonly action: TrebleBass;
  readonly nutHeight: TrebleBass;
  readonly relief: number;
  readonly rule: Compensation['rule'];
  readonly height: { readonly kind: HeightKindName; readonly run: number };
  readonly thickness: number;
  readonly slotDepth: number;
  /** Slot to pin row, and a second row behind the first (0 for one row); for bridges with pins. */
  readonly pins: { readonly from: number; readonly stagger: number };
  /** Where the figures that no field's own source covers come from. */
  readonly source: string;
}

const STEEL_RULE: Compensation['rule'] = {
  treble: 1.5875,
  bass: 3.96875,
  reach: 'break-point',
  source: '1/16 in treble, 5/32 in bass: larryeubanks.blogspot.com, June 2010',
};

const UKULELE_RULE: Compensation['rule'] = {
  treble: 2.5,
  bass: 2.5,
  reach: 'slot-front',
  source: '2 to 3 mm on a ukulele: blackchisel.blogspot.com, March 2009',
};

const FROM_MEMORY = 'dimensions from memory';

const STEEL = {
  shape: 'belly',
  boardRadius: 406.4,
  margin: 3.2,
  action: { treble: 1.9, bass: 2.5 },
  nutHeight: { treble: 0.3, bass: 0.4 },
  relief: 0.15,
  rule: STEEL_RULE,
  height: { kind: 'steel', run: 11.1 },
  thickness: 9.525,
  slotDepth: 6.5,
  pins: { from: 9.525, stagger: 0 },
  source: FROM_MEMORY,
} as const;

const UKULELE = {
  shape: 'small-ukulele',
  boardRadius: null,
  margin: 3.5,
  action: { treble: 2.4, bass: 2.6 },
  nutHeight: { treble: 0.4, bass: 0.4 },
  relief: 0.05,
  rule: UKULELE_RULE,
  height: { kind: 'ukulele', run: 8 },
  thickness: 6.35,
  slotDepth: 3.5,
  pins: { from: 9.525, stagger: 0 },
  source: FROM_MEMORY,
} as const;

/** The kinds of instrument to start from, all with a glued bridge. */
export const KIND_TABLE: readonly KindRow[] = [
  {
    ...STEEL,
    id: 'steel-string',
    name: 'Steel-string guitar',
    stringSet: 'steel-12-53',
    scaleLength: 645,
    frets: { count: 20, bodyJoin: 14 },
    widths: { nut: 44.45, twelfth: 55.5 },
    spread: 54,
  },
  {
    ...STEEL,
    id: 'twelve-string',
    name: 'Twelve-string guitar',
    stringSet: 'steel-twelve-10-47',
    scaleLength: 645,
    frets: { count: 20, bodyJoin: 14 },
    widths: { nut: 47.6, twelfth: 58 },
    spread: 56,
    pins: { from: 7, stagger: 6.5 },
  },
  {
    ...STEEL,
    id: 'small-bodied',
    name: 'Small-bodied steel-string',
    stringSet: 'steel-11-52',
    scaleLength: 630,
    frets: { count: 19, bodyJoin: 12 },
    widths: { nut: 46, twelfth: 57 },
    spread: 56,
    rule: {
      treble: 3,
      bass: 5,
      reach: 'slot-centre',
      source:
        'about 4 mm at the slot centre on 630 mm: taranguitars.blogspot.com, February 2008; the 2 mm of slant from memory',
    },
  },
  {
    ...STEEL,
    id: 'baritone',
    name: 'Baritone guitar',
    stringSet: 'steel-baritone-14-56',
    scaleLength: 686,
    frets: { count: 20, bodyJoin: 14 },
    widths: { nut: 44.45, twelfth: 55.5 },
    spread: 55,
  },
  {
    ...STEEL,
    id: 'tenor-guitar',
    name: 'Tenor guitar',
    stringSet: 'steel-tenor-10-32',
    scaleLength: 584,
    frets: { count: 19, bodyJoin: 14 },
    widths: { nut: 32, twelfth: 40 },
    spread: 36,
  },
  {
    id: 'classical',
    name: 'Classical guitar',
    shape: 'tie-block',
    stringSet: 'nylon-normal',
    scaleLength: 650,
    frets: { count: 19, bodyJoin: 12 },
    widths: { nut: 52, twelfth: 62 },
    boardRadius: null,
    margin: 4,
    spread: 58,
    action: { treble: 3, bass: 4 },
    nutHeight: { treble: 0.7, bass: 0.8 },
    relief: 0.1,
    rule: {
      treble: 2,
      bass: 2,
      reach: 'slot-front',
      source: '12th fret to slot front 327.0 mm on 650: an unattributed web article',
    },
    height: { kind: 'classical', run: 10 },
    thickness: 9,
    slotDepth: 6,
    pins: { from: 9.525, stagger: 0 },
    source: FROM_MEMORY,
  },
  {
    ...UKULELE,
    id: 'tenor-ukulele',
    name: 'Tenor ukulele',
    stringSet: 'ukulele-tenor-nylon',
    scaleLength: 432,
    frets: { count: 18, bodyJoin: 14 },
    widths: { nut: 36, twelfth: 46 },
    spread: 42,
    rule: {
      treble: 3.175,
      bass: 3.175,
      reach: 'slot-front',
      source: '1/8 in to the leading edge on a 17 in scale: ukuleleguild.tripod.com, November 2001',
    },
  },
  {
    ...UKULELE,
    id: 'concert-ukulele',
    name: 'Concert ukulele',
    stringSet: 'ukulele-concert-nylon',
    scaleLength: 380,
    frets: { count: 16, bodyJoin: 14 },
    widths: { nut: 36, twelfth: 45 },
    spread: 42,
  },
  {
    ...UKULELE,
    id: 'soprano-ukulele',
    name: 'Soprano ukulele',
    stringSet: 'ukulele-soprano-nylon',
    scaleLength: 346,
    frets: { count: 12, bodyJoin: 12 },
    widths: { nut: 35, twelfth: 43 },
    spread: 40,
    rule: {
      treble: 2.1,
      bass: 2.1,
      reach: 'slot-front',
      source:
        '348.11 mm on a 346 mm soprano: crawlsbackward.blogspot.com, January 2012; where on the saddle is not said',
    },
  },
];
