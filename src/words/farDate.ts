import { type CalendarDate, daysBetween, monthNames, sayDate } from "#domain";

/** Days up to which a date is told as such: six weeks. */
const NEAR = 42;
/** Days up to which a month is told; beyond it a season. Our own choice. */
const MONTHS = 120;
/** Days beyond which the season's year must be said, because the same season may come before it. */
const THIS_YEAR = 270;

/** Seasons of the northern year, by their first month. */
const seasons = [
  { name: "winter", first: 12 },
  { name: "spring", first: 3 },
  { name: "summer", first: 6 },
  { name: "autumn", first: 9 },
] as const;

/**
 * A date to come as exactly as a forecast can know it: the day within six weeks, then the third of its month, beyond
 * four months the season (of the northern year; its last month is "late").
 * @example sayFarDate("2027-01-03", "2026-11-29") // "Sun 3 Jan 2027"
 * @example sayFarDate("2027-01-18", "2026-11-29") // "mid-January"
 * @example sayFarDate("2027-04-05", "2026-11-29") // "spring"
 * @example sayFarDate("2027-11-20", "2026-11-29") // "late autumn 2027"
 */
export function sayFarDate(date: CalendarDate, today: CalendarDate): string {
  const away = daysBetween(today, date);
  if (away <= NEAR) return sayDate(date);
  return away <= MONTHS ? partOfMonth(date) : sayFarSeason(date, away);
}

function partOfMonth(date: CalendarDate): string {
  const day = Number(date.slice(8));
  const month = monthNames[Number(date.slice(5, 7)) - 1] ?? "";
  if (day <= 10) return `early ${month}`;
  return day <= 20 ? `mid-${month}` : `late ${month}`;
}

function sayFarSeason(date: CalendarDate, away: number): string {
  const [year, month] = [Number(date.slice(0, 4)), Number(date.slice(5, 7))];
  const { name, first } = seasons[Math.floor((month % 12) / 3)] ?? seasons[0];
  const late = (month - first + 12) % 12 === 2 ? "late " : "";
  return `${late}${name}${away > THIS_YEAR ? ` ${yearOfSeason(name, year, month)}` : ""}`;
}

/** A winter belongs to two years: "2027/28". */
function yearOfSeason(name: string, year: number, month: number): string {
  if (name !== "winter") return String(year);
  const first = month === 12 ? year : year - 1;
  return `${first}/${String((first + 1) % 100).padStart(2, "0")}`;
}
