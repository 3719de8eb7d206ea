/** A time as makers say it, to the minute: `1 h 25 min`; below a minute and a half in seconds. */
export function durationText(seconds: number): string {
  if (Math.abs(seconds) < 90) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 ? [`${rest} min`] : [])].join(' ');
}

const STEPS: readonly [belowS: number, stepS: number][] = [
  [600, 60],
  [2 * 3600, 300],
  [10 * 3600, 900],
];

/** An estimate, no finer than it is worth: whole minutes below 10, then fives, quarters of an hour, hours. */
export function roughText(seconds: number): string {
  const step = STEPS.find(([below]) => seconds < below)?.[1] ?? 3600;
  const rounded = Math.max(step, Math.round(seconds / step) * step);
  return rounded === 60 ? '1 min' : durationText(rounded);
}
