import type { PlaceRound } from '../../../core/document/buildTypes';
import { placeAnswer } from '../../../core/placement/reading/placeAnswer';
import { acceptRound } from '../../../store/commands/place/acceptRound';
import { removeRound } from '../../../store/commands/place/removeRound';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { amountOf, answerHeading, sideOf } from './answerWords';
import { takeInHand } from './inHand';
import { stageWords } from './stageWords';
import type { Place } from './usePlace';

/** Every time that the place was read, what it came to, the latest first. */
export function Rounds({ place }: { readonly place: Place }) {
  const rounds = place.read.project.build?.rounds ?? [];
  if (rounds.length === 0) return null;
  return (
    <section className="place-kept" aria-labelledby="rounds-title">
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
  const { style } = useLengths();
  const answer = placeAnswer(place.read, place.lines, round.readings, place.sigmaOf);
  const off = answer.ok ? answer.value.freedoms.filter(({ verdict }) => verdict !== 'unseen') : [];
  const told = off.map((each) => `${amountOf(each.freedom, each.off, style)} ${sideOf(each)}`).join(', ');
  const when = `${round.at.slice(0, 10)} ${round.at.slice(11, 16)} UTC`;
  const name = `the round ${stageWords(round.stage)} of ${when}`;
  const inHand = place.round?.id === round.id;
  const accept = (accepted: boolean): void => {
    takeInHand(accepted ? { round: null } : { round: round.id, stage: round.stage });
    actions.change(accepted ? 'Place accepted' : 'Round reopened', (project) =>
      acceptRound(project, round.id, accepted),
    );
  };
  return (
    <li data-held={inHand ? '' : undefined}>
      <p>
        <strong>{stageWords(round.stage)}</strong>, {when}, {round.readings.length} readings
        {inHand ? ', in hand' : ''}
        {round.accepted ? '. Accepted.' : '.'}
      </p>
      <p>
        {answer.ok ? `${answerHeading(answer.value)}. ${told === '' ? '' : `Off by ${told}.`}` : 'Nothing to tell yet.'}
      </p>
      <div className="buttons">
        {round.accepted ? (
          <button type="button" aria-label={`Reopen ${name}`} onClick={() => accept(false)}>
            Reopen
          </button>
        ) : (
          <button type="button" aria-label={`Accept this place, ${name}`} onClick={() => accept(true)}>
            Accept this place
          </button>
        )}
        {!inHand && !round.accepted && (
          <button
            type="button"
            aria-label={`Go on with ${name}`}
            onClick={() => takeInHand({ round: round.id, stage: round.stage })}
          >
            Go on with it
          </button>
        )}
        <button
          type="button"
          aria-label={`Delete ${name}`}
          onClick={() => actions.change('Round deleted', (project) => removeRound(project, round.id))}
        >
          Delete
        </button>
      </div>
    </li>
  );
}
