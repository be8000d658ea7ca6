import { BRACING_SETS } from '../../../src/core/body/bracingSets';
import { createAround } from '../../../src/core/derive/createAround';
import { createDerive } from '../../../src/core/derive/createDerive';
import { allFields } from '../../../src/core/document/fieldAt';
import type { Field } from '../../../src/core/document/fieldTypes';
import type { FieldValue } from '../../../src/core/document/fieldValue';
import { GLUE_FIELDS } from '../../../src/core/document/glueFields';
import { SHAPE_NAMES } from '../../../src/core/document/shapeNames';
import type { Project, ShapeName } from '../../../src/core/document/types';
import { rectanglePath } from '../../../src/core/geom/rectanglePath';
import type { Point } from '../../../src/core/geom/types';
import { GRAIN_COEFFICIENTS } from '../../../src/core/glue/grainCoefficients';
import { STRING_SETS } from '../../../src/core/intonation/stringSets';
import { KINDS } from '../../../src/core/kinds/kinds';
import type { Result } from '../../../src/core/result';
import { runCase } from '../../../src/core/run/runCase';
import { runSteps } from '../../../src/core/run/runSteps';
import { addString } from '../../../src/store/commands/addString';
import { addBrace } from '../../../src/store/commands/body/addBrace';
import { centrePlate } from '../../../src/store/commands/body/centrePlate';
import { chooseBody } from '../../../src/store/commands/body/chooseBody';
import { chooseBodyHand } from '../../../src/store/commands/body/chooseBodyHand';
import { chooseCutaway } from '../../../src/store/commands/body/chooseCutaway';
import { choosePlate } from '../../../src/store/commands/body/choosePlate';
import { chooseSoundhole } from '../../../src/store/commands/body/chooseSoundhole';
import { chooseWireHole } from '../../../src/store/commands/body/chooseWireHole';
import { markBraceFound } from '../../../src/store/commands/body/markBraceFound';
import { markPlateFound } from '../../../src/store/commands/body/markPlateFound';
import { mirrorBrace } from '../../../src/store/commands/body/mirrorBrace';
import { removeBrace } from '../../../src/store/commands/body/removeBrace';
import { swapSides } from '../../../src/store/commands/body/swapSides';
import { takeBracing } from '../../../src/store/commands/body/takeBracing';
import { chooseCutting } from '../../../src/store/commands/chooseCutting';
import { chooseElastic } from '../../../src/store/commands/chooseElastic';
import { chooseHold } from '../../../src/store/commands/chooseHold';
import { chooseRamps } from '../../../src/store/commands/chooseRamps';
import { chooseShape } from '../../../src/store/commands/chooseShape';
import { chooseSheet } from '../../../src/store/commands/chooseSheet';
import { chooseSite } from '../../../src/store/commands/chooseSite';
import { chooseStringSet } from '../../../src/store/commands/chooseStringSet';
import { chooseWinding } from '../../../src/store/commands/chooseWinding';
import { pinDimension } from '../../../src/store/commands/dimensions/pinDimension';
import { unpinDimension } from '../../../src/store/commands/dimensions/unpinDimension';
import { chooseRebate } from '../../../src/store/commands/finish/chooseRebate';
import { chooseGrain } from '../../../src/store/commands/glue/chooseGrain';
import { setClamps } from '../../../src/store/commands/glue/setClamps';
import { setGlueField } from '../../../src/store/commands/glue/setGlueField';
import { lineUp } from '../../../src/store/commands/hand/lineUp';
import { moveParts } from '../../../src/store/commands/hand/moveParts';
import { placeParts } from '../../../src/store/commands/hand/placeParts';
import { spreadEvenly } from '../../../src/store/commands/hand/spreadEvenly';
import { mendDesign } from '../../../src/store/commands/mendDesign';
import { deleteNodes } from '../../../src/store/commands/outline/deleteNodes';
import { drawFreely } from '../../../src/store/commands/outline/drawFreely';
import { insertNode } from '../../../src/store/commands/outline/insertNode';
import { makeSymmetric } from '../../../src/store/commands/outline/makeSymmetric';
import { moveHandle } from '../../../src/store/commands/outline/moveHandle';
import { moveNodes } from '../../../src/store/commands/outline/moveNodes';
import { moveSegment } from '../../../src/store/commands/outline/moveSegment';
import { placeNodes } from '../../../src/store/commands/outline/placeNodes';
import { roundCorner } from '../../../src/store/commands/outline/roundCorner';
import { scaleOutline } from '../../../src/store/commands/outline/scaleOutline';
import { setJoin } from '../../../src/store/commands/outline/setJoin';
import { setNodePlace } from '../../../src/store/commands/outline/setNodePlace';
import { setRadius } from '../../../src/store/commands/outline/setRadius';
import { setSegmentKind } from '../../../src/store/commands/outline/setSegmentKind';
import { setSymmetric } from '../../../src/store/commands/outline/setSymmetric';
import { acceptRound } from '../../../src/store/commands/place/acceptRound';
import { beginRound } from '../../../src/store/commands/place/beginRound';
import { chooseDrop } from '../../../src/store/commands/place/chooseDrop';
import { chooseTool } from '../../../src/store/commands/place/chooseTool';
import { removeReading } from '../../../src/store/commands/place/removeReading';
import { removeRound } from '../../../src/store/commands/place/removeRound';
import { takeReading } from '../../../src/store/commands/place/takeReading';
import { takeTuned } from '../../../src/store/commands/place/takeTuned';
import { addPicture } from '../../../src/store/commands/record/addPicture';
import { addWood } from '../../../src/store/commands/record/addWood';
import { beginInstrument } from '../../../src/store/commands/record/beginInstrument';
import { movePicture } from '../../../src/store/commands/record/movePicture';
import { removePicture } from '../../../src/store/commands/record/removePicture';
import { removeWood } from '../../../src/store/commands/record/removeWood';
import { restoreVersion } from '../../../src/store/commands/record/restoreVersion';
import { removeString } from '../../../src/store/commands/removeString';
import { addFormerHole } from '../../../src/store/commands/repair/addFormerHole';
import { chooseFormerDatum } from '../../../src/store/commands/repair/chooseFormerDatum';
import { chooseFormerHoles } from '../../../src/store/commands/repair/chooseFormerHoles';
import { chooseFormerShape } from '../../../src/store/commands/repair/chooseFormerShape';
import { chooseFormerSlot } from '../../../src/store/commands/repair/chooseFormerSlot';
import { chooseRepair } from '../../../src/store/commands/repair/chooseRepair';
import { removeFormerHole } from '../../../src/store/commands/repair/removeFormerHole';
import { takeFormerModel } from '../../../src/store/commands/repair/takeFormerModel';
import { takeFormerOutline } from '../../../src/store/commands/repair/takeFormerOutline';
import { tickStep } from '../../../src/store/commands/run/tickStep';
import { setField } from '../../../src/store/commands/setField';
import { setHand } from '../../../src/store/commands/setHand';
import { chooseSole } from '../../../src/store/commands/sole/chooseSole';
import { addStringUp } from '../../../src/store/commands/stringUp/addStringUp';
import { changeStringUp } from '../../../src/store/commands/stringUp/changeStringUp';
import { readCents } from '../../../src/store/commands/stringUp/readCents';
import { removeStringUp } from '../../../src/store/commands/stringUp/removeStringUp';
import { takeLearned } from '../../../src/store/commands/stringUp/takeLearned';
import { takeOutline } from '../../../src/store/commands/takeOutline';
import type { Dice } from './dice';

