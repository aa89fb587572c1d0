import type { Id, TableName } from "#domain";

const links: Partial<Readonly<Record<TableName, readonly (readonly [string, string])[]>>> = {
  layouts: [["trackId", "track"]],
  combos: [
    ["carId", "car"],
    ["layoutId", "layout"],
  ],
  pages: [["comboId", "combo"]],
  references: [["comboId", "combo"]],
  sessions: [["comboId", "combo"]],
  runs: [
    ["sessionId", "session"],
    ["comboId", "combo"],
  ],
  targets: [["comboId", "combo"]],
  forecasts: [
    ["targetId", "target"],
    ["comboId", "combo"],
  ],
  rigTests: [["comboId", "combo"]],
  cornerReviews: [["comboId", "combo"]],
};

/** The rows that one row cannot be without, each with its word. */
export function parentsOf(table: TableName, row: object): { readonly id: Id; readonly word: string }[] {
  const fields = row as Readonly<Record<string, unknown>>;
  return (links[table] ?? []).map(([field, word]) => ({ id: String(fields[field]), word }));
}

/** Fields by which a row names another one that it can be without. */
const loose: Partial<Readonly<Record<TableName, readonly string[]>>> = {
  runs: ["rigId"],
  rigTests: ["rigA", "rigB"],
  cornerReviews: ["sessionId"],
};

/** Every row that one row names. */
export function linksOf(table: TableName, row: object): Id[] {
  const fields = row as Readonly<Record<string, unknown>>;
  const named = (loose[table] ?? []).map((field) => fields[field]);
  return [...parentsOf(table, row).map(({ id }) => id), ...named.filter((id) => typeof id === "string")];
}
