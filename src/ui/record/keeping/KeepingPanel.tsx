import { useCallback, useEffect, useState } from 'react';
import type { KeepingPlace } from '../../../core/ports';
import { FieldGroup } from '../../fields/FieldGroup';
import { More } from '../../fields/More';
import { useServices } from '../../services';
import { useFileWork } from '../../useFileWork';
import { useMedia } from '../../useMedia';
import { useShelf } from '../shelf/useShelf';
import { bytesInWords } from './bytesInWords';
import { LibraryFiles } from './LibraryFiles';
import './keeping.css';

/** What the browser says of the place where the library lies; null until it has. */
const useKeepingPlace = () => {
  const { library } = useServices();
  const { entries } = useShelf().state;
  const [place, setPlace] = useState<KeepingPlace | null>(null);
  const ask = useCallback(async (): Promise<void> => setPlace(await (await library()).place()), [library]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was kept takes room
  useEffect(() => {
    ask().catch(() => {});
  }, [ask, entries]);
  return { place, ask };
};

/** Browsers on the engine that clears what a site keeps after seven days of use without a visit to it. */
const clearsAfterSevenDays = (): boolean => navigator.vendor.startsWith('Apple');

const PROMISE: Readonly<Record<'yes' | 'no' | 'unknown', string>> = {
  yes: 'This browser promised not to clear the library by itself.',
  no: 'This browser may clear the library when the device runs out of room.',
  unknown: 'This browser does not say whether it may clear the library by itself.',
};

/** Where the library lies, how safe it is there, and how to have it elsewhere as well. */
export function KeepingPanel() {
  const { files } = useServices();
  const work = useFileWork();
  const { place, ask } = useKeepingPlace();
  const installed = useMedia('(display-mode: standalone)');
  const promised = place === null || place.lasting === null ? 'unknown' : place.lasting ? 'yes' : 'no';
  const askToKeep = async (): Promise<void> => {
    await navigator.storage?.persist?.();
    await ask();
  };
  return (
    <FieldGroup id="keeping" title="Keeping" hint="The library lies in this browser, on this device, and nowhere else.">
      {place !== null && (
        <div className="answer" aria-live="polite">
          <p className={promised === 'no' ? 'field-caution' : undefined}>{PROMISE[promised]}</p>
          {place.used !== null && (
            <p>
              {bytesInWords(place.used)} used
              {place.room !== null && `, room for ${bytesInWords(Math.max(0, place.room - place.used))} more`}.
            </p>
          )}
        </div>
      )}
      {promised === 'no' && (
        <button type="button" onClick={() => void askToKeep().catch(() => {})}>
          Ask the browser to keep it
        </button>
      )}
      {clearsAfterSevenDays() && !installed && (
        <p className="field-caution">
          This browser clears what a page keeps when you use the browser for seven days without opening that page. Put
          Saddlemark on the home screen or in the dock, which has a count of its own, and take the library to a file now
          and then.
        </p>
      )}
      {files.saveAs !== null && (
        <button type="button" onClick={() => work.saveAs()}>
          Save this one to a file you choose
        </button>
      )}
      <LibraryFiles />
      <More summary="How to keep it safe">
        <ul className="plain">
          <li>A file is the copy that lasts: take the whole library to one after a day’s work, onto another device.</li>
          <li>In a private window everything is gone once the window is closed.</li>
          <li>Clearing the site data or the history of this browser clears the library with it.</li>
          {installed ? (
            <li>Saddlemark is installed here: browsers are slower to clear what an installed page keeps.</li>
          ) : (
            <li>
              Install it: “Install” or “Add to home screen” in the browser’s menu. It then opens without a network, and
              browsers are slower to clear what it keeps.
            </li>
          )}
          {!clearsAfterSevenDays() && (
            <li>Safari, and every browser on an iPhone or iPad, clears it after seven days of use without a visit.</li>
          )}
        </ul>
      </More>
    </FieldGroup>
  );
}
