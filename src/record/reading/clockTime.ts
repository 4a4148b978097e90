const DAY = 86_400_000_000;
const SECOND = 1_000_000;

const CLOCK = /^(?:(\S+?)(?:T|[ ,]+))?(\d{1,3}):(\d{2})(?::(\d{2}))?(?:[.,:](\d+))?\s*([ap]\.?m\.?)?\s*(?:Z|([-+])(\d{2}):?(\d{2}))?$/i;
const ISO_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const POINT_DATE = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
/** Day and month or month and day: who wrote it knows. Only the clock is used then. */
const SLASH_DATE = /^\d{1,4}[/-]\d{1,2}[/-]\d{2,4}$/;

/** Microseconds of the day that a date begins; 0 where only the clock can be used, undefined for any other text. */
function dayOf(date: string | undefined): number | undefined {
  if (date === undefined || SLASH_DATE.test(date)) {
    const [, year, month, day] = ISO_DATE.exec(date ?? '') ?? [];
    return year === undefined ? 0 : Date.UTC(Number(year), Number(month) - 1, Number(day)) * 1000;
  }
  const [, day, month, year] = POINT_DATE.exec(date) ?? [];
  return year === undefined ? undefined : Date.UTC(Number(year), Number(month) - 1, Number(day)) * 1000;
}

/**
 * @internal A clock time or a date with a clock time in microseconds, whole and so exact; undefined for any other text. `12:03` alone is
 * undefined: hours and minutes, or minutes and seconds.
 */
export function clockTime(text: string): number | undefined {
  const found = text.length > 40 ? undefined : CLOCK.exec(text);
  if (!found) return undefined;
  const [, date, first, second, third, fraction, half, sign, zoneHours = 0, zoneMinutes = 0] = found;
  const day = dayOf(date);
  if (day === undefined || (third === undefined && (fraction === undefined || date !== undefined))) return undefined;
  const [hours, minutes, seconds] =
    third === undefined ? [0, Number(first), Number(second)] : [Number(first), Number(second), Number(third)];
  if (seconds > 60 || (third !== undefined && (hours > 24 || minutes > 59))) return undefined;
  const noon = half === undefined ? hours : (hours % 12) + (/p/i.test(half) ? 12 : 0);
  const ahead = (Number(zoneHours) * 60 + Number(zoneMinutes)) * (sign === '-' ? -1 : 1);
  const whole = day + ((noon * 60 + minutes - ahead) * 60 + seconds) * SECOND;
  return whole + Math.round(Number(`0.${fraction ?? '0'}`) * SECOND);
}

/** @internal Turns clock times [µs] into seconds from the first one, in place; a fall by more than half a day is midnight. */
export function secondsFromFirst(column: Float64Array): void {
  let first = NaN;
  let before = NaN;
  let days = 0;
  for (let i = 0; i < column.length; i += 1) {
    const now = column[i]!;
    if (Number.isNaN(now)) continue;
    if (Number.isNaN(first)) first = now;
    if (before - now > DAY / 2 && before - now <= DAY) days += 1;
    before = now;
    column[i] = (now + days * DAY - first) / SECOND;
  }
}
