/** Work that waits until a frame is on its way to the screen. */
export interface AfterFrame {
  /** Asked for in a frame: it is done once, when that frame is painted. */
  ask(): void;
  stop(): void;
}

/** A message sent in a frame is handled when the frame is laid out and painted. */
export const afterFrame = (work: () => void): AfterFrame => {
  const { port1, port2 } = new MessageChannel();
  let asked = false;
  port1.onmessage = () => {
    asked = false;
    work();
  };
  return {
    ask: () => {
      if (!asked) port2.postMessage(null);
      asked = true;
    },
    stop: () => port1.close(),
  };
};
