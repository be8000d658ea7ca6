import '../style/base.css';
import '../style/frame.css';

/** What stands there until the screen has been loaded. */
export function Opening() {
  return (
    <div className="screen">
      <header className="header">
        <h1>Saddlemark</h1>
      </header>
    </div>
  );
}
