import { useMemo } from 'react';
import { mayKeepAnyway } from '../../../core/sheets/proof/mayKeepAnyway';
import type { PrinterProfile } from '../../../core/sheets/proof/printerProfile';
import { proofLines } from '../../../core/sheets/proof/proofLines';
import { proofPart } from '../../../core/sheets/proof/proofPart';
import { provePrint } from '../../../core/sheets/proof/provePrint';
import { READING_RULES } from '../../../core/sheets/proof/readingRules';
import type { Page, Paper } from '../../../core/sheets/types';
import type { Bench } from '../../../store/bench/createBench';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import { CorrectionRow } from './CorrectionRow';
import { KeepProfile } from './KeepProfile';
import { ProofAnswer } from './ProofAnswer';
import { ReadingBox } from './ReadingBox';
import { RuleRows } from './RuleRows';
import { useBenchState } from './useBench';

interface ProofProps {
  readonly bench: Bench;
  readonly page: Page;
  readonly paper: Paper;
  /** Whether the square stands on one of the pages. */
  readonly squared: boolean;
  /** Those for this paper, and the one that is printed with. */
  readonly profiles: readonly PrinterProfile[];
  readonly chosen: string | null;
}

/** The readings of the print in hand, and what they say of it. */
export function Proof({ bench, page, paper, squared, profiles, chosen }: ProofProps) {
  const { proof } = useBenchState(bench);
  const derived = useStore((state) => state.derived);
  const { unit } = useLengths().style;
  const part = useMemo(() => proofPart(derived, unit), [derived, unit]);
  const lines = proofLines(page, unit, paper.margin);
  const { across, along, down, up } = proof.lengths;
  const sigma = READING_RULES.find(({ id }) => id === proof.rule)?.sigma ?? proof.ownSigma;
  const diagonals = squared && down !== null && up !== null ? { down: down.mm, up: up.mm } : null;
  /** Readings of a print on another paper say nothing of this one. */
  const elsewhere = proof.paper !== null && proof.paper !== paper.id;
  const answer =
    across === null || along === null || elsewhere
      ? null
      : provePrint({ lines, across: across.mm, along: along.mm, diagonals, sigma, part });
  const carried = profiles.find(({ id }) => id === (proof.carried ?? chosen)) ?? null;
  const plausible = answer?.ok === true && (answer.value.verdict === 'true' || answer.value.verdict === 'correct');
  const against = answer?.ok === true && mayKeepAnyway(answer.value);
  return (
    <>
      {profiles.length > 0 && (
        <CorrectionRow
          label="The print in hand carries"
          about="As it says on the print itself: what is read is what that correction left."
          profiles={profiles}
          value={carried?.id ?? ''}
          choose={(id) => bench.setProof({ carried: id })}
        />
      )}
      <RuleRows bench={bench} />
      <ReadingBox bench={bench} paper={paper.id} name="across" label="Long line across" nominal={lines.across} />
      <ReadingBox bench={bench} paper={paper.id} name="along" label="Long line along" nominal={lines.along} />
      {squared ? (
        <>
          <ReadingBox
            bench={bench}
            paper={paper.id}
            name="down"
            label="Square, top left to bottom right"
            nominal={lines.diagonal}
          />
          <ReadingBox
            bench={bench}
            paper={paper.id}
            name="up"
            label="Square, bottom left to top right"
            nominal={lines.diagonal}
          />
        </>
      ) : (
        <p className="quiet">The square, which tells whether a print is square, stands on the tape-down template.</p>
      )}
      <div aria-live="polite">
        {elsewhere ? (
          <p className="field-caution">These readings are of a print on another paper: see what is said at Sheet.</p>
        ) : answer === null ? (
          <p className="quiet">Both long lines are needed for an answer; the diagonals make it whole.</p>
        ) : answer.ok ? (
          <ProofAnswer proof={answer.value} squared={diagonals !== null} carries={carried !== null} />
        ) : (
          <p className="field-wrong">{answer.issues[0]?.message}</p>
        )}
      </div>
      {(plausible || against) && (
        <KeepProfile
          key={`${carried?.id} ${against}`}
          against={against}
          bench={bench}
          proof={answer.value}
          page={page}
          paper={paper.id}
          carried={carried}
        />
      )}
    </>
  );
}
