import * as v from "valibot";
import type { TableName, Tables } from "#domain";
import { rowSchemas } from "./rowSchemas.ts";
import { sayIssue } from "./sayIssue.ts";

const deepest = 16;

/** The row, or why it cannot be taken: "laps.3.ms: …". Fields it does not know are kept, dangerous names refused. */
export function checkRow<T extends TableName>(
  table: T,
  row: unknown,
): { readonly ok: true; readonly row: Tables[T] } | { readonly ok: false; readonly why: string } {
  const danger = dangerIn(row, 0);
  if (danger !== undefined) return { ok: false, why: danger };
  const { success, issues } = v.safeParse(rowSchemas[table], row, { abortEarly: true });
  if (success) return { ok: true, row: row as Tables[T] };
  const [issue] = issues;
  const path = v.getDotPath(issue);
  const why = sayIssue(issue);
  return { ok: false, why: path === null ? why : `${path}: ${why}` };
}

/** A field name that every object has of itself, or nesting no row has. */
function dangerIn(value: unknown, depth: number): string | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  if (depth > deepest) return `nested deeper than ${deepest} levels`;
  for (const [key, inner] of Object.entries(value)) {
    if (key in Object.prototype) return `a field named ${key}`;
    const danger = dangerIn(inner, depth + 1);
    if (danger !== undefined) return danger;
  }
  return undefined;
}
