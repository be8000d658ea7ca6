/** How the finish comes off, in its order, and what to doubt. Sources stand where there is one; the rest is common practice. */
export function FinishSteps() {
  return (
    <>
      <h3>Scoring and scraping</h3>
      <ol className="card-steps">
        <li>
          Bridge on its pins, or a template cut inside the line, so that the blade never follows the bridge
          (pegasusguitars.com).
        </li>
        <li>
          Score <strong>through the film, not the wood</strong>: a fresh blade, light passes, away from the holding
          hand. A cut into spruce starts a crack.
        </li>
        <li>Bridge off. With a rim to leave, score that line too, inside the first.</li>
        <li>
          Scrape from the middle outward to the line: scraper or chisel held flat, with the grain, no hollow. No sanding
          across the line.
        </li>
        <li>Bare wood shows no shine when it is held to the light. Try the bridge dry.</li>
        <li>Freshen both faces within a quarter of an hour of the glue (classicalguitardelcamp.com).</li>
        <li>Tape off before the glue hardens, folded back on itself, slowly (guitar-maker.blogspot.com).</li>
      </ol>
      <h3>To doubt</h3>
      <ul className="plain">
        <li>
          Young lacquer, shellac, oil, old brittle films: some bear no tape (moonlightluthiers.com). Try it where it
          does not show.
        </li>
        <li>Tape that is not low-tack, has been on for days, or lay in the sun.</li>
        <li>A film that chips as it is scored: warm the room, and twice as many passes, half as hard.</li>
        <li>Strippers and solvents creep under the line: not here.</li>
      </ul>
      <p className="field-caution">
        Knife and scraper: fresh, cut away from the holding hand, the body held fast. Finish dust and solvents:
        ventilation, gloves, a respirator, no flame. Labels and local rules come before this card.
      </p>
    </>
  );
}
