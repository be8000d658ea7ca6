import { choiceField, lengthField, numberField } from './fieldRows';
import type { Field, NumberField } from './fieldTypes';
import type { FormerHoles, FormerSlot, Repair } from './repairTypes';
import { SHAPE_NAMES } from './shapeNames';
import { SHAPE_PARAMETERS } from './shapeParameters';
import type { Project } from './types';

/** Holes that the bridge before may have had. */
export const MOST_FORMER_HOLES = 24;

const SIDES = 'Plus, or the word treble, for the treble side; minus, or the word bass, for the bass side.';
const BASS_BACK = 'Plus when the bass end lies farther back.';

const degrees = (row: NumberField): NumberField => ({ ...row, scale: 180 / Math.PI });
const shortWords = { front: 'From the front edge', nut: 'From the nut' } as const;
const fromWords = { front: 'From the old front edge', nut: 'From the nut' } as const;

const fromField = (path: string, label: string): Field =>
  choiceField(path, label, 'Changing it leaves everything where it is and tells the figures anew.', [
    ['front', 'the old front edge'],
    ['nut', 'the nut'],
  ]);

const footprintFields = ({ outline }: Repair['footprint']): readonly Field[] => {
  const at = (name: string): string => `repair.footprint.${name}`;
  const shaped: readonly Field[] =
    outline.kind === 'drawn'
      ? []
      : [
          choiceField(
            at('outline.shape'),
            'Old bridge shape',
            'The outline that shows in the finish; choosing a shape brings its usual dimensions.',
            Object.entries(SHAPE_NAMES),
          ),
          ...SHAPE_PARAMETERS[outline.shape].map((row): Field => {
            const { kind, name, label, min, max, help, source } = row;
            const old = `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
            const path = at(`outline.parameters.${name}`);
            return { kind, path, label: `Old ${old}`, min, max, help, ...(source === undefined ? {} : { source }) };
          }),
        ];
  return [
    ...shaped,
    lengthField(
      at('front'),
      'Old front edge, from the nut',
      50,
      1200,
      'Nut to the front edge of the old footprint, in its middle, along the centreline.',
    ),
    lengthField(at('aside'), 'Old bridge, to the side', -50, 50, `Its middle against the centreline. ${SIDES}`),
    degrees(
      numberField(at('turn'), 'Old bridge, turned', '°', -0.2, 0.2, `Against square to the centreline. ${BASS_BACK}`),
    ),
  ];
};

const holeFields = (holes: FormerHoles): readonly Field[] => {
  const at = (name: string): string => `repair.holes.${name}`;
  const datum = fromField(at('from'), 'Old holes read from');
  if (holes.kind === 'each')
    return [
      datum,
      ...holes.each.flatMap((_, index): readonly Field[] => {
        const of = (what: string): string => `${what}, old hole ${index + 1}`;
        return [
          lengthField(at(`each.${index}.x`), of('To the side'), -150, 150, `Of the middle line. ${SIDES}`),
          lengthField(
            at(`each.${index}.y`),
            of(shortWords[holes.from]),
            -100,
            1200,
            `${fromWords[holes.from]} to its centre.`,
          ),
          lengthField(at(`each.${index}.diameter`), of('Diameter'), 0.5, 15, 'As it stands in the top.'),
        ];
      }),
    ];
  return [
    datum,
    {
      ...numberField(at('count'), 'Old holes', '', 1, MOST_FORMER_HOLES, 'How many there are in the top.'),
      whole: true,
    },
    lengthField(
      at('spread'),
      'Old hole spacing, outer',
      1,
      200,
      'Centre of the first to centre of the last, along the row.',
    ),
    lengthField(
      at('distance'),
      holes.from === 'front' ? 'Old front edge to hole row' : 'Nut to old hole row',
      -100,
      1200,
      `${fromWords[holes.from]} to the centres of the holes, in the middle of the row.`,
    ),
    lengthField(at('aside'), 'Old hole row, to the side', -50, 50, `Its middle against the middle line. ${SIDES}`),
    degrees(numberField(at('slant'), 'Slant of the old hole row', '°', -0.35, 0.35, BASS_BACK)),
    lengthField(
      at('stagger'),
      'Second old row behind the first',
      0,
      40,
      'How far every second hole stands behind the others; 0 for one row.',
    ),
    lengthField(at('diameter'), 'Old hole diameter', 0.5, 15, 'As they stand in the top.'),
  ];
};

const slotFields = (slot: FormerSlot): readonly Field[] => {
  const at = (name: string): string => `repair.slot.${name}`;
  return [
    fromField(at('from'), 'Old slot read from'),
    lengthField(
      at('distance'),
      slot.from === 'front' ? 'Front edge to old slot' : 'Nut to old slot',
      -100,
      1200,
      `${fromWords[slot.from]} to the front wall of the old slot, in its middle.`,
    ),
    lengthField(at('aside'), 'Old slot, to the side', -50, 50, `Its middle against the middle line. ${SIDES}`),
    degrees(numberField(at('slant'), 'Slant of the old slot', '°', -0.35, 0.35, BASS_BACK)),
    lengthField(at('length'), 'Old slot length', 10, 200, 'Over all, along the slot, ends included.'),
    lengthField(at('width'), 'Old slot width', 0.5, 12, 'Wall to wall, square to the slot.'),
    lengthField(at('depth'), 'Old slot depth', 0.5, 14, 'Top of the bridge to the floor of the slot.'),
    choiceField(at('ends'), 'Old slot ends', 'As the cutter or the saw left them.', [
      ['round', 'round'],
      ['square', 'square'],
    ]),
  ];
};

/** Every row of the field table about the bridge that was there; none for new work. */
export const repairFields = ({ repair }: Project): readonly Field[] =>
  repair === null
    ? []
    : [
        ...footprintFields(repair.footprint),
        ...(repair.holes === null ? [] : holeFields(repair.holes)),
        ...(repair.slot === null ? [] : slotFields(repair.slot)),
      ];
