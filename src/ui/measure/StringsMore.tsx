import { stringFields } from '../../core/document/stringFields';
import { FieldRow } from '../fields/FieldRow';
import { More } from '../fields/More';
import { poundsForce } from '../poundsForce';
import { useLengths } from '../useLengths';
import { useStore } from '../useStore';
import { StringEdit } from './StringEdit';

/** Each string's figures and pull; every one can be changed, its source stands with it, and strings come and go. */
export function StringsMore() {
  const strings = useStore((state) => state.project.strings);
  return (
    <>
      <StringTable />
      {strings.map((string, index) => (
        <More key={string.id} summary={`${index + 1} ${string.name}: figures and sources`}>
          {stringFields(string, index).map(({ path }) => (
            <FieldRow key={path} path={path} />
          ))}
          <ul className="plain field-note">
            {string.source.split(/; (?=mass:|stretch and bending:)/).map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
          <StringEdit index={index} />
        </More>
      ))}
    </>
  );
}

function StringTable() {
  const strings = useStore((state) => state.project.strings);
  const models = useStore((state) => state.derived.models);
  const { style } = useLengths();
  const paired = strings.some(({ course }, index) => course === strings[index - 1]?.course);
  // A gauge is named to a thousandth of an inch; a tenth of a millimetre would not tell two apart.
  const gauge = (mm: number): string => (style.unit === 'mm' ? mm.toFixed(2) : (mm / 25.4).toFixed(3));
  const tensions = strings.map((_, index) => (models.ok ? (models.value[index]?.tension ?? null) : null));
  const total = tensions.reduce((sum: number, tension) => sum + (tension ?? 0), 0);
  return (
    <table className="figures loose small-figures" aria-label="Strings by course">
      <thead>
        <tr>
          <th scope="col">String</th>
          {paired && <th scope="col">course</th>}
          <th scope="col">Hz</th>
          <th scope="col">gauge</th>
          <th scope="col">kind</th>
          <th scope="col">N</th>
          <th scope="col">lb</th>
        </tr>
      </thead>
      <tbody>
        {strings.map(({ id, name, course, frequency, diameter, wound }, index) => {
          const tension = tensions[index] ?? null;
          return (
            <tr key={id}>
              <th scope="row">
                {index + 1} {name}
              </th>
              {paired && <td>{course}</td>}
              <td>{frequency.toFixed(1)}</td>
              <td>{gauge(diameter)}</td>
              <td>{wound ? 'wound' : 'plain'}</td>
              <td>{tension === null ? '' : tension.toFixed(0)}</td>
              <td>{tension === null ? '' : poundsForce(tension).toFixed(1)}</td>
            </tr>
          );
        })}
        <tr className="total">
          <th scope="row" colSpan={paired ? 5 : 4}>
            All
          </th>
          <td>{total.toFixed(0)}</td>
          <td>{poundsForce(total).toFixed(1)}</td>
        </tr>
      </tbody>
    </table>
  );
}
