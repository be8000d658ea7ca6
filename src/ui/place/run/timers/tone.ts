/** Three short tones, s and Hz: high enough to cut through a shop, low enough for worn ears. */
const TONES = [0, 0.3, 0.6] as const;
const LENGTH = 0.22;
const PITCH = 880;
const LOUD = 0.4;

let context: AudioContext | null = null;

/** Makes sound possible; browsers allow it only from a press of the maker's. */
export const allowTone = (): void => {
  try {
    context ??= new AudioContext();
    void context.resume();
  } catch {
    // No sound on this device: the clock shows it all the same.
  }
};

/** Whether a press since the page was loaded has made sound possible. */
export const toneAllowed = (): boolean => context !== null;

/** Sounds once; silent where it was not allowed. */
export const soundTone = (): void => {
  if (context === null) return;
  const { currentTime, destination } = context;
  for (const after of TONES) {
    const tone = context.createOscillator();
    const volume = context.createGain();
    tone.frequency.value = PITCH;
    volume.gain.setValueAtTime(LOUD, currentTime + after);
    // Fades out, or the end clicks.
    volume.gain.linearRampToValueAtTime(0, currentTime + after + LENGTH);
    tone.connect(volume).connect(destination);
    tone.start(currentTime + after);
    tone.stop(currentTime + after + LENGTH);
  }
};
