const two = (figure: number): string => String(figure).padStart(2, '0');

/** Seconds as a clock shows them: "4:09", "23:59:59". Whole seconds, rounded up; never below 0. */
export const showCount = (seconds: number): string => {
  const whole = Math.max(0, Math.ceil(seconds));
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return hours === 0 ? `${minutes}:${two(whole % 60)}` : `${hours}:${two(minutes)}:${two(whole % 60)}`;
};

/** How long something took, in words: "40 s", "12 min", "3 h 5 min". seconds: not below 0. */
export const showSpan = (seconds: number): string => {
  const whole = Math.floor(seconds);
  if (whole < 60) return `${whole} s`;
  const minutes = Math.floor(whole / 60);
  if (minutes < 60) return `${minutes} min`;
  return minutes % 60 === 0 ? `${minutes / 60} h` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
};
