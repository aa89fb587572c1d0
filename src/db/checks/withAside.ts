import { type AsideRow, asideRow, type Id, tableNames } from "#domain";
import { newestSchema } from "../migrations/migrations.ts";
import type { CheckedRows } from "./checkRows.ts";

/**
 * Checked rows of a file, joined by those it has set aside itself and those that cannot be taken, so that none is left out
 * for good.
 * @param tables what the file holds, brought to the newest schema
 */
export function withAside(
  tables: Readonly<Record<string, readonly unknown[]>>,
  { rows, bad }: CheckedRows,
): CheckedRows {
  const aside = new Map<Id, AsideRow>();
  for (const row of Object.hasOwn(tables, "aside") ? (tables["aside"] ?? []) : []) {
    const read = readAside(row);
    if (read !== undefined) aside.set(read.id, read);
  }
  for (const { table, why, row } of bad) {
    if (!isTable(table) || typeof row !== "object" || row === null) continue;
    const kept = asideRow(table, row, why, newestSchema);
    aside.set(kept.id, kept);
  }
  return { rows: aside.size === 0 ? rows : { ...rows, aside: [...aside.values()] }, bad };
}

const isTable = (table: unknown) => (tableNames as readonly unknown[]).includes(table);
const longestWhy = 400;

/** A row set aside as a file holds it: nothing in it is believed but that it is one. */
function readAside(value: unknown): AsideRow | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { id, table, schema, why, row } = value as { readonly [F in keyof AsideRow]?: unknown };
  if (typeof table !== "string" || !(table === "laps" || isTable(table))) return undefined;
  if (typeof schema !== "number" || !Number.isSafeInteger(schema)) return undefined;
  const reason = typeof why === "string" ? why.slice(0, longestWhy) : "";
  if (typeof row === "object" && row !== null) return asideRow(table, row, reason, schema);
  return typeof id === "string" && /^[0-9a-f]{16}$/.test(id) ? { id, table, schema, why: reason } : undefined;
}
