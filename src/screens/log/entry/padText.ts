import { aboutRemark, type RemarkKind, remarkKinds } from "#domain";

const letters = remarkKinds.map(({ letter }) => letter).join("");
const remarksAtEnd = new RegExp(`([${letters}](?:@\\d*)?)+$`, "i");

/** The letters of the remarks already typed at the end of an entry. */
export function remarksIn(text: string): readonly RemarkKind[] {
  const tail = remarksAtEnd.exec(text.split("/")[0]?.trimEnd() ?? "")?.[0].toLowerCase() ?? "";
  return remarkKinds.filter(({ letter }) => tail.includes(letter)).map(({ kind }) => kind);
}

/** The entry with a remark added, or taken off when it was there. The note stays behind it. */
export function toggleRemark(text: string, kind: RemarkKind): string {
  const { letter } = aboutRemark(kind);
  const slash = text.indexOf("/");
  const line = (slash < 0 ? text : text.slice(0, slash)).trimEnd();
  const note = slash < 0 ? "" : ` ${text.slice(slash)}`;
  const tail = remarksAtEnd.exec(line)?.[0] ?? "";
  const front = line.slice(0, line.length - tail.length);
  const pattern = new RegExp(`${letter}(?:@\\d*)?`, "gi");
  return `${front}${pattern.test(tail) ? tail.replace(pattern, "") : `${tail}${letter}`}${note}`;
}

/** The entry with a key of the pad added: a digit after a remark is the number of its corner. */
export function pressKey(text: string, key: string): string {
  const isCornerNext = /^\d$/.test(key) && !text.includes("/") && new RegExp(`[${letters}]$`, "i").test(text);
  return isCornerNext ? `${text}@${key}` : text + key;
}

/** Faster or slower than the lap before: nothing → + → − → nothing. */
export function toggleSign(text: string): string {
  if (text.startsWith("+")) return `-${text.slice(1)}`;
  if (text.startsWith("-") || text.startsWith("−")) return text.slice(1);
  return `+${text}`;
}
