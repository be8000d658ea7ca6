import type { Outcome } from '../../../core/learning/outcomeOf';
import { Tick } from '../../draw/body/Tick';
import { signedFine } from '../../draw/repair/fineLengths';
import { useLengths } from '../../useLengths';
import { dayWords } from '../whenWords';
import { outcomeName } from './learnedWords';

interface InstrumentTicksProps {
  readonly outcomes: readonly Outcome[];
  readonly names: readonly string[];
  readonly left: ReadonlySet<string>;
  readonly leave: (id: string, out: boolean) => void;
}

/** Each instrument with what was found of it, and whether it counts. */
export function InstrumentTicks({ outcomes, names, left, leave }: InstrumentTicksProps) {
  const { unit } = useLengths().style;
  return (
    <>
      <fieldset className="ticks" aria-label="Instruments that count">
        {outcomes.map((outcome) => (
          <Tick
            key={outcome.id}
            label={`${outcomeName(outcome)}, ${dayWords(outcome.at)}`}
            on={!left.has(outcome.id)}
            change={(on) => leave(outcome.id, !on)}
          />
        ))}
      </fieldset>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a keyboard reaches what does not fit by scrolling it */}
      <section className="wide-figures" aria-label="Figures by instrument" tabIndex={0}>
        <table className="figures loose small-figures" aria-label="Found less predicted by instrument">
          <caption>The same in figures: found less predicted, {unit}</caption>
          <thead>
            <tr>
              <th scope="col">Instrument</th>
              {names.map((name, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two strings may bear one name, and their order stays
                <th key={index} scope="col">
                  {index + 1} {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {outcomes.map((outcome) => (
              <tr key={outcome.id}>
                <th scope="row">
                  {outcomeName(outcome)}
                  {left.has(outcome.id) && <small> left out</small>}
                </th>
                {names.map((name, index) => {
                  const error = outcome.strings[index]?.error ?? null;
                  // biome-ignore lint/suspicious/noArrayIndexKey: two strings may bear one name, and their order stays
                  return <td key={`${name} ${index}`}>{error === null ? '–' : signedFine(error, unit)}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
