import { FIELDS } from '../../core/document/fieldTable';
import type { Locating } from '../../core/document/types';
import { showLength } from '../../core/units/showLength';
import { chooseSite } from '../../store/commands/chooseSite';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldRow } from '../fields/FieldRow';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { drillNote } from './drillNote';

const SITE = FIELDS.draw.find(({ path }) => path === 'bridge.locating.site');
const SITES = SITE?.kind === 'choice' ? SITE.choices : [];

/** How the diameter of a hole is written. */
const DIAMETER = { mm: { unit: 'mm', decimals: 2 }, in: { unit: 'in', decimals: 3 } } as const;

/** The small pins that register the bridge. */
export function LocatingFields() {
  const { actions } = useServices().store;
  const { site, drill, clearance } = useStore((state) => state.project.bridge.locating);
  const { style } = useLengths();
  const caul = drill + clearance;
  const choose = (value: string): void => {
    const chosen = SITES.find((each) => each.value === value);
    if (chosen === undefined) return;
    const label = `Locating pins in ${chosen.label}`;
    const issues = actions.change(label, (project) => chooseSite(project, value as Locating['site']));
    if (issues[0] !== undefined) actions.warn(issues[0].message);
  };
  return (
    <FieldGroup title="Locating pins" hint="Small pins that keep the bridge from creeping under the clamps.">
      <SelectRow
        label="Locating pins in"
        path="bridge.locating.site"
        about={SITE?.help ?? ''}
        value={site}
        choices={SITES}
        choose={choose}
      />
      {site === 'free' && (
        <>
          <FieldRow path="bridge.locating.points.treble.x" />
          <FieldRow path="bridge.locating.points.treble.y" />
          <FieldRow path="bridge.locating.points.bass.x" />
          <FieldRow path="bridge.locating.points.bass.y" />
        </>
      )}
      <FieldRow path="bridge.locating.drill" note={drillNote(drill, style.unit)} />
      <FieldRow
        path="bridge.locating.clearance"
        note={`Hole in the caul ${showLength(caul, DIAMETER[style.unit])}. ${drillNote(caul, style.unit)}`}
      />
    </FieldGroup>
  );
}
