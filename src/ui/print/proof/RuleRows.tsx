import { READING_RULES } from '../../../core/sheets/proof/readingRules';
import { MM_PER_INCH } from '../../../core/units/mmPerInch';
import type { Bench } from '../../../store/bench/createBench';
import { LengthBox } from '../../draw/outline/LengthBox';
import { SelectRow } from '../../fields/SelectRow';
import { useLengths } from '../../useLengths';
import { useBenchState } from './useBench';

const OWN_RULE = 'own';

/** What the print is read with, and how far that may be off. */
export function RuleRows({ bench }: { readonly bench: Bench }) {
  const { proof } = useBenchState(bench);
  const { style } = useLengths();
  const rule = READING_RULES.find(({ id }) => id === proof.rule);
  const shown = (mm: number): string =>
    style.unit === 'mm' ? `${mm.toFixed(2)} mm` : `${(mm / MM_PER_INCH).toFixed(4)} in`;
  return (
    <>
      <SelectRow
        label="Read with"
        value={proof.rule}
        choices={[
          ...READING_RULES.map(({ id, name }) => ({ value: id, label: name })),
          { value: OWN_RULE, label: 'a doubt of my own' },
        ]}
        choose={(chosen) => bench.setProof({ rule: chosen })}
      />
      {rule === undefined ? (
        <LengthBox
          path="proof.sigma"
          label="Doubt of one reading"
          help="How far one of your readings is off, in two of three: one sigma."
          value={proof.ownSigma}
          min={0.001}
          max={2}
          take={(mm) => {
            bench.setProof({ ownSigma: mm });
            return [];
          }}
        />
      ) : (
        <p className="field-note">
          Off by {shown(rule.sigma)} a reading, one sigma. Source: {rule.source}.
        </p>
      )}
    </>
  );
}