type Command = (project: Project) => Result<Project>;
/** A command with arguments for this project. */
type Row = (project: Project, dice: Dice) => Command;

const WHEN = '2026-03-01T09:00:00.000Z';
const SHAPES = Object.keys(SHAPE_NAMES) as ShapeName[];

const yesNo =
  (command: (project: Project, wanted: boolean) => Result<Project>): Row =>
  (_, dice) => {
    // More often there than not, so that what hangs on it has its turn too.
    const wanted = dice.below(4) > 0;
    return (project) => command(project, wanted);
  };

const plain =
  (command: Command): Row =>
  () =>
    command;

const nodeCount = ({ bridge: { outline } }: Project): number =>
  outline.kind === 'drawn' ? outline.path.segments.length : 8;
const node = (project: Project, dice: Dice): number => dice.below(nodeCount(project));
const small = (dice: Dice): Point => ({ x: dice.within(1.5), y: dice.within(1.5) });
const braceId = ({ body }: Project, dice: Dice): string => dice.of(body?.braces.map(({ id }) => id) ?? []) ?? 'none';

const stringUpId = ({ build }: Project, dice: Dice): string =>
  dice.of(build?.stringUps.map(({ id }) => id) ?? []) ?? 'none';
const roundId = ({ build }: Project, dice: Dice): string => dice.of(build?.rounds.map(({ id }) => id) ?? []) ?? 'none';
const toBegin = (dice: Dice) => ({
  id: `round${dice.below(1_000_000)}`,
  at: WHEN,
  stage: dice.of(['dry', 'taped', 'wet', 'cured'] as const) ?? 'taped',
});
const stringId = ({ strings }: Project, dice: Dice): string => dice.of(strings)?.id ?? 'none';

