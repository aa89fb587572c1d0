import type { Id, TableName } from "#domain";

/** A field by which a row names another one. */
interface Link {
  readonly field: string;
  /** The table the named row is in. */
  readonly to: TableName;
  /** The named row in the driver's words. */
  readonly word: string;
  /** Whether the row can be without it: a rig that was deleted long ago takes no run with it. */
  readonly isLoose?: true;
}

const car: Link = { field: "carId", to: "cars", word: "car" };
const track: Link = { field: "trackId", to: "tracks", word: "track" };
const layout: Link = { field: "layoutId", to: "layouts", word: "layout" };
const combo: Link = { field: "comboId", to: "combos", word: "combo" };
const session: Link = { field: "sessionId", to: "sessions", word: "session" };
const target: Link = { field: "targetId", to: "targets", word: "target" };
const rig = (field: string): Link => ({ field, to: "rigs", word: "rig", isLoose: true });
const test: Link = { field: "id", to: "rigTests", word: "rig test", isLoose: true };
const run = (field: string): Link => ({ field, to: "runs", word: "run", isLoose: true });

const links: Partial<Readonly<Record<TableName, readonly Link[]>>> = {
  layouts: [track],
  combos: [car, layout],
  pages: [combo],
  references: [combo],
  sessions: [combo],
  runs: [session, combo, rig("rigId")],
  targets: [combo],
  forecasts: [target, combo],
  rigTests: [combo, rig("rigA"), rig("rigB")],
  cornerReviews: [combo, { ...session, isLoose: true }],
  plans: [combo],
};
/** Links of the part that a row holds, or of each where it holds a list of them. */
const inner: Partial<Readonly<Record<TableName, readonly [string, readonly Link[]]>>> = {
  runs: ["rigTest", [test]],
  rigTests: ["pairs", [run("runA"), run("runB")]],
};

/** A row that another one names. */
export interface NamedRow extends Pick<Link, "to" | "word"> {
  readonly id: Id;
  /** The field that names it, by its path: "carId", "rigTest.id", "pairs.2.runA". */
  readonly field: string;
  readonly isLoose: boolean;
}

/** Every row that one row names, and in which table it must be. */
export function rowsNamed(table: TableName, row: object): NamedRow[] {
  const [held = "", innerLinks = []] = inner[table] ?? [];
  const part = (row as Fields)[held];
  return [
    ...namedIn(row, links[table] ?? []),
    ...(Array.isArray(part)
      ? part.flatMap((one: object, index) => namedIn(one, innerLinks, `${held}.${index}.`))
      : typeof part === "object" && part !== null
        ? namedIn(part, innerLinks, `${held}.`)
        : []),
  ];
}

/** The ids of every row that one row names. */
export function linksOf(table: TableName, row: object): Id[] {
  return rowsNamed(table, row).map(({ id }) => id);
}

type Fields = Readonly<Record<string, unknown>>;

function namedIn(row: object, fields: readonly Link[], path = ""): NamedRow[] {
  return fields.flatMap(({ field, to, word, isLoose = false }) => {
    const id = (row as Fields)[field];
    return typeof id === "string" ? [{ id, to, word, isLoose, field: `${path}${field}` }] : [];
  });
}
