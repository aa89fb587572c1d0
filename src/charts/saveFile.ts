import type { CalendarDate } from "#domain";

/** Hands a file to the browser's downloads. */
export function saveFile(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}

/** A file name any system takes: plain letters and digits of the words, the date, the ending. */
export function chartFileName(words: string, date: CalendarDate, ending: "csv" | "svg" | "png"): string {
  const plain = words
    .normalize("NFD")
    .replace(/[^\p{Letter}\p{Number}]+/gu, "-")
    .slice(0, 60)
    .replace(/^-+|-+$/g, "");
  return `${plain === "" ? "chart" : plain}-${date}.${ending}`;
}
