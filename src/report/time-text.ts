import { toStep } from '../quantity/format.js';

const MINUTE = 60;
const HOUR = 3600;
const YEAR = 31_557_600;

/** Three digits, or all of a larger whole number. */
export function threeDigits(value: number, toward: 'up' | 'down' | undefined): string {
  if (value === 0) return '0';
  const place = Math.min(0, Math.floor(Math.log10(Math.abs(value)) + 1e-12) - 2);
  return String(Number(toStep(value, 10 ** place, toward).toFixed(-place)));
}

/** A time as the crew reads it: seconds, minutes, hours and minutes, or years. */
export function timeText(seconds: number, toward: 'up' | 'down' | undefined): string {
  if (seconds >= YEAR / 4) return `${threeDigits(seconds / YEAR, toward)} years`;
  if (seconds < 5 * MINUTE) return `${toStep(seconds, 1, toward)} s`;
  const minutes = toStep(seconds / MINUTE, 1, toward);
  if (seconds < 2 * HOUR) return `${minutes} min`;
  const rest = minutes % 60;
  return rest === 0 ? `${Math.floor(minutes / 60)} h` : `${Math.floor(minutes / 60)} h ${rest} min`;
}
