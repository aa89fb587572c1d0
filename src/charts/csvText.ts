/**
 * Cells as CSV text (RFC 4180: CRLF, quotes doubled), with a byte order mark so that spreadsheets read it as UTF-8.
 * Text a spreadsheet would take for a formula gets an apostrophe before it; numbers stay numbers.
 */
export function csvText(rows: readonly (readonly (string | number)[])[]): string {
  return `\uFEFF${rows.map((row) => `${row.map(csvCell).join(",")}\r\n`).join("")}`;
}

function csvCell(cell: string | number): string {
  if (typeof cell === "number") return String(cell);
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
