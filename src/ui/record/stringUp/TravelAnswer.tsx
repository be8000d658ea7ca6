import { useMemo } from 'react';
import { auditLimitsInUse } from '../../../core/audit/auditLimitsInUse';
import { plotCrown } from '../../../core/drawing/plots/record/plotCrown';
import type { CrownMove } from '../../../core/learning/crownMoves';
import { saddleVerdict } from '../../../core/learning/saddleVerdict';
import { Picture } from '../../measure/Picture';
import { Verdict } from '../../measure/Verdict';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { signedCents } from '../../withSign';
import { beyondWords, moveWords, saddleVerdictWords } from './verdictWords';

const WEIGHT = { leave: 'good', shape: 'good', recut: 'look', move: 'wrong' } as const;

/** What the readings ask of the saddle: in a verdict, string by string, in words and as a picture of the crown. */
export function TravelAnswer({ moves }: { readonly moves: readonly CrownMove[] }) {
  const { saddle } = useStore(({ derived }) => derived);
  const { limits, bridge, instrument } = useStore(({ project }) => project);
  const { style, withUnit } = useLengths();
  const inUse = useMemo(() => auditLimitsInUse(limits), [limits]);
  const plot = useMemo(
    () =>
      saddle.ok && moves.length > 0
        ? plotCrown(moves, saddle.value.strings, bridge.slot.width, inUse.land.value, style, instrument.hand)
        : null,
    [saddle, moves, bridge.slot.width, inUse, style, instrument.hand],
  );
  if (!saddle.ok) return <p className="not-yet">The saddle’s place is not known yet: see the design checks.</p>;
  const verdict = saddleVerdict(moves, saddle.value, bridge.slot, inUse);
  if (verdict === null) return <p className="hint">Type what the tuner says for at least one string.</p>;
  const placeOf = (id: string): number => saddle.value.strings.findIndex((string) => string.id === id) + 1;
  const work = moves.flatMap((move) => moveWords(move, placeOf(move.id), withUnit) ?? []);
  return (
    <>
      <Verdict
        weight={WEIGHT[verdict.verdict]}
        words={saddleVerdictWords(verdict)}
        reasons={[
          {
            id: 'limit',
            words: `Up to ${inUse.leaveCents.value} cents at the 12th fret no one would file for.`,
            source: inUse.leaveCents.source,
          },
        ]}
      >
        {beyondWords(verdict, saddle.value.strings.length, withUnit).map((words) => (
          <p key={words}>{words}</p>
        ))}
      </Verdict>
      <TravelTable moves={moves} placeOf={placeOf} />
      {verdict.verdict !== 'leave' && work.length > 0 && (
        <>
          <p>
            {verdict.verdict === 'shape'
              ? 'Move the break points:'
              : 'As far as this crown goes, move the break points:'}
          </p>
          <ul className="plain" aria-label="What to file">
            {work.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
          <p className="hint">Filing takes a little off the top: read the action again. From practice, no source.</p>
        </>
      )}
      <Picture plot={plot} />
    </>
  );
}

interface TravelTableProps {
  readonly moves: readonly CrownMove[];
  readonly placeOf: (id: string) => number;
}

function TravelTable({ moves, placeOf }: TravelTableProps) {
  const { bare, signed, style } = useLengths();
  return (
    <table className="figures loose small-figures" aria-label="Saddle travel">
      <caption>
        Travel of each break point, {style.unit}: + away from the nut, ± from the tuner alone; from the front face,
        where it broke and where to file it to; cents then left at the 12th fret
      </caption>
      <thead>
        <tr>
          <th scope="col">String</th>
          <th scope="col">travel</th>
          <th scope="col">±</th>
          <th scope="col">now</th>
          <th scope="col">to</th>
          <th scope="col">left</th>
        </tr>
      </thead>
      <tbody>
        {moves.map(({ id, name, travel, doubt, from, to, leftCents }) => (
          <tr key={id}>
            <th scope="row">
              {placeOf(id)} {name}
            </th>
            <td>{signed(travel)}</td>
            <td>{bare(doubt)}</td>
            <td>{bare(from)}</td>
            <td>{bare(to)}</td>
            <td>{signedCents(leftCents)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
