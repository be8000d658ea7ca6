import { withFieldValue } from '../../document/fieldValue';
import type { Hand } from '../../document/hand';
import { INSTRUMENT_FIELDS } from '../../document/instrumentFields';
import type { Project } from '../../document/types';
import { validateField } from '../../document/validateField';
import { fail, failed, ok, type Result } from '../../result';
import type { LengthStyle } from '../../units/formatLength';
import { showLength } from '../../units/showLength';

/** What a set is made of: each model, in each hand, at each scale. */
export interface SetRequest {
  readonly models: readonly Project[];
  /** own: each model as it is. */
  readonly hands: 'own' | 'both';
  /** mm; none: each model at its own. */
  readonly scales: readonly number[];
}

/** One instrument of a set. */
export interface SetMember {
  /** Told apart from every other: "Wren 14, 650.0 mm, left hand". */
  readonly name: string;
  readonly project: Project;
}

/** More at a time would keep a browser busy for minutes. */
const MOST_MEMBERS = 500;

const SCALE = 'instrument.scale.entered';

const handsOf = (model: Project, hands: SetRequest['hands']): readonly Hand[] =>
  hands === 'own' ? [model.instrument.hand] : ['right', 'left'];

/**
 * Every instrument of a set: models in their order, each at the scales in theirs, right hand before left. Codes: set.empty (no
 * model), set.many (over 500 instruments), those of `validateField` for a scale.
 */
export const expandSet = (request: SetRequest, style: LengthStyle): Result<readonly SetMember[]> => {
  const { models, hands, scales } = request;
  if (models.length === 0) return fail('models', 'set.empty', 'Choose a model for the set.');
  const field = INSTRUMENT_FIELDS.find(({ path }) => path === SCALE);
  const wrong =
    field === undefined ? [] : scales.flatMap((scale) => validateField(field, scale, (mm) => showLength(mm, style)));
  if (wrong.length > 0) return failed(wrong);
  const count = models.length * Math.max(1, scales.length) * (hands === 'both' ? 2 : 1);
  if (count > MOST_MEMBERS)
    return fail(
      'models',
      'set.many',
      `That would be ${count} instruments: expected at most ${MOST_MEMBERS} at a time.`,
    );
  const members = models.flatMap((model) =>
    (scales.length === 0 ? [null] : scales).flatMap((scale) => {
      const scaled = scale === null ? model : withFieldValue(model, SCALE, scale);
      return handsOf(model, hands).map((hand): SetMember => {
        const told = [
          model.about.name.trim() || 'Unnamed',
          ...(scale === null ? [] : [showLength(scale, style)]),
          `${hand} hand`,
        ];
        return { name: told.join(', '), project: { ...scaled, instrument: { ...scaled.instrument, hand } } };
      });
    }),
  );
  return ok(apart(members));
};

/** Names that were there before get a number. */
const apart = (members: readonly SetMember[]): readonly SetMember[] => {
  const taken = new Set<string>();
  return members.map((member) => {
    let name = member.name;
    for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${member.name} (${number})`;
    taken.add(name.toLowerCase());
    return { ...member, name };
  });
};
