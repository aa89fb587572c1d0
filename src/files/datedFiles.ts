import { type CalendarDate, isAfterTomorrow } from "#domain";
import { fileName } from "./fileName.ts";

const kept = 10;
/** "Evenings-a3f9-2026-11-25T170509Z.json.gz": title, device, instant. */
const pattern = /(?:^|-)([0-9a-z]{4})-(\d{4}-\d\d-\d\dT\d{6}Z)\.json(?:\.gz)?$/;

/** One of the files that automatic backup writes. */
export interface DatedFile {
  readonly name: string;
  /** The device that wrote it. */
  readonly tag: string;
  /** When, in UTC; sorts as text. */
  readonly at: string;
}

/** What the name of a file says; undefined when automatic backup did not write it. */
export function datedFile(name: string): DatedFile | undefined {
  const [, tag, at] = pattern.exec(name) ?? [];
  if (tag === undefined || at === undefined) return undefined;
  const file = { name, tag, at };
  return Number.isNaN(datedAt(file)) ? undefined : file;
}

/** Name of the next file of a device. */
export function datedName(title: string, tag: string, now: number, extension: string): string {
  const at = new Date(now).toISOString().replace(/\.\d+/, "").replaceAll(":", "");
  return fileName(`${[...title].slice(0, 40).join("")} ${tag}`, at, extension);
}

/**
 * Writes a new file into a folder; then lets the oldest of this device go, so that ten stay. The file just written is
 * the newest of all: those whose names say later were written by a clock that stood ahead, and go first. The browser writes beside
 * the place and swaps at the end, and no older file is touched before that: a half-written file never stands in the
 * place of a good one.
 */
export async function writeDated(
  folder: FileSystemDirectoryHandle,
  { name, tag }: { readonly name: string; readonly tag: string },
  bytes: Uint8Array<ArrayBuffer>,
): Promise<void> {
  const isNew = !(await filesIn(folder)).some((file) => file.name === name);
  const file = await folder.getFileHandle(name, { create: true });
  try {
    const stream = await file.createWritable();
    await stream.write(bytes);
    await stream.close();
  } catch (error) {
    // The empty file made for it would look like a backup.
    if (isNew) await folder.removeEntry(name).catch(() => undefined);
    throw error;
  }
  const at = datedFile(name)?.at ?? "";
  const others = (await filesIn(folder)).filter((one) => one.tag === tag && one.name !== name);
  const mine = others.sort((a, b) => Number(a.at > at) - Number(b.at > at) || newestFirst(a, b));
  for (const old of mine.slice(kept - 1)) await folder.removeEntry(old.name);
}

/**
 * The newest file of each other device in a folder. Files dated later than tomorrow were written by a clock that stood
 * ahead and do not hide the others: the newest of them stands beside the newest of the rest.
 */
export async function newestOfOthers(
  folder: FileSystemDirectoryHandle,
  tag: string,
  today: CalendarDate,
): Promise<readonly DatedFile[]> {
  const others = (await filesIn(folder)).filter((file) => file.tag !== tag).sort(newestFirst);
  const lines = others.map((file) => lineOf(file, today));
  return others.filter((_, index) => lines.indexOf(lines[index] ?? "") === index);
}

/** The files of a device that follow each other: "a3f9", or "a3f9 ahead" for those dated later than tomorrow. */
export function lineOf({ tag, at }: DatedFile, today: CalendarDate): string {
  return isAfterTomorrow(at.slice(0, 10), today) ? `${tag} ahead` : tag;
}

/** When a file was written, epoch milliseconds, by the clock of its device. */
export function datedAt({ at }: DatedFile): number {
  return Date.parse(at.replace(/T(\d\d)(\d\d)(\d\d)/, "T$1:$2:$3"));
}

/** A file of the folder, to read. */
export async function fileIn(folder: FileSystemDirectoryHandle, name: string): Promise<File> {
  return (await folder.getFileHandle(name)).getFile();
}

const newestFirst = (a: DatedFile, b: DatedFile) => (a.at < b.at ? 1 : -1);

async function filesIn(folder: FileSystemDirectoryHandle): Promise<DatedFile[]> {
  const found: DatedFile[] = [];
  for await (const name of folder.keys()) {
    const file = datedFile(name);
    if (file) found.push(file);
  }
  return found;
}
