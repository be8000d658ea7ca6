import { useLengths } from '../../useLengths';
import { useStore } from '../../useStore';

/** How far a clamp must reach from the edge of the soundhole. */
export function ReachTable() {
  const reach = useStore((state) => state.around?.body?.reach);
  const { bare, style } = useLengths();
  if (reach === undefined || reach.length === 0) return null;
  return (
    <table className="figures loose small-figures">
      <caption>Clamp’s reach from the edge of the soundhole, {style.unit}</caption>
      <thead>
        <tr>
          <th scope="col">To the bridge’s</th>
          <th scope="col">Straight</th>
        </tr>
      </thead>
      <tbody>
        {reach.map(({ id, label, distance }) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            <td>{bare(distance)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
