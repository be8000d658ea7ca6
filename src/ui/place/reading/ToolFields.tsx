import { READ_TOOLS } from '../../../core/placement/reading/readTools';
import { parseLength } from '../../../core/units/parseLength';
import { lengthText } from '../../../store/fieldText';
import { TextBox } from '../../fields/TextBox';
import { useBench, useBenchState } from '../../print/proof/useBench';
import { useLengths } from '../../useLengths';

/** How far each tool of this bench can be trusted: kept on this device, for every project. */
export function ToolFields() {
  const bench = useBench();
  const { sigmas } = useBenchState(bench).tools;
  const { style } = useLengths();
  return READ_TOOLS.map(({ id, name, sigma, source }) => {
    const own = sigmas[id];
    const shown = own === undefined ? '' : lengthText(own, style);
    const usual = lengthText(sigma, style);
    return (
      <TextBox
        key={id}
        label={name}
        path={`bench.tools.${id}`}
        shown={shown}
        unit={style.unit}
        about={`One standard deviation of one reading: two in three lie within it. Empty: the usual ${usual}, ${source}.`}
        decimal
        usual={usual}
        note={`usual ${usual}: ${source}`}
        take={(text) => {
          if (text === shown) return null;
          const length = text.trim() === '' ? null : parseLength(text, style.unit);
          if (length?.ok === false) return length.issues[0]?.message ?? null;
          const kept = bench.setToolSigma(id, length === null ? null : length.value);
          return kept.ok ? null : (kept.issues[0]?.message ?? null);
        }}
      />
    );
  });
}