const PARTS = [
  'footprint',
  'slot',
  'pin 1',
  'pin 3',
  'locating pin, treble',
  'locating pin, bass',
  'node 1',
  'node 2',
  'node 5',
];

/** A value that the field's row allows. */
export const valueFor = (field: Field, dice: Dice): FieldValue => {
  switch (field.kind) {
    case 'choice':
      return dice.of(field.choices)?.value ?? '';
    case 'text':
      return `words ${dice.below(100)}`;
    case 'length':
    case 'number': {
      if (field.optional === true && dice.below(4) === 0) return null;
      const value = field.min + (field.max - field.min) * dice.share();
      return field.kind === 'number' && field.whole ? Math.round(value) : Math.round(value * 1000) / 1000;
    }
  }
};

/** Any field of the project, at any value that its row allows. */
const anyField: Row = (project, dice) => {
  const field = dice.of(allFields(project)) ?? null;
  const value = field === null ? null : valueFor(field, dice);
  return (before) => setField(before, { field, value });
};

/** Every command by the name of its file. Arguments are made for the project at hand; some will be refused. */
export const COMMANDS: Readonly<Record<string, Row>> = {
  addString: (project, dice) => {
    const [after, pair] = [dice.below(project.strings.length), dice.below(2) === 0];
    return (before) => addString(before, { after, pair });
  },
  removeString: (project, dice) => {
    const index = dice.below(project.strings.length);
    return (before) => removeString(before, index);
  },
  chooseElastic: (project, dice) => {
    const [index, kind] = [dice.below(project.strings.length), dice.of(['core', 'measured'] as const) ?? 'core'];
    return (before) => chooseElastic(before, { index, kind, scaleLength: 640, openLength: 642 });
  },
  chooseStringSet: (_, dice) => {
    const id = dice.of(STRING_SETS)?.id ?? '';
    return (before) => chooseStringSet(before, id);
  },
  chooseWinding: (project, dice) => {
    const [index, wound] = [dice.below(project.strings.length), dice.below(2) === 0];
    return (before) => chooseWinding(before, index, wound);
  },
  setHand: (_, dice) => {
    const hand = dice.of(['left', 'right'] as const) ?? 'left';
    return (before) => setHand(before, hand);
  },
  setField: anyField,
  mendDesign: (project, dice) => {
    const { checks } = createAround(() => null)(project, createDerive()(project));
    const mend = dice.of(checks.filter((check) => check.mend !== undefined))?.mend?.() ?? { set: [] };
    return (before) => mendDesign(before, mend);
  },
  addBrace: plain(addBrace),
  centrePlate: plain(centrePlate),
  swapSides: plain(swapSides),
  chooseBody: yesNo(chooseBody),
  choosePlate: yesNo(choosePlate),
  chooseSoundhole: yesNo(chooseSoundhole),
  chooseCutaway: yesNo(chooseCutaway),
  chooseWireHole: yesNo(chooseWireHole),
  markPlateFound: yesNo(markPlateFound),
  chooseBodyHand: (_, dice) => {
    const hand = dice.of(['left', 'right', null] as const) ?? null;
    return (before) => chooseBodyHand(before, hand);
  },
  markBraceFound: (project, dice) => {
    const [id, found] = [braceId(project, dice), dice.below(2) === 0];
    return (before) => markBraceFound(before, id, found);
  },
  mirrorBrace: (project, dice) => {
    const id = braceId(project, dice);
    return (before) => mirrorBrace(before, id);
  },
  removeBrace: (project, dice) => {
    const id = braceId(project, dice);
    return (before) => removeBrace(before, id);
  },
  takeBracing: (_, dice) => {
    const id = dice.of(BRACING_SETS)?.id ?? '';
    return (before) => takeBracing(before, id);
  },
  chooseCutting: yesNo(chooseCutting),
  chooseRamps: yesNo(chooseRamps),
  chooseHold: (_, dice) => {
    const hold = dice.of(['pins', 'pins', 'tie-block', 'back-edge'] as const) ?? 'pins';
    return (before) => chooseHold(before, hold);
  },
  chooseShape: (_, dice) => {
    const shape = dice.of(SHAPES) ?? 'belly';
    return (before) => chooseShape(before, shape);
  },
  chooseSite: (_, dice) => {
    const site = dice.of(['slot-ends', 'outer-pin-holes', 'free'] as const) ?? 'free';
    return (before) => chooseSite(before, site);
  },
  pinDimension: (_, dice) => {
    const [from, to] = [dice.of(PARTS) ?? '', dice.of(PARTS) ?? ''];
    const way = dice.of(['straight', 'across', 'along'] as const) ?? 'along';
    const at = small(dice);
    return (before) =>
      pinDimension(
        before,
        from === to
          ? { kind: 'distance', way, from: { kind: 'point', at }, to: { kind: 'point', at: { x: at.x + 9, y: at.y } } }
          : { kind: 'gap', from, to },
      );
  },
  unpinDimension: (project, dice) => {
    const id = dice.of(project.dimensions)?.id ?? 'none';
    return (before) => unpinDimension(before, id);
  },
  lineUp: (project, dice) => {
    const parts = [`node ${node(project, dice) + 1}`, `node ${node(project, dice) + 1}`];
    const way = dice.of(['level', 'straight', 'centreline'] as const) ?? 'level';
    return (before) => lineUp(before, parts, way);
  },
  spreadEvenly: (project, dice) => {
    const parts = [0, 1, 2].map(() => `node ${node(project, dice) + 1}`);
    const along = dice.of(['x', 'y'] as const) ?? 'x';
    return (before) => spreadEvenly(before, parts, along);
  },
  moveParts: (_, dice) => {
    const [part, by] = [dice.of(PARTS) ?? '', small(dice)];
    return (before) => moveParts(before, [part], by);
  },
  placeParts: (project, dice) => {
    const { outline } = project.bridge;
    const index = node(project, dice);
    const at = outline.kind === 'drawn' ? (outline.path.segments[index]?.to ?? { x: 0, y: 0 }) : { x: 0, y: 0 };
    const by = small(dice);
    const places = new Map([[`node ${((index + 1) % nodeCount(project)) + 1}`, { x: at.x + by.x, y: at.y + by.y }]]);
    return (before) => placeParts(before, places);
  },
  drawFreely: plain(drawFreely),
  deleteNodes: (project, dice) => {
    const nodes = [node(project, dice)];
    return (before) => deleteNodes(before, nodes);
  },
  insertNode: (project, dice) => {
    const [segment, t] = [node(project, dice), 0.2 + 0.6 * dice.share()];
    return (before) => insertNode(before, segment, t);
  },
  makeSymmetric: (_, dice) => {
    const side = dice.of(['treble', 'bass'] as const) ?? 'bass';
    return (before) => makeSymmetric(before, side);
  },
  setSymmetric: yesNo(setSymmetric),
  moveHandle: (project, dice) => {
    const { outline } = project.bridge;
    const curves = outline.kind === 'drawn' ? outline.path.segments.map(({ kind }) => kind === 'cubic') : [];
    const index = dice.of(curves.flatMap((curve, at) => (curve ? [at] : []))) ?? 0;
    const segment = outline.kind === 'drawn' ? outline.path.segments[index] : undefined;
    const by = small(dice);
    const from = segment?.kind === 'cubic' ? segment.c1 : { x: 0, y: 0 };
    return (before) => moveHandle(before, index, 'after', { x: from.x + by.x, y: from.y + by.y });
  },
  moveNodes: (project, dice) => {
    const [nodes, by] = [[node(project, dice), node(project, dice)], small(dice)];
    return (before) => moveNodes(before, nodes, by);
  },
  moveSegment: (project, dice) => {
    const [segment, by] = [node(project, dice), small(dice)];
    return (before) => moveSegment(before, segment, by);
  },
  placeNodes: (project, dice) => {
    const { outline } = project.bridge;
    const at = outline.kind === 'drawn' ? outline.path.start : { x: 0, y: 0 };
    const places = new Map([[0, { x: at.x + dice.within(1), y: at.y + dice.within(1) }]]);
    return (before) => placeNodes(before, places);
  },
  setNodePlace: (project, dice) => {
    const { outline } = project.bridge;
    const place = { y: (outline.kind === 'drawn' ? outline.path.start.y : 0) + dice.within(1) };
    return (before) => setNodePlace(before, 0, place);
  },
  roundCorner: (project, dice) => {
    const [index, radius] = [node(project, dice), 0.3 + 3 * dice.share()];
    return (before) => roundCorner(before, index, radius);
  },
  scaleOutline: (_, dice) => {
    const size = { length: 120 + 60 * dice.share(), proportional: dice.below(2) === 0 };
    return (before) => scaleOutline(before, size);
  },
  setJoin: (project, dice) => {
    const [index, join] = [node(project, dice), dice.of(['corner', 'smooth'] as const) ?? 'smooth'];
    return (before) => setJoin(before, index, join);
  },
  setRadius: (project, dice) => {
    const [segment, radius] = [node(project, dice), 2 + 120 * dice.share()];
    return (before) => setRadius(before, segment, radius);
  },
  setSegmentKind: (project, dice) => {
    const [segment, kind] = [node(project, dice), dice.of(['line', 'arc', 'curve', 'curve'] as const) ?? 'curve'];
    return (before) => setSegmentKind(before, segment, kind, kind === 'arc' ? { size: { sagitta: 0.4 } } : undefined);
  },
  takeOutline: (_, dice) => {
    const [length, width] = [100 + 60 * dice.share(), 24 + 16 * dice.share()];
    return (before) => takeOutline(before, rectanglePath(dice.share() * 50, 20, length, width));
  },
  chooseSheet: (_, dice) => {
    const [id, wanted] = [dice.of(['tape-down', 'window', 'inside-caul']) ?? '', dice.below(2) === 0];
    return (before) => chooseSheet(before, id, wanted);
  },
  chooseRepair: yesNo(chooseRepair),
  addFormerHole: plain(addFormerHole),
  chooseFormerDatum: (_, dice) => {
    const of = dice.of(['holes', 'slot'] as const) ?? 'slot';
    const from = dice.of(['front', 'nut'] as const) ?? 'nut';
    return (before) => chooseFormerDatum(before, of, from);
  },
  chooseFormerHoles: (_, dice) => {
    const wanted = dice.of(['row', 'each', 'each', 'none'] as const) ?? 'row';
    return (before) => chooseFormerHoles(before, wanted);
  },
  chooseFormerShape: (_, dice) => {
    const shape = dice.of(SHAPES) ?? 'belly';
    return (before) => chooseFormerShape(before, shape);
  },
  chooseFormerSlot: yesNo(chooseFormerSlot),
  removeFormerHole: (project, dice) => {
    const holes = project.repair?.holes;
    const id = holes?.kind === 'each' ? (dice.of(holes.each)?.id ?? 'none') : 'none';
    return (before) => removeFormerHole(before, id);
  },
  takeFormerModel: (_, dice) => {
    const model = (dice.of(KINDS) ?? KINDS[0])?.make('model', WHEN);
    return (before) => takeFormerModel(before, model ?? before);
  },
  takeFormerOutline: (_, dice) => {
    const path = rectanglePath(0, 0, 120 + 40 * dice.share(), 25);
    return (before) => takeFormerOutline(before, path);
  },
  chooseSole: yesNo(chooseSole),
  setGlueField: (_, dice) => {
    const field = dice.of(GLUE_FIELDS) ?? GLUE_FIELDS[0];
    if (field === undefined) throw new Error('There are no fields of glue.');
    const value = valueFor(field, dice);
    return (before) => setGlueField(before, field, value);
  },
  setClamps: (_, dice) => {
    const places = Array.from({ length: dice.below(5) }, () => ({ x: dice.within(70), y: 15 + dice.within(10) }));
    const clamps = dice.below(4) === 0 ? null : places;
    return (before) => setClamps(before, clamps);
  },
  chooseGrain: (_, dice) => {
    const piece = dice.of(['top', 'bridge'] as const) ?? 'top';
    const wood = dice.of(GRAIN_COEFFICIENTS)?.id ?? '';
    return (before) => chooseGrain(before, piece, wood);
  },
  tickStep: (project, dice) => {
    const id = dice.of(runSteps(runCase(project, 2)))?.id ?? '';
    const at = dice.below(4) === 0 ? null : WHEN;
    return (before) => tickStep(before, id, at);
  },
  addStringUp: (project, dice) => {
    const id = `u${dice.below(200)}`;
    const stood = { [stringId(project, dice)]: dice.within(5) };
    return (before) => addStringUp(before, { id, at: WHEN, crown: 'straight', predicted: stood, stood });
  },
  removeStringUp: (project, dice) => {
    const id = dice.below(3) === 0 ? stringUpId(project, dice) : 'none';
    return (before) => removeStringUp(before, id);
  },
  readCents: (project, dice) => {
    const [id, string, fret] = [stringUpId(project, dice), stringId(project, dice), 1 + dice.below(25)];
    const cents = dice.below(4) === 0 ? null : dice.within(110);
    return (before) => readCents(before, { id, string, fret, cents });
  },
  changeStringUp: (project, dice) => {
    const id = stringUpId(project, dice);
    const change =
      dice.of([
        { stage: 'season' },
        { tuner: 21 * dice.share() },
        { action: { treble: dice.below(3) === 0 ? null : 16 * dice.share(), bass: null } },
        { relief: dice.within(2) },
        { humidity: 110 * dice.share() },
        { meter: `meter ${dice.below(9)}`, note: `words ${dice.below(9)}` },
        { crown: 'shaped', stood: { [stringId(project, dice)]: dice.within(5) } },
      ] as const) ?? {};
    return (before) => changeStringUp(before, id, change);
  },
  takeLearned: (project, dice) => {
    const byString = { [stringId(project, dice)]: dice.within(1.5) };
    const learned = dice.below(3) === 0 ? null : { byString, builds: 1 + dice.below(30), accepted: WHEN };
    return (before) => takeLearned(before, learned);
  },
  takeReading: (_, dice) => {
    const reading = {
      id: `reading${dice.below(1_000_000)}`,
      line: dice.of(['twelfth-slot-treble', 'margin-bass', 'pair:twelfth-centre:front-treble']) ?? 'stick-bass',
      value: 300 + dice.within(30),
      tool: 'rule',
      sigma: 0.25,
    };
    const begin = toBegin(dice);
    return (before) => takeReading(before, reading, begin);
  },
  beginRound: (_, dice) => {
    const round = toBegin(dice);
    return (before) => beginRound(before, round);
  },
  acceptRound: (project, dice) => {
    const [id, accepted] = [roundId(project, dice), dice.below(2) === 0];
    return (before) => acceptRound(before, id, accepted);
  },
  removeRound: (project, dice) => {
    const id = roundId(project, dice);
    return (before) => removeRound(before, id);
  },
  removeReading: (project, dice) => {
    const id = roundId(project, dice);
    const round = project.build?.rounds.find((each) => each.id === id);
    const reading = dice.of(round?.readings.map((each) => each.id) ?? []) ?? 'none';
    return (before) => removeReading(before, id, reading);
  },
  chooseDrop: (_, dice) => {
    const by = dice.of(['top', 'rule'] as const) ?? 'top';
    const drop = dice.below(4) === 0 ? null : { by, angle: dice.within(0.1), height: 5 + Math.abs(dice.within(10)) };
    return (before) => chooseDrop(before, drop);
  },
  chooseTool: (project, dice) => {
    const [id, sigma] = [roundId(project, dice), 0.05 + Math.abs(dice.within(0.3))];
    return (before) => chooseTool(before, id, 'margin-bass', { tool: 'calliper', sigma });
  },
  takeTuned: (project, dice) => {
    const across = project.strings.map((_, index) => 27 - 54 * (index / Math.max(1, project.strings.length - 1)));
    const found = { treble: 1 + dice.within(2), bass: 3 + dice.within(2), across };
    return (before) => takeTuned(before, found);
  },
  chooseRebate: yesNo(chooseRebate),
  beginInstrument: plain(beginInstrument),
  addWood: (_, dice) => {
    const part = dice.of(['top', 'bridge', 'plate']) ?? 'top';
    return (before) => addWood(before, part);
  },
  removeWood: (project, dice) => {
    const id = dice.of(project.build?.woods.map((wood) => wood.id) ?? []) ?? 'none';
    return (before) => removeWood(before, id);
  },
  addPicture: (_, dice) => {
    const id = `photo${dice.below(30)}`;
    return (before) => addPicture(before, id);
  },
  removePicture: (project, dice) => {
    // Seldom, so that there are two to change places.
    const id = (dice.below(4) === 0 ? dice.of(project.about.pictures) : null) ?? 'none';
    return (before) => removePicture(before, id);
  },
  movePicture: (project, dice) => {
    const [id, by] = [dice.of(project.about.pictures) ?? 'none', dice.of([-1, 1] as const) ?? 1];
    return (before) => movePicture(before, id, by);
  },
  restoreVersion: (project, dice) => {
    const kind = dice.of(KINDS) ?? KINDS[0];
    const version = kind?.make(dice.below(4) === 0 ? 'another' : project.id, WHEN) ?? project;
    return (before) => restoreVersion(before, version);
  },
};

/** Files that are parts of other commands, and run through their rows. */
export const PARTS_OF_COMMANDS: readonly string[] = [
  'braceList',
  'editOutline',
  'freePlaces',
  'alikeByShape',
  'beginGroup',
  'changeRound',
  'keepNodeAnchors',
  'moveOther',
  'movePin',
  'newPlaces',
  'numberCourses',
  'otherSideName',
  'placeInFootprint',
  'plateUnderPins',
  'seatOutline',
  'takeBody',
  'takeRepair',
  'withBody',
  'withBuild',
  'withRepair',
  'withWoods',
  'withStringUp',
];

/** Files that only make the words of a label. */
export const LABEL_FILES: readonly string[] = ['outlineLabel', 'partsInWords'];
