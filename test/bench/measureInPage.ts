/** What the page under measurement keeps; times in ms from the start of its loading. */
export interface PageMeasures {
  /** When the frame was done in which the drawing's canvas got its first lines; null before. */
  usable: number | null;
  /** Frames since `recording` was set. after: what was done between it and the next one; moved: the pointer moved in it. */
  frames: { readonly at: number; readonly work: number; after: number; readonly moved: boolean }[];
  recording: boolean;
  /** From each click to the PDF that it brought. */
  pdf: number[];
}

declare global {
  interface Window {
    saddlemarkBench: PageMeasures;
  }
}

/** Runs in the page before its own scripts, so it may use nothing from outside itself. */
export function measureInPage(): void {
  const measures: PageMeasures = { usable: null, frames: [], recording: false, pdf: [] };
  window.saddlemarkBench = measures;

  const inNextTask = (then: () => void): void => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = then;
    port2.postMessage(null);
  };

  const lines = CanvasRenderingContext2D.prototype;
  const { stroke } = lines;
  lines.stroke = function (this: CanvasRenderingContext2D, ...given: unknown[]) {
    if (this.canvas.isConnected) {
      lines.stroke = stroke;
      requestAnimationFrame(() =>
        inNextTask(() => {
          measures.usable = performance.now();
        }),
      );
    }
    return Reflect.apply(stroke, this, given);
  };

  let moveBegan = 0;
  let moveWork: number | null = null;
  window.addEventListener('pointermove', () => (moveBegan = performance.now()), { capture: true });
  window.addEventListener('pointermove', () => {
    moveWork = (moveWork ?? 0) + performance.now() - moveBegan;
  });
  const frame = (at: number): void => {
    const began = performance.now();
    const [moved, before] = [moveWork !== null, moveWork ?? 0];
    moveWork = null;
    // A message sent now is handled once this frame is laid out and painted.
    if (measures.recording) {
      inNextTask(() => {
        const painted = performance.now();
        const done = { at, work: before + painted - began, after: 0, moved };
        measures.frames.push(done);
        // One message waits for another that was sent before it.
        inNextTask(() => {
          done.after = performance.now() - painted;
        });
      });
      requestAnimationFrame(frame);
    }
  };
  window.addEventListener('pointerdown', () => measures.recording && requestAnimationFrame(frame), { capture: true });

  let clicked = 0;
  window.addEventListener(
    'click',
    (event) => {
      clicked = event.isTrusted ? event.timeStamp : clicked;
    },
    { capture: true },
  );
  const address = URL.createObjectURL;
  URL.createObjectURL = (thing) => {
    if (thing instanceof Blob && thing.type === 'application/pdf') measures.pdf.push(performance.now() - clicked);
    return address.call(URL, thing);
  };
}
