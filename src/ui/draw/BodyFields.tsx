import { chooseBody } from '../../store/commands/body/chooseBody';
import { FieldGroup } from '../fields/FieldGroup';
import { useStore } from '../useStore';
import { BodyPanel } from './body/BodyPanel';
import { Tick } from './body/Tick';
import { useChange } from './repair/useChange';

/** What lies beneath and around the bridge. */
export function BodyFields() {
  const change = useChange();
  const body = useStore((state) => state.project.body);
  return (
    <FieldGroup title="Beneath and around">
      <Tick
        label="Check what lies beneath the top"
        on={body !== null}
        change={(on) =>
          change(on ? 'Beneath the top: checked' : 'Beneath the top: left out', (project) => chooseBody(project, on))
        }
      />
      {body !== null && <BodyPanel body={body} />}
    </FieldGroup>
  );
}
