import * as v from "valibot";
import type { TableName, Tables } from "#domain";
import { rowSchemas } from "./rowSchemas.ts";
import { sayIssue } from "./sayIssue.ts";

const deepest = 16;

/** What is wrong with a row, and in which field by its path: "laps.3.ms"; no field where it is the row as a whole. */
export interface RowFault {
  readonly field?: string;
  readonly why: string;
}

/** The row, or why it cannot be taken, also in one phrase: "laps.3.ms: …". Fields it does not know are kept, dangerous names refused. */
export function checkRow<T extends TableName>(
  table: T,
  row: unknown,
):
  | { readonly ok: true; readonly row: Tables[T] }
  | { readonly ok: false; readonly why: string; readonly fault: RowFault } {
  const danger = dangerIn(row, 0);
  if (danger !== undefined) return { ok: false, why: danger, fault: { why: danger } };
  const { success, issues } = v.safeParse(rowSchemas[table], row, { abortEarly: true });
  if (success) return { ok: true, row: row as Tables[T] };
  const [issue] = issues;
  const path = v.getDotPath(issue);
  const why = sayIssue(issue);
  if (path === null) return { ok: false, why, fault: { why } };
  return { ok: false, why: `${path}: ${why}`, fault: { field: path, why } };
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
