import type { StringUp } from '../../../core/document/buildTypes';
import { plannedAt } from '../../../core/learning/plannedAt';
import { fretsRead } from '../../../core/learning/readingsOf';
import { useStore } from '../../useStore';
import { signedCents } from '../../withSign';

const OCTAVE = 12;
/** Cents on purpose that are worth a word. */
const WORTH = 0.3;

/** Where the plan leaves the 12th fret off on purpose, and nothing but the 12th was read. */
export function RangeHint({ stringUp }: { readonly stringUp: StringUp }) {
  const { by, fit } = useStore(({ project }) => project.compensation);
  const models = useStore(({ derived }) => derived.models);
  const read = fretsRead(stringUp);
  if (by !== 'strings' || fit.match !== 'range' || !models.ok || read.length !== 1 || read[0] !== OCTAVE) return null;
  const planned = plannedAt(models.value, OCTAVE);
  const most = planned.reduce((far, cents) => (Math.abs(cents) > Math.abs(far) ? cents : far), 0);
  if (Math.abs(most) < WORTH) return null;
  const string = planned.indexOf(most);
  return (
    <p className="hint">
      The plan serves frets {fit.firstFret} to {fit.lastFret} together and leaves the 12th off on purpose: string{' '}
      {string + 1} ({models.value[string]?.name}) by {signedCents(most)} cents. What you file by the 12th alone serves
      the 12th alone; read more frets to serve them all. What is learned takes this into account.
    </p>
  );
}
