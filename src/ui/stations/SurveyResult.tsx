import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { findingWords, surveyDoubtWords } from './surveyWords';

/** What the readings show: the true scale and the nut offset, how sure, and which reading or fret does not belong. */
export function SurveyResult() {
  const survey = useStore((state) => state.derived.survey);
  const readings = useStore((state) => state.project.instrument.scale.readings);
  const { bare, withUnit, signed } = useLengths();
  if (survey === null) return null;
  if (!survey.ok) return <p className="field-caution">{survey.issues[0]?.message}</p>;
  const { scaleLength, nutOffset, doubt, findings, cleared } = survey.value;
  const offset = nutOffset.plusMinus;
  return (
    <div className="answer">
      <p>
        True scale{' '}
        <strong>
          {bare(scaleLength.value)} ± {withUnit(scaleLength.plusMinus)}
        </strong>
      </p>
      {offset !== null && (
        <p>
          Nut offset{' '}
          <strong>
            {signed(nutOffset.value)} ± {withUnit(offset)}
          </strong>
          {Math.abs(nutOffset.value) <= offset
            ? ': none to speak of.'
            : `: the nut stands ${nutOffset.value < 0 ? 'nearer' : 'farther from'} the bridge than the frets were laid out for.`}
        </p>
      )}
      <p className="quiet">{surveyDoubtWords(doubt, withUnit)}</p>
      {findings.map((finding) => {
        const words = findingWords(finding, readings, withUnit);
        return (
          <p key={words} className="field-caution">
            {words}
          </p>
        );
      })}
      {cleared !== null && (
        <p className="quiet">
          Left out, the scale would read {bare(cleared.scaleLength.value)} ± {withUnit(cleared.scaleLength.plusMinus)}.
          Until then every reading counts.
        </p>
      )}
    </div>
  );
}
