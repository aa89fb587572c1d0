import type { Reading } from "#domain";

export interface TextLimits {
  /** More bytes than this, also after unpacking, are no logbook. Default 200 MB. */
  readonly mostBytes?: number;
  /** Tables from other programs may be UTF-16 or Windows-1252; backups never are. */
  readonly mayBeOld?: boolean;
}

const mega = 1_000_000;

/** What the first bytes of a file give away. */
const signatures: readonly (readonly [string, readonly number[]])[] = [
  ["a picture (PNG)", [0x89, 0x50, 0x4e, 0x47]],
  ["a photo (JPEG)", [0xff, 0xd8, 0xff]],
  ["a picture (GIF)", [0x47, 0x49, 0x46, 0x38]],
  ["a picture or a sound (RIFF)", [0x52, 0x49, 0x46, 0x46]],
  ["a document (PDF)", [0x25, 0x50, 0x44, 0x46]],
  ["a packed folder (ZIP)", [0x50, 0x4b, 0x03, 0x04]],
];

/** The text of a file, and how its bytes were read. */
export interface FileText {
  readonly text: string;
  readonly encoding: "UTF-8" | "UTF-16" | "Windows-1252";
  /** Signs that could not be read; they stand as \uFFFD or as control signs. */
  readonly broken: number;
}

/** The text of a file, unpacked where it is gzip, or what is wrong with it. */
export async function readText(file: Blob, limits: TextLimits = {}): Promise<Reading<FileText>> {
  const { mostBytes = 200 * mega, mayBeOld = false } = limits;
  const tooLarge = () =>
    refused(
      `The file is larger than ${Math.round(mostBytes / mega)} MB: too large to be a logbook.`,
      "Choose a backup or a table of laps.",
    );
  if (file.size > mostBytes) return tooLarge();
  const raw = new Uint8Array(await file.arrayBuffer());
  const isPacked = raw[0] === 0x1f && raw[1] === 0x8b;
  const bytes = isPacked ? await unpack(raw, mostBytes) : raw;
  if (bytes === "too large") return tooLarge();
  if (bytes === "broken")
    return refused(
      "The packed file is damaged or not complete.",
      "Choose the file again, or save a new one.",
    );
  const found = signatures.find(([, start]) => start.every((byte, index) => bytes[index] === byte));
  if (found) return refused(`This file is ${found[0]}.`, "Choose a text file: a backup or a table of laps.");
  return decoded(bytes, mayBeOld);
}

function refused(wrong: string, right: string): Reading<never> {
  return { ok: false, problem: { at: 0, length: 0, wrong, right } };
}

function decoded(bytes: Uint8Array, mayBeOld: boolean): Reading<FileText> {
  const wide = wideEncoding(bytes);
  if (wide !== undefined) {
    if (!mayBeOld) return refused("This file is text in UTF-16; a backup is UTF-8.", "Save it as UTF-8.");
    return read(new TextDecoder(wide).decode(bytes), "UTF-16");
  }
  try {
    return read(new TextDecoder("utf-8", { fatal: true }).decode(bytes), "UTF-8");
  } catch {
    if (!mayBeOld || bytes.includes(0))
      return refused("This file is not text in UTF-8.", "Choose a text file: a backup or a table of laps.");
    return oldOrBroken(bytes);
  }
}

/** Text that is not whole UTF-8: an older encoding, or UTF-8 with some damage where more of it is right than wrong. */
function oldOrBroken(bytes: Uint8Array): Reading<FileText> {
  const text = new TextDecoder("utf-8").decode(bytes);
  const right = text.match(/[^\0-\x7f\ufffd]/g)?.length ?? 0;
  if (right > broken(text)) return read(text, "UTF-8");
  return read(new TextDecoder("windows-1252").decode(bytes), "Windows-1252");
}

/** Signs that stand for bytes no sign is made of; in Windows-1252 five bytes have none. */
const broken = (text: string) => text.match(/[\ufffd\u0081\u008d\u008f\u0090\u009d]/g)?.length ?? 0;

function read(text: string, encoding: FileText["encoding"]): Reading<FileText> {
  return { ok: true, text, encoding, broken: broken(text) };
}

/** UTF-16 by its mark, or by the zero bytes that plain letters have in it. */
function wideEncoding(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  const [first = 1, second = 1] = bytes;
  if ((first === 0xff && second === 0xfe) || (second === 0 && first !== 0)) return "utf-16le";
  if ((first === 0xfe && second === 0xff) || (first === 0 && second !== 0)) return "utf-16be";
  return undefined;
}

/** Unpacks gzip, counting as it goes: a small file may unpack without end. */
async function unpack(
  packed: Uint8Array<ArrayBuffer>,
  mostBytes: number,
): Promise<Uint8Array | "too large" | "broken"> {
  const unpacker = new DecompressionStream("gzip");
  const into = unpacker.writable.getWriter();
  // What is wrong with the bytes comes out at the reading end, where it is caught.
  Promise.all([into.write(packed), into.close()]).catch(() => undefined);
  const reader = unpacker.readable.getReader();
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      size += part.value.length;
      if (size > mostBytes) {
        await reader.cancel();
        return "too large";
      }
      parts.push(part.value);
    }
  } catch {
    return "broken";
  }
  const bytes = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
