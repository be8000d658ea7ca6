import type { PlaceRound } from '../../../core/document/buildTypes';
import { placeAnswer } from '../../../core/placement/reading/placeAnswer';
import { acceptRound } from '../../../store/commands/place/acceptRound';
import { removeRound } from '../../../store/commands/place/removeRound';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { stageWords } from './stageWords';
import type { Place } from './usePlace';

/** Every time that the place was read, what it came to, the latest first. */
export function Rounds({ place }: { readonly place: Place }) {
  const rounds = place.read.project.build?.rounds ?? [];
  if (rounds.length === 0) return null;
  return (
    <section aria-labelledby="rounds-title">
      <h2 id="rounds-title">Rounds kept</h2>
      <ol className="place-rounds" reversed>
        {[...rounds].reverse().map((round) => (
          <RoundRow key={round.id} place={place} round={round} />
        ))}
      </ol>
    </section>
  );
}

function RoundRow({ place, round }: { readonly place: Place; readonly round: PlaceRound }) {
  const { actions } = useServices().store;
  const { withUnit } = useLengths();
  const answer = placeAnswer(place.read, place.lines, round.readings, place.sigmaOf);
  const told = answer.ok
    ? answer.value.freedoms
        .filter(({ verdict }) => verdict !== 'unseen')
        .map(({ freedom, off }) => {
          const size =
            freedom === 'angle' ? `${((Math.abs(off) * 180) / Math.PI).toFixed(2)}°` : withUnit(Math.abs(off));
          if (freedom === 'x') return `${size} to the ${off < 0 ? 'bass' : 'treble'}`;
          if (freedom === 'y') return `${size} toward the ${off < 0 ? 'nut' : 'tail'}`;
          return `turned ${size}, treble wing toward the ${off < 0 ? 'nut' : 'tail'}`;
        })
        .join(', ')
    : 'no answer';
  const when = `${round.at.slice(0, 10)} ${round.at.slice(11, 16)} UTC`;
  return (
    <li>
      <p>
        <strong>{stageWords(round.stage)}</strong>, {when}, {round.readings.length} readings: {told}
        {round.accepted ? '. Accepted.' : '.'}
      </p>
      <div className="buttons">
        <button
          type="button"
          onClick={() =>
            actions.change(round.accepted ? 'Place not accepted after all' : 'Place accepted', (project) =>
              acceptRound(project, round.id, !round.accepted),
            )
          }
        >
          {round.accepted ? 'Take back' : 'Accept this place'}
        </button>
        <button
          type="button"
          onClick={() => actions.change('Round deleted', (project) => removeRound(project, round.id))}
          aria-label={`Delete the round ${stageWords(round.stage)} of ${when}`}
        >
          Delete
        </button>
      </div>
    </li>
  );
}
