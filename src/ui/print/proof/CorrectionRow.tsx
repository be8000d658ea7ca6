import { readWords } from '../../../core/sheets/correctionWords';
import type { PrinterProfile } from '../../../core/sheets/proof/printerProfile';
import { SelectRow } from '../../fields/SelectRow';

interface CorrectionRowProps {
  readonly label: string;
  readonly about: string;
  /** Those for the paper in hand. */
  readonly profiles: readonly PrinterProfile[];
  /** Id of a profile, '' for none. */
  readonly value: string;
  readonly choose: (id: string) => void;
}

/** A choice of no correction or one of the printers kept for this paper. */
export function CorrectionRow({ label, about, profiles, value, choose }: CorrectionRowProps) {
  return (
    <SelectRow
      label={label}
      about={about}
      value={profiles.some(({ id }) => id === value) ? value : ''}
      choices={[
        { value: '', label: 'no correction' },
        ...profiles.map((profile) => ({ value: profile.id, label: `${profile.printer}, read ${readWords(profile)}` })),
      ]}
      choose={choose}
    />
  );
}
