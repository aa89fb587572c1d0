import { posix } from "node:path";
import type { Room } from "./rooms.ts";
import type { Import, Source } from "./sources.ts";

interface House {
  readonly rooms: Readonly<Record<string, Room>>;
  readonly exceptions: readonly { readonly file: string; readonly specifier: string }[];
}

const roomOf = (path: string) => (path.includes("/") ? path.slice(0, path.indexOf("/")) : "");

/** One sentence for each import that goes the wrong way. */
export function wrongImports(sources: readonly Source[], house: House): string[] {
  return sources.flatMap((source) =>
    source.imports.flatMap((one) => {
      const complaint = complaintOf(source.path, one, house);
      return complaint === undefined ? [] : [`${source.path} imports ${one.specifier}: ${complaint}`];
    }),
  );
}

function complaintOf(
  path: string,
  { specifier, isType }: Import,
  { rooms, exceptions }: House,
): string | undefined {
  const from = roomOf(path);
  if (from === "") return path === "main.tsx" ? undefined : "only main.tsx stands outside the rooms";
  const room = rooms[from];
  if (room === undefined) return `${from} is not a room of the house`;
  if (exceptions.some((one) => one.file === path && one.specifier === specifier)) return undefined;
  if (specifier.startsWith(".")) {
    const target = posix.join(posix.dirname(path), specifier);
    if (from === "app" && target.startsWith("screens/")) return undefined;
    if (roomOf(target) !== from) return "a relative path does not leave its room; use the room's face";
    const [mine, theirs] = [path.split("/")[1], target.split("/")[1]];
    return from === "screens" && mine !== theirs ? "one screen never imports another" : undefined;
  }
  if (specifier.startsWith("#")) {
    const to = specifier.slice(1).split("/")[0] ?? "";
    const target = rooms[to];
    if (target === undefined) return `${to} is not a room of the house`;
    if ((specifier.includes("/") ? true : undefined) !== target.isShelf)
      return `${to} is not entered this way`;
    if (room.rooms.includes(to)) return undefined;
    if (room.typesOf?.includes(to)) return isType ? undefined : `${from} may import only types of ${to}`;
    return `${from} may not import ${to}`;
  }
  const isAllowed = room.packages.some((name) => specifier === name || specifier.startsWith(`${name}/`));
  return isAllowed ? undefined : `${from} may not import this package`;
}

/** Chains of imports, of types too, by relative paths and through faces, that come back to where they began. */
export function cycles(sources: readonly Source[]): string[] {
  const edges = new Map(
    sources.map(({ path, imports }) => [
      path,
      imports.flatMap(({ specifier }) => {
        if (specifier.startsWith(".")) return [posix.join(posix.dirname(path), specifier)];
        if (!specifier.startsWith("#")) return [];
        return [specifier.includes("/") ? specifier.slice(1) : `${specifier.slice(1)}/index.ts`];
      }),
    ]),
  );
  const done = new Set<string>();
  const found: string[] = [];
  const walk = (path: string, trail: readonly string[]) => {
    if (trail.includes(path)) {
      found.push([...trail.slice(trail.indexOf(path)), path].join(" → "));
      return;
    }
    if (done.has(path)) return;
    for (const next of edges.get(path) ?? []) walk(next, [...trail, path]);
    done.add(path);
  };
  for (const path of edges.keys()) walk(path, []);
  return found;
}

const outside =
  /\b(Date\.now|Math\.random|window|document|navigator|localStorage|performance|fetch|console|crypto|setTimeout)\b|new Date\(\s*\)/;

/** One sentence for each name of the outside world in a pure room. Comments do not count. */
export function impurities(sources: readonly Source[], rooms: Readonly<Record<string, Room>>): string[] {
  return sources.flatMap((source) => {
    if (rooms[roomOf(source.path)]?.isPure === undefined) return [];
    const code = source.text
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .replace(/\/\/.*$/gm, "")
      .replace(/"(?:[^"\\\n]|\\.)*"|`(?:[^`\\$]|\\.|\$(?!\{))*`/g, '""');
    const match = outside.exec(code);
    return match === null
      ? []
      : [`${source.path} names ${match[0]}: ${roomOf(source.path)} is pure, take it as an argument`];
  });
}
