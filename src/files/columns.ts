/** What a column of a table of laps may hold. */
export const columnKinds = [
  {
    kind: "date",
    word: "date",
    heads: ["date", "day", "datum", "tag", "fecha", "dia", "data", "jour", "datetime", "timestamp"],
  },
  {
    kind: "clock",
    word: "time of day",
    heads: ["time of day", "clock", "start", "started", "start time", "uhrzeit", "heure", "hora", "ora"],
  },
  {
    kind: "car",
    word: "car",
    heads: ["car", "vehicle", "auto", "wagen", "fahrzeug", "voiture", "coche", "macchina"],
  },
  {
    kind: "track",
    word: "track",
    heads: ["track", "circuit", "course", "venue", "strecke", "rennstrecke", "piste", "pista", "circuito"],
  },
  { kind: "layout", word: "layout", heads: ["layout", "configuration", "config", "variant", "track layout"] },
  {
    kind: "time",
    word: "lap time",
    heads: [
      "lap time",
      "laptime",
      "time",
      "rundenzeit",
      "zeit",
      "temps",
      "temps au tour",
      "tiempo",
      "tempo",
      "seconds",
      "seconds counted",
      "ms",
      "lap time ms",
    ],
  },
  { kind: "counted", word: "what the lap counts as, seconds", heads: ["seconds counted"] },
  {
    kind: "lap",
    word: "lap number",
    heads: [
      "lap",
      "lap number",
      "lap no",
      "lap nr",
      "lap #",
      "no",
      "nr",
      "#",
      "number",
      "runde",
      "tour",
      "vuelta",
      "giro",
    ],
  },
  { kind: "run", word: "run number", heads: ["run", "run number", "run no", "stint"] },
  {
    kind: "session",
    word: "session of the day",
    heads: ["session", "session number", "session no", "sitting"],
  },
  { kind: "remarks", word: "remarks", heads: ["remarks", "remark", "flags", "incidents", "mistakes"] },
  {
    kind: "note",
    word: "note on the lap",
    heads: [
      "note",
      "notes",
      "comment",
      "comments",
      "lap note",
      "notiz",
      "bemerkung",
      "kommentar",
      "remarque",
      "nota",
    ],
  },
  {
    kind: "sessionNote",
    word: "note on the session",
    heads: ["session note", "session notes", "session comment"],
  },
  { kind: "conditions", word: "conditions", heads: ["conditions", "weather", "wetter", "meteo"] },
  { kind: "focus", word: "focus", heads: ["focus"] },
  {
    kind: "runKind",
    word: "kind of run",
    heads: ["kind", "run kind", "kind of run", "type", "run type", "session type"],
  },
  { kind: "effort", word: "effort", heads: ["effort"] },
  { kind: "surface", word: "surface", heads: ["surface", "wet dry", "dry wet"] },
  { kind: "tyres", word: "tyres", heads: ["tyres", "tyre", "tires", "tire", "compound", "reifen", "pneus"] },
  { kind: "fuel", word: "fuel, litres", heads: ["fuel", "fuel litres", "fuel l", "litres"] },
  { kind: "setup", word: "set-up", heads: ["setup", "set up", "set-up"] },
  { kind: "assists", word: "assists", heads: ["assists", "aids"] },
  { kind: "guest", word: "guest driver", heads: ["guest", "guest driver"] },
  { kind: "guestName", word: "name of the guest", heads: ["guest name", "name of the guest"] },
  { kind: "runNote", word: "note on the run", heads: ["run note", "run notes"] },
  { kind: "source", word: "how the time is known", heads: ["known by", "source"] },
  { kind: "notBest", word: "not a PB", heads: ["not best", "not a pb"] },
  { kind: "odd", word: "confirmed as odd", heads: ["confirmed as odd"] },
  { kind: "zone", word: "time zone", heads: ["zone", "time zone", "timezone"] },
] as const;

export type FixedKind = (typeof columnKinds)[number]["kind"];
/** A column's kind; `sector 2` is the time of the second sector, `none` is left out. */
export type ColumnKind = FixedKind | `sector ${number}` | "none";

export const mostSectors = 30;

/** Whether a text names a kind, as one that was remembered may no longer do. */
export function isColumnKind(text: string): text is ColumnKind {
  return text === "none" || sectorOf(text) !== undefined || columnKinds.some(({ kind }) => kind === text);
}

/** Number of the sector a column holds; undefined for other kinds. */
export function sectorOf(kind: string): number | undefined {
  const number = Number(/^sector (\d{1,2})$/.exec(kind)?.[1]);
  return number >= 1 && number <= mostSectors ? number : undefined;
}

/** "lap time", "sector 2", "left out" */
export function columnWord(kind: ColumnKind): string {
  return columnKinds.find((one) => one.kind === kind)?.word ?? (kind === "none" ? "left out" : kind);
}
