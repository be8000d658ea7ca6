import '../style/base.css';
import '../style/frame.css';

/** What stands there until the screen has been loaded, or why it could not be. */
export function Opening({ problem }: { readonly problem?: string }) {
  return (
    <div className="screen">
      <header className="header">
        <h1>Saddlemark</h1>
      </header>
      {problem !== undefined && <p role="alert">{problem}</p>}
    </div>
  );
}
