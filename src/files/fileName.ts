import type { CalendarDate } from "#domain";

const longest = 60;
const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/**
 * A short file name that every system takes: letters, digits, spaces as hyphens; no path, no dots but the last, no
 * signs that turn the direction of reading, no device name.
 * @example fileName("Backup: Anna/2", "2026-10-14", "json") // "Backup-Anna-2-2026-10-14.json"
 */
export function fileName(title: string, date: CalendarDate, extension: string): string {
  const bare = title
    .normalize("NFC")
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "");
  const short = [...bare].slice(0, longest).join("").replace(/-+$/, "");
  const safe = short === "" || reserved.test(short) ? ["lap-ledger", short].filter(Boolean).join("-") : short;
  return `${safe}-${date}.${extension}`;
}
