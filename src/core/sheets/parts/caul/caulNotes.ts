import { isConverted } from '../../../body/bodyHand';
import { caulPasses } from '../../../body/caulPasses';
import type { Hole } from '../../../bridge/types';
import { bodyLimit } from '../../../checks/body/bodyLimits';
import type { Body } from '../../../document/bodyTypes';
import type { Project } from '../../../document/types';
import { showLength } from '../../../units/showLength';
import type { SheetContext } from '../types';
import { grooveLetter } from './caulFace';
import type { CaulShape } from './caulShape';

/** Less wood than this under a groove breaks in the hand, mm: common practice, no source. */
const LEAST_UNDER = 6;

interface Caul {
  readonly body: Body;
  readonly shape: CaulShape;
  readonly holes: readonly Hole[];
}

type Show = (mm: number) => string;

/** How deep a groove is cut, below the faces that press on the top: brace and room; null while the brace was not read. */
const depthOf = (body: Body, id: string, room: number): number | null => {
  const height = body.braces.find((brace) => brace.id === id)?.height ?? null;
  return height === null ? null : height + room;
};

const grooveNotes = ({ body, shape }: Caul, { limits }: Project, show: Show): readonly string[] => {
  const room = bodyLimit('caulGroove', limits).value;
  const thick = bodyLimit('caulThickness', limits).value;
  return shape.grooves.map(({ brace }, index) => {
    const depth = depthOf(body, brace.id, room);
    const deep = depth === null ? 'depth: read the brace' : `${show(depth)} deep`;
    const shallow = depth !== null && thick - depth < LEAST_UNDER ? ', LOOK: hardly any wood is left under it' : '';
    const guess = brace.read ? '' : ', LOOK: not found yet, find it before you cut';
    return `${grooveLetter(index)}: groove for ${brace.name}: ${show(brace.width + 2 * room)} wide, ${deep}${shallow}${guess}.`;
  });
};

/** Whether the caul goes through the soundhole, and how far in it has to be carried. */
const passNotes = ({ body, shape }: Caul, { project, around }: SheetContext, show: Show): readonly string[] => {
  const { soundhole } = body;
  if (soundhole === null) return ['No soundhole is entered: whether this caul goes in is not known.'];
  const thick = bodyLimit('caulThickness', project.limits).value;
  const [narrow, long] = [Math.min(shape.along, shape.across), Math.max(shape.along, shape.across)];
  const diagonal = show(Math.hypot(narrow, thick));
  const wide = Math.max(soundhole.across, soundhole.along ?? soundhole.across);
  const hole =
    soundhole.along === null || soundhole.along === soundhole.across
      ? show(soundhole.across)
      : `${show(soundhole.across)} × ${show(soundhole.along)}`;
  const passes = caulPasses(soundhole, narrow, thick)
    ? `Goes through the soundhole (${hole}) end first: ${diagonal} on the diagonal of its section.`
    : `LOOK: does not go through the soundhole (${hole}): ${diagonal} on the diagonal of its section. Make it narrower, thinner, or in two pieces.`;
  const turn =
    long <= wide ? [] : [`${show(long)} long, more than the hole: try with a card whether it can be turned inside.`];
  const far = around?.body?.reach.filter(({ distance }) => distance > 0) ?? [];
  const reach =
    far.length === 0
      ? []
      : [
          `Reach from the edge of the soundhole: ${far.map(({ label, distance }) => `${label.toLowerCase()} ${show(distance)}`).join(', ')}.`,
        ];
  return [passes, ...turn, ...reach];
};

const plateNotes = ({ body: { plate }, shape: { relief } }: Caul, show: Show): readonly string[] => {
  if (plate === null) return ['No plate is entered: the caul presses on the bare top between its grooves.'];
  const guess = plate.read ? '' : ' LOOK: not found yet, find it before you cut.';
  return relief === null
    ? [`The plate lies under all of the caul: no relief for it.${guess}`]
    : [
        `Plate relief, the thin outline: ${show(plate.thickness)} deep, as the plate is thick, so that plate and top are pressed alike.${guess}`,
      ];
};

const holeNotes = (
  holes: readonly Hole[],
  { clearance }: Project['bridge']['locating'],
  show: Show,
): readonly string[] => {
  const [hole] = holes;
  return hole === undefined
    ? []
    : [
        `${holes.length} ${holes.length === 1 ? 'hole' : 'holes'} ${show(hole.diameter)} through: the locating drill and ${show(clearance)} of room, so that the caul lifts off.`,
      ];
};

/** A body built for the other hand keeps its braces where they were built. */
const handNotes = (body: Body, { instrument: { hand } }: Project): readonly string[] =>
  isConverted(body, hand)
    ? [
        `Body built for the ${body.hand} hand, strung for the ${hand}: names of braces are the body’s, BASS and TREBLE the strings’.`,
      ]
    : [];

/** What is said under the plate face: sizes, grooves and their depths, and whether the caul goes in. */
export const plateFaceNotes = (caul: Caul, context: SheetContext): readonly string[] => {
  const { project, style } = context;
  const show: Show = (mm) => showLength(mm, style);
  const thick = bodyLimit('caulThickness', project.limits).value;
  return [
    `This face lies against the plate. Stock ${show(thick)} thick, grain across the instrument; grey is grooved.`,
    ...plateNotes(caul, show),
    ...grooveNotes(caul, project, show),
    ...holeNotes(caul.holes, project.bridge.locating, show),
    ...passNotes(caul, context, show),
    ...handNotes(caul.body, project),
  ];
};

/** What is said under the clamp face. */
export const clampFaceNotes = (caul: Caul, { project, style }: SheetContext): readonly string[] => [
  'The other face, where the clamps press: turned over side to side, nut end still away. Dashed: grooves, plate relief and bridge, hidden beneath. Paste it on with the holes over one another.',
  ...holeNotes(caul.holes, project.bridge.locating, (mm) => showLength(mm, style)),
  'Wax the caul or wrap it in film. Try it in dry with every clamp: it must lie without rocking, no brace under load.',
  'Clamps: snug and even; too tight dents the top, starves the joint and cracks braces. Never a hand inside while a drill or blade is at work.',
  ...handNotes(caul.body, project),
];
