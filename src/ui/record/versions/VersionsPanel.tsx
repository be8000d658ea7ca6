import { useState } from 'react';
import type { Project } from '../../../core/document/types';
import type { VersionEntry } from '../../../core/ports';
import { restoreVersion } from '../../../store/commands/record/restoreVersion';
import { FieldGroup } from '../../fields/FieldGroup';
import { useServices } from '../../services';
import { useStore } from '../../useStore';
import { CompareDialog } from '../compare/CompareDialog';
import { momentWords } from '../whenWords';
import { NameState } from './NameState';
import { useDifferenceCounts } from './useDifferenceCounts';
import { useVersions } from './useVersions';
import './versions.css';

/** Shown before the maker asks for all. */
const FEW = 6;

const titleOf = ({ name, at }: VersionEntry): string => name ?? momentWords(at);

const differs = (count: number | undefined): string => {
  if (count === undefined) return '';
  if (count === 0) return 'as it is now';
  return count === 1 ? '1 thing differs from now' : `${count} things differ from now`;
};

/** Earlier states of the project in hand. */
export function VersionsPanel() {
  const { library, store } = useServices();
  const { actions } = store;
  const project = useStore((state) => state.project);
  const { versions, problem, load } = useVersions(project.id);
  const [all, setAll] = useState(false);
  const [compared, setCompared] = useState<VersionEntry | null>(null);
  const shown = (versions ?? []).slice(0, all ? undefined : FEW);
  const counts = useDifferenceCounts(project, shown);

  const read = async (version: VersionEntry): Promise<Project | null> => {
    const found = await (await library()).readVersion(project.id, version.id);
    if (found.ok) return found.value;
    actions.warn(`That version could not be read. ${found.issues[0]?.message ?? ''}`);
    return null;
  };
  const restore = async (version: VersionEntry): Promise<void> => {
    const earlier = await read(version);
    if (earlier === null) return;
    const issues = actions.change(`As it was: ${titleOf(version)}`, (now) => restoreVersion(now, earlier));
    if (issues.length > 0) actions.warn(issues.map(({ message }) => message).join(' '));
  };

  return (
    <FieldGroup
      id="versions"
      title="Versions"
      hint="The last 50 states are kept by themselves, those with a name for good."
    >
      <NameState named={load} />
      {problem !== null && <p className="field-caution">{problem}</p>}
      {versions?.length === 0 && <p className="quiet">None yet: the first one comes with the first change.</p>}
      {shown.length > 0 && (
        <ul className="versions" aria-label="Versions">
          {shown.map((version) => {
            const title = titleOf(version);
            return (
              <li key={version.id}>
                <p>
                  {version.name === null ? title : <strong>{title}</strong>}
                  {version.name !== null && <span className="quiet">{momentWords(version.at)}</span>}
                  <span className="quiet">{differs(counts.get(version.id))}</span>
                </p>
                <div className="buttons">
                  <button type="button" aria-label={`Compare ${title} with now`} onClick={() => setCompared(version)}>
                    Compare
                  </button>
                  <button type="button" aria-label={`Restore ${title}`} onClick={() => void restore(version)}>
                    Restore
                  </button>
                </div>
              </li>
            );
          })}
        </ul>
      )}
      {(versions?.length ?? 0) > FEW && (
        <button type="button" onClick={() => setAll(!all)}>
          {all ? 'Show the latest alone' : `Show all ${versions?.length}`}
        </button>
      )}
      {compared !== null && (
        <CompareDialog
          names={[titleOf(compared), 'Now']}
          read={async () => {
            const earlier = await read(compared);
            return earlier === null ? null : [earlier, project];
          }}
          closed={() => setCompared(null)}
        />
      )}
    </FieldGroup>
  );
}
