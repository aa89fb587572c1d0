import {
  type AllRows,
  canonicalText,
  everyTable,
  isStorableInstant,
  type Reading,
  tableNames,
} from "#domain";

/** SHA-256 of a text in UTF-8, in hexadecimal; undefined where the browser offers none (no https). */
export type Sha256 = ((text: string) => Promise<string>) | undefined;

const kind = "lap-ledger backup";
/** No more of a table's name is said. */
const longestTableName = 60;
/** No more of a title is shown; whoever restores it under a name of its own is told how long that may be. */
const mostOfTitle = 2000;

export interface BackupHead {
  readonly title: string;
  /** Schema the rows are written with. */
  readonly schema: number;
  readonly sha256: Sha256;
}

/**
 * A logbook as the text of a backup file. The same logbook gives the same bytes: rows sorted by id, fields by name,
 * and `madeAt` is the newest stamp in it. Without `sha256` the file carries counts but no checksum. Tables only a newer
 * version knows come after the known ones.
 */
export async function writeBackup(rows: AllRows, { title, schema, sha256 }: BackupHead): Promise<string> {
  const sorted = Object.fromEntries(
    Object.entries<readonly { readonly id: string }[]>({
      ...everyTable((table) => rows[table]),
      ...rows,
    }).map(([table, unsorted]) => [table, [...unsorted].sort((a, b) => (a.id < b.id ? -1 : 1))] as const),
  );
  const head = {
    kind,
    schema,
    title,
    madeAt: newestStamp(rows),
    counts: Object.fromEntries(Object.entries(sorted).map(([table, { length }]) => [table, length])),
    ...(sha256 ? { sha256: await sha256(canonicalText(sorted)) } : {}),
  };
  const tables = Object.entries(sorted).map(
    ([table, inOrder]) =>
      `${JSON.stringify(table)}:[${inOrder.map((row) => `\n${canonicalText(row)}`).join(",")}]`,
  );
  const fields = Object.entries(head).map(
    ([field, value]) => `${JSON.stringify(field)}:${JSON.stringify(value)}`,
  );
  return `{${fields.join(",\n")},\n"tables":{\n${tables.join(",\n")}}}\n`;
}

/** Newest stamp among rows and laps; 0 without any. A damaged row must not keep the others from being saved. */
export function newestStamp(rows: AllRows): number {
  let newest = 0;
  const see = (row: { readonly updatedAt?: unknown } | null) => {
    const at = row?.updatedAt;
    if (typeof at === "number" && Number.isSafeInteger(at) && at > newest) newest = at;
  };
  for (const table of tableNames) for (const row of rows[table]) see(row);
  for (const { laps } of rows.runs) for (const lap of Array.isArray(laps) ? laps : []) see(lap);
  return newest;
}

/** A backup that is whole; its rows are still to be migrated and checked one by one. */
export interface Backup {
  readonly title: string;
  readonly schema: number;
  /** Newest stamp in it, epoch ms; 0 where it is not known. */
  readonly madeAt: number;
  readonly tables: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>>;
  /** Whether the checksum was there and could be computed here; false means only the counts were compared. */
  readonly isVerified: boolean;
}

/** Whether a text is a backup file, or the beginning of one. */
export function isBackupText(text: string): boolean {
  return (
    text
      .replace(/^\uFEFF/, "")
      .trimStart()
      .startsWith("{") && text.includes(`"kind":"${kind}"`)
  );
}

export interface KnownSchemas {
  readonly lowest: number;
  readonly newest: number;
  readonly sha256: Sha256;
}

const again = "Choose the file or copy the text again, or save a new backup where the logbook is.";

