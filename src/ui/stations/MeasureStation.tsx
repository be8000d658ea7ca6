import { FIRST_FIELDS } from '../../core/document/firstFields';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldPanel } from '../fields/FieldPanel';
import { FieldRow } from '../fields/FieldRow';
import { GroupIndex } from '../fields/GroupIndex';
import { More } from '../fields/More';
import { Sources } from '../fields/Sources';
import { lazyPanel } from '../lazyPanels';
import { useStore } from '../useStore';
import { BoardFields } from './BoardFields';
import { CompensationFields } from './CompensationFields';
import { HeightFields } from './HeightFields';
import { ScaleFields } from './ScaleFields';
import { StringsFields } from './StringsFields';
import { WorthFields } from './WorthFields';

const AuditPanel = lazyPanel('AuditPanel');

const GROUPS = [
  { id: 'group-heights', name: 'Heights' },
  { id: 'group-scale', name: 'Scale' },
  { id: 'group-board', name: 'Board' },
  { id: 'group-strings', name: 'Strings' },
  { id: 'group-compensation', name: 'Compensation' },
  { id: 'group-worth', name: 'Worth' },
  { id: 'group-audit', name: 'Repair' },
] as const;

/** What the maker measured, what the strings are to do, and how far the answer can be trusted. */
export function MeasureStation() {
  const audited = useStore((state) => state.project.audit.treble !== null || state.project.audit.bass !== null);
  return (
    <FieldPanel>
      <GroupIndex groups={GROUPS} />
      <FieldGroup title="Instrument">
        <FieldRow path="about.name" />
      </FieldGroup>
      <HeightFields />
      <ScaleFields />
      <BoardFields />
      <StringsFields />
      <CompensationFields />
      <WorthFields />
      <FieldGroup
        id="group-audit"
        title="Bridge that is there"
        hint="For repair: what its saddle gives now against what the strings want."
      >
        <More summary="Read a bridge that is there" open={audited}>
          <AuditPanel />
        </More>
      </FieldGroup>
      <Sources fields={FIRST_FIELDS} />
    </FieldPanel>
  );
}
