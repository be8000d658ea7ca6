import { useMemo } from 'react';
import { drawPlace } from '../../core/drawing/place/drawPlace';
import { readLineAt } from '../../core/placement/reading/readLines';
import { Picture } from '../measure/Picture';
import { useStore } from '../useStore';
import { Answer } from './reading/Answer';
import { useInHand } from './reading/inHand';
import { Rounds } from './reading/Rounds';
import { useAnswer, usePlace } from './reading/usePlace';
import './place.css';

/** What the readings say, and where to read. */
export function PlaceView() {
  const place = usePlace();
  const hand = useStore((state) => state.project.instrument.hand);
  const { line } = useInHand();
  const shown = place?.round ?? null;
  const answer = useAnswer(place, shown);
  const plot = useMemo(() => {
    if (place === null) return null;
    const { read, lines, front } = place;
    return drawPlace({
      read,
      numbered: front.map((each, index) => ({ number: index + 1, line: each })),
      inHand: line === null ? null : readLineAt(read, lines, line),
      sits: answer?.ok && answer.value.fit.unseen.length < 3 ? answer.value.fit.pose : null,
      hand,
    });
  }, [place, answer, hand, line]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what is longer than the view is scrolled by keys
    <section className="pages place-view" aria-label="Place" tabIndex={0}>
      <div aria-live="polite">
        {answer === null ? (
          <p className="quiet">Type the first reading: the answer grows with each.</p>
        ) : answer.ok ? (
          <Answer answer={answer.value} />
        ) : (
          <p className="field-wrong">{answer.issues[0]?.message}</p>
        )}
      </div>
      <Picture plot={plot} />
      {place !== null && <Rounds place={place} />}
    </section>
  );
}
