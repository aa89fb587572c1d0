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
  return tag === undefined || at === undefined ? undefined : { name, tag, at };
}

/** Name of the next file of a device. */
export function datedName(title: string, tag: string, now: number, extension: string): string {
  const at = new Date(now).toISOString().replace(/\.\d+/, "").replaceAll(":", "");
  return fileName(`${[...title].slice(0, 40).join("")} ${tag}`, at, extension);
}

/**
 * Writes a new file into a folder; then lets the oldest of this device go, so that ten stay. The browser writes beside
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
  const mine = (await filesIn(folder)).filter((one) => one.tag === tag).sort(newestFirst);
  for (const old of mine.slice(kept)) await folder.removeEntry(old.name);
}

/** The newest file of each other device in a folder. */
export async function newestOfOthers(
  folder: FileSystemDirectoryHandle,
  tag: string,
): Promise<readonly DatedFile[]> {
  const others = (await filesIn(folder)).filter((file) => file.tag !== tag).sort(newestFirst);
  return others.filter((file, index) => others.findIndex((one) => one.tag === file.tag) === index);
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
