import { useId } from 'react';
import { MARGINS, paperOf, papersOf } from '../../core/sheets/printSettings';
import { LengthBox } from '../draw/outline/LengthBox';
import { More } from '../fields/More';
import { SelectRow } from '../fields/SelectRow';
import { useServices } from '../services';
import { useStore } from '../useStore';
import { OwnPapers } from './OwnPapers';
import { PaperCautions } from './paper/PaperCautions';
import { usePrintSettings } from './usePrintSettings';

/** The paper in the printer, the white at its edges, and which papers are offered. */
export function PaperFields() {
  const { actions } = useServices().store;
  const chosen = useStore((state) => state.device.paper);
  const [settings, set] = usePrintSettings();
  const { first, others } = papersOf(settings);
  const id = useId();
  return (
    <>
      <div className="field field-wide">
        <label htmlFor={id}>Paper</label>
        <select
          id={id}
          value={paperOf(settings, chosen).id}
          onChange={(event) => actions.setDevice({ paper: event.target.value })}
        >
          {[
            { label: 'Yours', papers: first },
            { label: 'Elsewhere, at a print shop', papers: others },
          ]
            .filter(({ papers }) => papers.length > 0)
            .map(({ label, papers }) => (
              <optgroup key={label} label={label}>
                {papers.map((paper) => (
                  <option key={paper.id} value={paper.id}>
                    {paper.name}
                  </option>
                ))}
              </optgroup>
            ))}
        </select>
      </div>
      <SelectRow
        label="In the printer"
        about="Which paper lies in the printer now. You are warned before pages for another one are downloaded."
        value={settings.loaded ?? ''}
        choices={[
          { value: '', label: 'the same' },
          ...[...first, ...others].map((paper) => ({ value: paper.id, label: paper.name })),
        ]}
        choose={(loaded) => set({ ...settings, loaded: loaded === '' ? null : loaded })}
      />
      <PaperCautions />
      <More summary="Your papers and margins">
        <LengthBox
          path="print.margin"
          label="White at every edge"
          help="Printers leave up to 6.4 mm (1/4 in) white at the edges of a page; 10 mm keeps clear of it. Common practice, no source."
          value={settings.margin}
          min={MARGINS.least}
          max={MARGINS.most}
          take={(margin) => {
            set({ ...settings, margin });
            return [];
          }}
        />
        <OwnPapers settings={settings} set={set} />
      </More>
    </>
  );
}
