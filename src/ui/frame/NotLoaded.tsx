import '../style/base.css';
import '../style/frame.css';

/** What stands there when the program could not be loaded, and why. */
export function NotLoaded({ reason }: { readonly reason: string }) {
  return (
    <div className="screen">
      <header className="header">
        <h1>Saddlemark</h1>
      </header>
      <p role="alert">Saddlemark could not be loaded ({reason}). Reload the page to try again.</p>
    </div>
  );
}
