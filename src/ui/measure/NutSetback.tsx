import { useLengths } from '../useLengths';
import { useStore } from '../useStore';

/** Where the nut is to stand when it may move: the saddle's figures hold only together with these. */
export function NutSetback() {
  const models = useStore((state) => state.derived.models);
  const { signed } = useLengths();
  if (!models.ok) return null;
  return (
    <>
      <p className="field-caution">The model’s saddle figures hold only when the nut is moved as well:</p>
      <table className="figures loose small-figures" aria-label="Nut setback by string">
        <thead>
          <tr>
            <th scope="col">String</th>
            <th scope="col">nut, − toward the saddle</th>
          </tr>
        </thead>
        <tbody>
          {models.value.map(({ id, name, nut }, index) => (
            <tr key={id}>
              <th scope="row">
                {index + 1} {name}
              </th>
              <td>{signed(nut)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
