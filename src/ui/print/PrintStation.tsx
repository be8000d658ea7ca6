import type { MadeSheets } from '../../core/sheets/makeSheets';
import { missingCharacters } from '../../core/text/missingCharacters';
import { FieldGroup } from '../fields/FieldGroup';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { FilesFields } from './files/FilesFields';
import { PaperFields } from './PaperFields';
import { PaperDialog } from './paper/PaperDialog';
import { PaperTruth } from './proof/PaperTruth';
import { ProofFields } from './proof/ProofFields';
import { SheetTicks } from './SheetTicks';
import { SetFields } from './sets/SetFields';
import { useSheet } from './useSheet';
import './print.css';

/** The paper, what will be on it and how to print it true. */
export function PrintStation() {
  const inches = useStore((state) => state.device.units === 'in');
  const sheet = useSheet();
  const { style } = useLengths();
  const side = style.unit === 'in' ? '4 in' : '100 mm';
  return (
    <div className="field-panel">
      <PaperDialog />
      <div className="field-groups">
        <FieldGroup title="Sheet">
          <PaperFields />
          {sheet.ok ? (
            <p className="sheet-count">
              <strong>
                {sheet.value.document.pages.length === 1 ? '1 page' : `${sheet.value.document.pages.length} pages`}
              </strong>
              {(sheet.value.document.pages[0]?.width ?? 0) > (sheet.value.document.pages[0]?.height ?? 0)
                ? ', on its side'
                : ', upright'}
            </p>
          ) : (
            sheet.issues.map(({ code, message }) => (
              <p key={code} className="field-wrong">
                {message}
              </p>
            ))
          )}
          {sheet.ok && <TiledSheets tiled={sheet.value.tiled} />}
          <NotPrintable />
        </FieldGroup>
        <SheetTicks missing={sheet.ok ? sheet.value.missing : []} />
        <SetFields />
        <FieldGroup title="On the tape-down template">
          <ul className="plain">
            <li>The bridge at true size, with slot, pins or string holes, and locating pins.</li>
            <li>The square line, with its distance from the nut and from the 12th fret.</li>
            <li>Outer strings, board edges and octave line, to lie over the real ones.</li>
            <li>Corner windows, cut out to carry the bridge to tape.</li>
            <li>On a small body, where to trim the paper, once its width at the bridge is entered at Draw.</li>
            <li>A {inches ? '4 in' : '100 mm'} square and long lines both ways, to prove the print.</li>
          </ul>
        </FieldGroup>
        <FieldGroup title="Print at 100 %">
          <ol className="plain">
            <li>Download the PDF and print it from a PDF reader.</li>
            <li>
              Choose “Actual size” or 100 %. Turn off Fit, Shrink and Scale to fit; a reader may remember an old
              setting.
            </li>
            <li>Choose the paper named here, in reader and printer alike.</li>
            <li>Lay a steel rule on the square: {side} both ways, or do not use the sheet.</li>
          </ol>
        </FieldGroup>
        <ProofFields sheet={sheet} />
        <PaperTruth />
        <FilesFields />
        <FieldGroup title="Before you drill">
          <ul className="plain">
            <li>
              Paper carries shape; steel carries length. Set the square line by rule from the frets, never by paper.
            </li>
            <li>Read every distance again with the bridge taped in place.</li>
            <li>Find the braces from inside before any hole.</li>
          </ul>
        </FieldGroup>
      </div>
    </div>
  );
}

/** Which sheets are cut over several pages, and which paper would spare it. */
function TiledSheets({ tiled }: Pick<MadeSheets, 'tiled'>) {
  if (tiled.length === 0) return null;
  return (
    <ul className="plain field-note" aria-label="Sheets over several pages">
      {tiled.map(({ name, pages, whole }) => (
        <li key={name}>
          {name}: {pages} pages, joined by their marks.
          {whole !== null && ` ${whole}, which you own, would hold it on one page.`}
        </li>
      ))}
    </ul>
  );
}

/** Names the characters that the printed font lacks. */
function NotPrintable() {
  const { name } = useStore((state) => state.project.about);
  const missing = missingCharacters(name);
  if (missing.length === 0) return null;
  return <p className="field-caution">The printed font lacks {missing.join(' ')}: a box stands in its place.</p>;
}
