import { useMemo } from 'react';
import type { Result } from '../../../core/result';
import type { MadeSheets } from '../../../core/sheets/makeSheets';
import { paperOf, readPrintSettings } from '../../../core/sheets/printSettings';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';
import { useStore } from '../../useStore';
import { CorrectionRow } from './CorrectionRow';
import { ProfileList } from './ProfileList';
import { Proof } from './Proof';
import { useBench, useBenchState } from './useBench';
import './proof.css';

const SQUARE = 'calibration-square';

interface ProofFieldsProps {
  readonly sheet: Result<MadeSheets>;
}

/** Whether a print is true, by what a rule says on its long lines, and what to print with from now on. */
export function ProofFields({ sheet }: ProofFieldsProps) {
  const bench = useBench();
  const device = useStore((state) => state.device);
  const settings = useMemo(() => readPrintSettings(device.print), [device.print]);
  const paper = paperOf(settings, device.paper);
  const { profiles, chosen } = useBenchState(bench);
  const forPaper = profiles.filter((each) => each.paper === paper.id);
  const [page] = sheet.ok ? sheet.value.document.pages : [];
  const squared = sheet.ok && sheet.value.document.pages.some(({ items }) => items.some(({ id }) => id === SQUARE));
  return (
    <FieldGroup
      id="print-proof"
      title="Print proof"
      hint="Lay a rule along the long lines of the print, tick to tick, and type what it says."
    >
      {page !== undefined && (
        <Proof bench={bench} page={page} paper={paper} squared={squared} profiles={forPaper} chosen={chosen} />
      )}
      {forPaper.length > 0 && (
        <CorrectionRow
          label="Print with"
          about="Every page that you print from now on is corrected by it, and says so. It counts for this paper only."
          profiles={forPaper}
          value={chosen ?? ''}
          choose={(id) => bench.choose(id === '' ? null : id)}
        />
      )}
      <More summary="Printers kept on this device">
        <ProfileList bench={bench} paperName={(id) => paperOf(settings, id).name} />
      </More>
    </FieldGroup>
  );
}