/** Reads a backup file, or says what is wrong with it: nothing is taken from a file that is not whole. */
export async function readBackup(
  text: string,
  { lowest, newest, sha256 }: KnownSchemas,
): Promise<Reading<{ readonly backup: Backup }>> {
  const bare = text.replace(/^\uFEFF/, "");
  if (bare.trim() === "") return refused("The file is empty.", again);
  const parsed = parsedFrom(bare);
  if (parsed === undefined)
    return bare.trimStart().startsWith("{")
      ? refused(`This is not a complete Lap Ledger backup: ${whereItEnds(bare)}.`, again)
      : refused("This is not a Lap Ledger backup: it holds no rows.", again);
  if (!isObject(parsed) || own(parsed, "kind") !== kind)
    return refused("This is from another app: it does not say that it is a Lap Ledger backup.", again);

  const schema = own(parsed, "schema");
  if (!isCount(schema) || schema < lowest)
    return refused("This backup does not say which version made it.", again);
  if (schema > newest)
    return refused(
      `This backup was made by a newer version of Lap Ledger: schema ${schema}, this app reads up to ${newest}.`,
      "Reload to get the newer version, then restore.",
    );

  const [title, madeAt, counts] = [own(parsed, "title"), own(parsed, "madeAt"), own(parsed, "counts")];
  const tables = own(parsed, "tables");
  if (typeof title !== "string" || !isCount(madeAt) || !isObject(counts) || !areTables(tables))
    return refused("This is not a complete Lap Ledger backup: a part of it is missing.", again);
  const miscounted = wrongCount(tables, counts);
  if (miscounted !== undefined)
    return refused(`This is not a complete Lap Ledger backup: ${miscounted}.`, again);
  const sum = own(parsed, "sha256");
  if (sum !== undefined && typeof sum !== "string")
    return refused("This backup was changed after it was made: its checksum is none.", again);
  const isVerified = sum !== undefined && sha256 !== undefined;
  if (isVerified && !(await hasSum(tables, sum, sha256)))
    return refused("This backup was changed after it was made: its checksum does not fit its rows.", again);
  return {
    ok: true,
    backup: {
      title: [...title].slice(0, mostOfTitle).join(""),
      schema,
      // An instant no calendar holds is not known.
      madeAt: isStorableInstant(madeAt) ? madeAt : 0,
      tables,
      isVerified,
    },
  };
}

/** Which number of rows is not as it was counted, in words; undefined when all are. */
function wrongCount(tables: Backup["tables"], counts: Fields): string | undefined {
  for (const table of new Set([...Object.keys(counts), ...Object.keys(tables)])) {
    const rows = Object.hasOwn(tables, table) ? (tables[table]?.length ?? 0) : 0;
    const count = own(counts, table);
    if (count === rows || (count === undefined && rows === 0)) continue;
    const name = [...table].slice(0, longestTableName).join("");
    return isCount(count)
      ? `it should hold ${count} rows of ${name}, it holds ${rows}`
      : `it does not say how many rows of ${name} it holds`;
  }
  return undefined;
}

function refused(wrong: string, right: string): Reading<never> {
  return { ok: false, problem: { at: 0, length: 0, wrong, right } };
}

function parsedFrom(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Where a broken file ends, in words: the last table it had begun. */
function whereItEnds(text: string): string {
  const begun = tableNames.filter((table) => text.includes(`\n"${table}":[`)).at(-1);
  const signs = `it breaks off or is damaged; ${text.length.toLocaleString("en")} signs were read`;
  return begun === undefined ? signs : `${signs}, the last of them in the table ${begun}`;
}

async function hasSum(tables: object, sum: string, sha256: NonNullable<Sha256>): Promise<boolean> {
  try {
    return (await sha256(canonicalText(tables))) === sum;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

type Fields = Readonly<Record<string, unknown>>;

function isObject(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A field the file itself holds; never one every object has. */
function own(value: Fields, field: string): unknown {
  return Object.hasOwn(value, field) ? value[field] : undefined;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function areTables(value: unknown): value is Readonly<Record<string, readonly Fields[]>> {
  return isObject(value) && Object.values(value).every((rows) => Array.isArray(rows) && rows.every(isObject));
}
