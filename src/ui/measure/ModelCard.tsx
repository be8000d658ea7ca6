/** What stands behind the model's figures, and what no figure here can know. */
export function ModelCard() {
  return (
    <div className="card">
      <h3>What it rests on</h3>
      <ul className="plain">
        <li>
          A stiff string clamped at the fret and hinged at the saddle: end-fret stretch, added tension, density, bending
          (Anderson & Beausoleil, J. Acoust. Soc. Am. 156, 683, 2024).
        </li>
        <li>It reproduces published tables for nylon. For steel there are none to check it against.</li>
        <li>For steel it agrees with makers’ figures to about 1 mm.</li>
        <li>Wound cores are seldom published: a thousandth of an inch is worth 0.3 to 0.5 mm.</li>
        <li>The finger is taken as holding the string on the fret; pressing deeper costs more.</li>
      </ul>
      <h3>What it cannot know</h3>
      <ul className="plain">
        <li>A body that resonates near a note and pulls its pitch.</li>
        <li>String that slips or stretches behind nut and saddle: it lowers the compensation.</li>
        <li>A core gripped by its winding, old strings, nylon that still creeps.</li>
        <li>Frets worn or placed wrong, unless you read them.</li>
        <li>Your ear: the strung instrument beats every figure here.</li>
      </ul>
    </div>
  );
}
