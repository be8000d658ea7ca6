import { slotSlope } from '../../bridge/slotCuts';
import type { Sole } from '../../document/soleTypes';
import { handedItem } from '../../drawing/handed';
import { topProfile } from '../../drawing/sideView/lengthProfile';
import { at, sideLine, sideShape, sideText } from '../../drawing/sideView/sideItems';
import { sideLength } from '../../drawing/sideView/sideLength';
import type { Item } from '../../drawing/types';
import type { SoleFit } from '../../height/sole/soleTypes';
import { soleWords } from '../../height/sole/soleWords';
import { failed, ok, type Result } from '../../result';
import { showLength } from '../../units/showLength';
import { partOfItems } from './items/partOfItems';
import { wantSole } from './items/wantSole';
import { withNotes } from './items/withNotes';
import type { SheetContext, SheetKind, SheetPart } from './types';

/** How high the card stands over the highest place of its foot, mm. */
const TALL = 24;

/** A card whose foot is the top under the bridge, seen from the tail: it stands there without light. Right hand. */
const soleCard = (sole: Sole, fit: SoleFit): readonly Item[] => {
  const foot = topProfile(sole, fit, 0);
  const [first, last] = [foot[0] ?? at(0, 0), foot.at(-1) ?? at(0, 0)];
  const level = Math.max(...foot.map(({ y }) => 0 - y)) + TALL;
  const { bassWing, trebleWing } = fit.places;
  const mark = (id: string, x: number, role: 'centreline' | 'mark', high: number): Item => {
    const under = foot.reduce((best, each) => (Math.abs(each.x - x) < Math.abs(best.x - x) ? each : best), first);
    return sideLine(id, 'sole card', role, at(x, 0 - under.y), at(x, 0 - under.y + high));
  };
  return [
    sideShape('card', 'sole card', 'outline', ...foot, at(last.x, level), at(first.x, level)),
    mark('centre', 0, 'centreline', 14),
    mark('wing-bass', bassWing, 'mark', 5),
    mark('wing-treble', trebleWing, 'mark', 5),
    sideText('name', 'sole card', 'heading', at(0, level - 4), 'SOLE CARD: this foot stands on the top', 'middle'),
    sideText('bass', 'sole card', 'heading', at(first.x + 3, level - 11), 'BASS', 'start'),
    sideText('treble', 'sole card', 'heading', at(last.x - 3, level - 11), 'TREBLE', 'end'),
  ];
};

/** The sole on the top at true size, and a card of the shape that the sole is to have. Codes: sheet.noSole, those of the sole. */
const make = ({ project, derived, around, style }: SheetContext): Result<readonly SheetPart[]> => {
  const { bridge, height, instrument } = project;
  const { hand } = instrument;
  if (!derived.slot.ok) return failed(derived.issues);
  const fit = around?.side.fit ?? null;
  const { sole } = bridge;
  if (sole === null || fit === null) return wantSole();
  if (!fit.ok) return fit;
  const blank = around?.side.blank ?? null;
  const picture = sideLength(
    {
      bridge,
      height,
      fit: fit.value,
      blank: blank?.ok ? blank.value : null,
      slope: slotSlope(derived.slot.value),
      hand,
    },
    style,
  );
  const show = (mm: number): string => showLength(mm, style);
  const { after } = fit.value;
  const dome = sole.top.across;
  const rest = [
    `Once fitted: ${show(after.thickness)} thick at the slot, ${show(after.woodUnder)} of wood under it.`,
    'Sand on the top itself, over paper stuck to it where the bridge will lie, along the strings; or on a block shaped to the card. Better a hair of gap at the centre than at the wings.',
    'Dust: extraction and a respirator; some woods make skin and lungs allergic.',
  ];
  return ok([
    ...(picture === null
      ? []
      : [
          partOfItems(
            'sole-profile',
            'Sole and top',
            withNotes(picture.items, `SOLE, seen from the tail, true size · ${hand} hand`, [
              soleWords(fit.value).join(' '),
              ...rest,
            ]),
          ),
        ]),
    partOfItems(
      'sole-card',
      'Sole card',
      withNotes(
        soleCard(sole, fit.value).map((item) => handedItem(hand, item)),
        `SOLE CARD, seen from the tail, TREBLE and BASS as marked · ${hand} hand`,
        [
          `Paste on stiff card or thin ply, cut the foot to the outside of the line. ${sole.top.from === 'gaps' ? 'The foot follows the feeler-gauge readings.' : dome === null ? 'The top was entered flat.' : `The foot is the dome of radius ${show(dome)}.`}`,
          'First stand it on the top where the bridge will lie: light beneath means that the top was entered wrong. Then hold it beside the sole: its foot is what the sole has to become. Short marks: where the wings begin.',
        ],
      ),
      false,
    ),
  ]);
};

/** The sole. */
export const soleProfile: SheetKind = {
  id: 'sole-profile',
  name: 'Sole and top, with a card to fit by',
  about: 'The sole on the domed top at true size, what to sand, and a card of the shape that the sole is to have.',
  make,
};
