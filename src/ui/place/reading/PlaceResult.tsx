import { useMemo } from 'react';
import { drawPlace } from '../../../core/drawing/place/drawPlace';
import { readLineAt } from '../../../core/placement/reading/readLines';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { Answer } from './Answer';
import { AnswerTables } from './AnswerTables';
import { useInHand } from './inHand';
import { ReadPicture } from './ReadPicture';
import { Rounds } from './Rounds';
import { useAnswer, usePlace } from './usePlace';

/** What the readings say, and where to read. */
export function PlaceResult() {
  const place = usePlace();
  const { style } = useLengths();
  const hand = useStore((state) => state.project.instrument.hand);
  const { line } = useInHand();
  const answer = useAnswer(place, place?.told ?? null);
  const picture = useMemo(() => {
    if (place === null) return null;
    const { read, lines, front, round } = place;
    return drawPlace({
      read,
      numbered: front.map((each, index) => ({
        number: index + 1,
        line: each,
        read: round?.readings.some((reading) => reading.line === each.id) ?? false,
      })),
      inHand: line === null ? null : readLineAt(read, lines, line),
      sits: answer?.ok && answer.value.fit.unseen.length < 3 ? answer.value.fit.pose : null,
      hand,
      style,
    });
  }, [place, answer, hand, line, style]);
  return (
    <>
      <div aria-live="polite">
        {answer === null ? (
          <p className="place-answer quiet">Type the first reading: the answer grows with each.</p>
        ) : answer.ok ? (
          <Answer answer={answer.value} accepted={place?.told?.accepted ?? false} />
        ) : (
          <p className="field-wrong">{answer.issues[0]?.message}</p>
        )}
      </div>
      {picture !== null && <ReadPicture picture={picture} />}
      {answer?.ok && <AnswerTables answer={answer.value} />}
      {place !== null && <Rounds place={place} />}
    </>
  );
}
