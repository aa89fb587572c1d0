import type { Reading } from "#domain";

const begin = "lap-ledger:";
const end = ":end";
const perLine = 76;
/** Characters that are turned into bytes in one go. */
const atOnce = 0x8000;

/** A packed backup as text that any chat carries: base64 between two marks, in short lines. */
export function writePasteText(bytes: Uint8Array): string {
  let raw = "";
  for (let at = 0; at < bytes.length; at += atOnce)
    raw += String.fromCharCode(...bytes.subarray(at, at + atOnce));
  const lines = btoa(raw).match(new RegExp(`.{1,${perLine}}`, "g")) ?? [];
  return [begin, ...lines, end].join("\n");
}

/** Whether a text holds such a backup, or the beginning of one. */
export function isPasteText(text: string): boolean {
  return text.includes(begin) && !text.trimStart().startsWith("{");
}

/** The bytes in such a text, whatever was written around it, or what is wrong with it. */
export function readPasteText(text: string): Reading<{ readonly bytes: Uint8Array<ArrayBuffer> }> {
  const from = text.indexOf(begin) + begin.length;
  const to = text.indexOf(end, from);
  if (to < 0)
    return refused("The pasted text is not complete: its end is missing.", "Copy the whole text once more.");
  const base64 = text.slice(from, to).replace(/\s+/g, "");
  if (!/^[A-Za-z0-9+/]*={0,2}$/.test(base64) || base64.length % 4 !== 0)
    return refused("The pasted text was changed on its way.", "Copy it once more, or send a file.");
  return { ok: true, bytes: Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0)) };
}

function refused(wrong: string, right: string): Reading<never> {
  return { ok: false, problem: { at: 0, length: 0, wrong, right } };
}
