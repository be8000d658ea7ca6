import type { Drop } from '../../../core/document/buildTypes';
import { centsPerMm } from '../../../core/intonation/centsPerMm';
import { dropped } from '../../../core/placement/reading/dropped';
import { dropOf } from '../../../core/placement/reading/readCase';
import { parseLength } from '../../../core/units/parseLength';
import { chooseDrop } from '../../../store/commands/place/chooseDrop';
import { lengthText } from '../../../store/fieldText';
import { FieldGroup } from '../../fields/FieldGroup';
import { SelectRow } from '../../fields/SelectRow';
import { TextBox } from '../../fields/TextBox';
import { useServices } from '../../services';
import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';
import type { Place } from './usePlace';

/** How readings come down from the frets to the top, and what that does to them. */
export function DropFields({ place }: { readonly place: Place }) {
  const { actions } = useServices().store;
  const project = useStore((state) => state.project);
  const { style } = useLengths();
  const drop = dropOf(project);
  const set = (label: string, change: Partial<Drop>): string | null =>
    actions.change(label, (before) => chooseDrop(before, { ...dropOf(before), ...change }))[0]?.message ?? null;
  const degrees = ((drop.angle * 180) / Math.PI).toFixed(1);
  return (
    <FieldGroup
      id="group-drop"
      title="From the frets down to the top"
      hint={dropped(drop, centsPerMm(place.read.scale.scaleLength, 12), style).words}
    >
      <SelectRow
        label="The small square"
        value={drop.by}
        choices={[
          { value: 'top', label: 'stands on the top' },
          { value: 'rule', label: 'is held to the rule' },
        ]}
        choose={(by) => set(`Square ${by === 'top' ? 'on the top' : 'held to the rule'}`, { by: by as Drop['by'] })}
      />
      <TextBox
        label="Frets against the top"
        path="build.drop.angle"
        shown={degrees}
        unit="°"
        about="How much the line of the fret tops rises against the top, toward the tail. Usual: 0.5°, from frets 7.5 mm over the top at the body and 10 mm at a bridge 290 mm on: our own arithmetic, no source."
        decimal
        take={(text) => {
          if (text === degrees) return null;
          const typed = text.trim().replace(/°$/, '').replace(',', '.').replace('−', '-');
          if (!/^-?(\d+\.?\d*|\.\d+)$/.test(typed)) return 'Expected an angle in degrees, such as 1.5.';
          return set('Angle of the frets', { angle: (Number(typed) * Math.PI) / 180 });
        }}
      />
      <TextBox
        label="Line of the frets over the top, at the bridge"
        path="build.drop.height"
        shown={lengthText(drop.height, style)}
        unit={style.unit}
        about="Straightedge on the frets, carried on to the bridge: its height over the top there. Usual: the bridge’s thickness and the straightedge of Measure, or 10 mm, common practice, no source."
        decimal
        take={(text) => {
          if (text === lengthText(drop.height, style)) return null;
          const read = parseLength(text, style.unit);
          return read.ok ? set('Height of the frets', { height: read.value }) : (read.issues[0]?.message ?? null);
        }}
      />
    </FieldGroup>
  );
}
