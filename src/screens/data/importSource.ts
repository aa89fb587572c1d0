import type { Reading } from "#domain";
import { readText } from "#files";

/** A text that shall be read as a table. */
export interface ImportSource {
  /** The file's name; absent for pasted text. */
  readonly file?: string;
  readonly text: string;
  /** What to say of the way its bytes were read; absent where there is nothing to say. */
  readonly about?: string;
}

/** Reads a file the driver chose, in whatever encoding spreadsheets write. */
export async function readSource(file: File): Promise<Reading<{ source: ImportSource }>> {
  const read = await readText(file, { mayBeOld: true, mostBytes: 50_000_000 });
  if (!read.ok) return read;
  const { text, encoding, broken } = read;
  if (text.replace(/^\uFEFF/, "").trim() === "")
    return {
      ok: false,
      problem: { at: 0, length: 0, wrong: "The file is empty.", right: "Choose a table of laps." },
    };
  const line = text
    .slice(0, text.search(/[\ufffd\u0081\u008d\u008f\u0090\u009d]/))
    .split(/\r\n|\r|\n/).length;
  const damage =
    broken === 0
      ? ""
      : ` ${broken === 1 ? "One sign" : `${broken} signs`} could not be read, the first in line ${line}: look at the names and notes there.`;
  return { ok: true, source: { file: file.name, text, about: `Its text is ${encoding}.${damage}` } };
}
