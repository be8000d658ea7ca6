import { NINETEEN_OF_TWENTY } from '../plusMinus';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { signedCents } from '../withSign';
import { middleOf } from './middleOf';

/** What the string model says: by itself, or beside the rule or the maker's own figures with the difference. */
export function RuleAndModel() {
  const by = useStore((state) => state.project.compensation.by);
  const strings = useStore((state) => state.project.strings);
  const { saddle, models, placement } = useStore((state) => state.derived);
  const { bare, withUnit } = useLengths();
  if (!models.ok) return <p className="field-caution">The string model cannot answer. {models.issues[0]?.message}</p>;
  if (!saddle.ok || !placement.ok) return null;
  const setbacks = models.value.map((model) => model.saddle);
  const range = `${bare(Math.min(...setbacks))} to ${withUnit(Math.max(...setbacks))}`;
  const doubts = models.value.map(({ sigma }) => NINETEEN_OF_TWENTY * sigma);
  if (by === 'strings')
    return (
      <p className="answer">
        The strings want <strong>{range}</strong>, each ± {bare(Math.min(...doubts))} to {withUnit(Math.max(...doubts))}
        .
      </p>
    );
  const middle = middleOf(saddle.value, models.value);
  const apart = middle.line - middle.model;
  const steel = strings[0]?.elastic.kind === 'core';
  return (
    <div className="answer">
      <p>
        The string model says <strong>{range}</strong>; laid straight, {withUnit(middle.model)} at mid-saddle.{' '}
        {by === 'rule' ? 'The rule' : 'Your line'} stands {withUnit(Math.abs(apart))}{' '}
        {apart < 0 ? 'nearer the nut' : 'farther back'} there, {signedCents(-apart * placement.value.centsPerMm)} cents.
      </p>
      <p className="quiet">{steel ? STEEL : NYLON}</p>
    </div>
  );
}

const STEEL =
  'Makers’ rules for steel run from 2.8 mm (1/16 and 5/32 in at the outer strings) to 3.8 mm (0.15 in) at mid-saddle, which is about 1 mm longer than the model for light strings. Why is not known: such rules seldom say whether they reach to the slot or to the break point, nor for which strings and action.';
const NYLON =
  'For nylon the model reproduces published tables; the trade’s 2.0 mm to the slot front on 650 lies within what it says for a fixed nut.';
