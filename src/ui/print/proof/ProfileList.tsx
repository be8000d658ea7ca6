import { readWords } from '../../../core/sheets/correctionWords';
import type { PrinterProfile } from '../../../core/sheets/proof/printerProfile';
import type { Bench } from '../../../store/bench/createBench';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useBenchState } from './useBench';

interface ProfileListProps {
  readonly bench: Bench;
  /** A paper's name by its id. */
  readonly paperName: (id: string) => string;
}

/** The factors that this device keeps, to be renamed and deleted. */
export function ProfileList({ bench, paperName }: ProfileListProps) {
  const { profiles } = useBenchState(bench);
  if (profiles.length === 0) return <p className="quiet">No printer is kept yet.</p>;
  return (
    <ul className="plain profile-list" aria-label="Printers">
      {profiles.map((profile) => (
        <li key={profile.id}>
          <ProfileRow bench={bench} profile={profile} paper={paperName(profile.paper)} />
        </li>
      ))}
    </ul>
  );
}

interface ProfileRowProps {
  readonly bench: Bench;
  readonly profile: PrinterProfile;
  readonly paper: string;
}

function ProfileRow({ bench, profile, paper }: ProfileRowProps) {
  const { actions } = useServices().store;
  const { id, printer, factorX, factorY } = profile;
  return (
    <>
      <TextBox
        label={`Printer, ${paper}`}
        path={`proof.profile.${id}`}
        shown={printer}
        unit=""
        about={`The printer that these factors belong to, on ${paper}.`}
        decimal={false}
        note={`× ${factorX.toFixed(4)} short side, × ${factorY.toFixed(4)} long side, read ${readWords(profile)}`}
        take={(text) => {
          if (text === printer) return null;
          const renamed = bench.rename(id, text);
          return renamed.ok ? null : (renamed.issues[0]?.message ?? null);
        }}
      />
      <button
        type="button"
        aria-label={`Delete ${printer}, ${paper}`}
        onClick={() => {
          bench.remove(id);
          actions.say(`Deleted the factors of ${printer}, ${paper}`);
        }}
      >
        Delete
      </button>
    </>
  );
}
