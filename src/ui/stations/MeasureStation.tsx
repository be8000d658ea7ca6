import { FIRST_FIELDS } from '../../core/document/firstFields';
import { FieldGroup } from '../fields/FieldGroup';
import { FieldPanel } from '../fields/FieldPanel';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { Sources } from '../fields/Sources';
import { lazyPanel } from '../lazyPanels';
import { useStore } from '../useStore';
import { BoardFields } from './BoardFields';
import { CompensationFields } from './CompensationFields';
import { GroupIndex } from './GroupIndex';
import { HeightFields } from './HeightFields';
import { ScaleFields } from './ScaleFields';
import { StringsFields } from './StringsFields';
import { WorthFields } from './WorthFields';

const AuditPanel = lazyPanel('AuditPanel');

/** What the maker measured, what the strings are to do, and how far the answer can be trusted. */
export function MeasureStation() {
  const audited = useStore((state) => state.project.audit.treble !== null || state.project.audit.bass !== null);
  return (
    <FieldPanel>
      <GroupIndex />
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
