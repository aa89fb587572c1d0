/** The rooms of the house and who may import whom, as data. The tests beside this file enforce it. */
export interface Room {
  /** Rooms it may import, all through their face. */
  readonly rooms: readonly string[];
  /** Rooms it may import types from, and nothing else. */
  readonly typesOf?: readonly string[];
  /** Packages it may import. */
  readonly packages: readonly string[];
  /** No screen, no database, no clock, no chance. */
  readonly isPure?: true;
  /** Opened file by file (`#ui/Button.tsx`) instead of through one index. */
  readonly isShelf?: true;
}

const react = ["react", "react-dom", "react/jsx-runtime"];
const core = ["domain", "combo", "entry", "stats", "physics", "words"];

export const rooms: Readonly<Record<string, Room>> = {
  domain: { rooms: [], packages: [], isPure: true },
  numbers: { rooms: [], packages: [], isPure: true },
  combo: { rooms: ["domain"], packages: [], isPure: true },
  entry: { rooms: ["domain", "numbers"], packages: [], isPure: true },
  stats: { rooms: ["domain", "numbers", "combo", "physics"], packages: ["pure-rand"], isPure: true },
  physics: { rooms: ["domain", "numbers"], packages: [], isPure: true },
  words: { rooms: ["domain", "combo", "stats", "physics"], packages: [], isPure: true },
  files: { rooms: ["domain", "combo", "entry"], packages: ["valibot", "papaparse"] },
  db: { rooms: ["domain", "combo"], packages: ["dexie", "valibot", "uuid"] },
  state: { rooms: ["domain"], packages: [...react, "zustand"], isShelf: true },
  live: {
    rooms: ["domain", "combo", "stats", "physics", "files", "db", "state"],
    packages: [...react, "dexie", "dexie-react-hooks"],
  },
  ui: { rooms: ["domain"], packages: [...react, "@fontsource-variable/source-sans-3"], isShelf: true },
  charts: {
    rooms: ["domain", "words", "files", "ui"],
    typesOf: ["stats", "physics"],
    packages: [...react, "recharts"],
    isShelf: true,
  },
  screens: {
    rooms: [...core, "files", "db", "live", "state", "ui", "charts"],
    packages: [...react, "zustand"],
  },
  app: {
    rooms: [...core, "files", "db", "live", "state", "ui", "charts", "screens"],
    packages: [...react, "zustand", "virtual:pwa-register"],
  },
};

/**
 * The imports that go past a face. The demo leaves `src`: its logbook, fetched when asked for, and its picture; the rescue takes files one by one,
 * because a face would bring along what may be failing.
 */
export const exceptions: readonly { readonly file: string; readonly specifier: string }[] = [
  { file: "state/demoAddress.ts", specifier: "../../demo-data/demo-logbook.json?url" },
  { file: "screens/log/start/DemoPicture.tsx", specifier: "../../../../demo-data/picture.json" },
  { file: "app/rescueWorker.ts", specifier: "../db/rawRows.ts" },
  { file: "app/rescueWorker.ts", specifier: "../files/backup.ts" },
  { file: "app/rescueWorker.ts", specifier: "../files/fileName.ts" },
  { file: "app/rescueWorker.ts", specifier: "../files/sha256.ts" },
];
