import type { AllRows, Lap, Stamped, TableName } from "#domain";

/**
 * What is wrong with rows that were taken from a file: told by loops and limits of its own, which share nothing with the
 * checks of the app. Limits: 0.1 s to 24 h a lap (common practice, no source), screens of 5 cm to 10 m, the years 1970 to
 * 2199, nothing driven after the day after the newest stamp of its row, or after tomorrow.
 * @param now epoch ms
 */
export function whatIsWrong(rows: AllRows, now: number): string[] {
  const wrong: string[] = [];
  const say = (table: string, id: unknown, what: string) => wrong.push(`${table} ${String(id)}: ${what}`);
  linksAreRight(rows, say);
  const day = 86_400_000;
  const isDay = (date: string) =>
    /^\d{4}-\d\d-\d\d$/.test(date) && new Date(`${date}T00:00:00Z`).toISOString().slice(0, 10) === date;
  const written = ({ createdAt, updatedAt, had = [] }: Stamped) =>
    Math.max(now, createdAt, updatedAt, ...had);
  const dated = (date: unknown, table: string, row: Stamped, isDriven: boolean) => {
    const { id } = row;
    if (date === undefined) return;
    if (typeof date !== "string" || !isDay(date)) say(table, id, `no date: ${String(date)}`);
    else if (date < "1970-01-01" || date > "2199-12-31") say(table, id, `far date: ${date}`);
    else if (isDriven && Date.parse(date) > written(row) + 2 * day) say(table, id, `after tomorrow: ${date}`);
  };
  const at = (instant: unknown, table: string, row: Stamped, isDriven: boolean) => {
    const { id } = row;
    if (instant === undefined) return;
    if (typeof instant !== "number" || !Number.isInteger(instant)) say(table, id, "no instant");
    else if (instant < -day || instant > Date.UTC(2200, 0, 2)) say(table, id, `far instant: ${instant}`);
    else if (isDriven && instant > written(row) + 3 * day)
      say(table, id, `an instant after tomorrow: ${instant}`);
  };
  const time = (ms: unknown, table: string, id: unknown, least = 100) => {
    if (ms !== undefined && !(Number.isInteger(ms) && Number(ms) >= least && Number(ms) <= 86_400_000))
      say(table, id, `no lap time: ${String(ms)}`);
  };
  const between = (value: unknown, least: number, most: number, table: string, id: unknown) => {
    if (value !== undefined && !(typeof value === "number" && value >= least && value <= most))
      say(table, id, `${String(value)} is not from ${least} to ${most}`);
  };
  for (const row of rows.sessions) {
    const { id, date, startedAt, endedAt, zone, targetMs } = row;
    dated(date, "sessions", row, true);
    at(startedAt, "sessions", row, true);
    at(endedAt, "sessions", row, true);
    time(targetMs, "sessions", id);
    if (typeof zone !== "string" || zone.length > 64) say("sessions", id, "no zone");
  }
  const lapIs = (lap: Lap, table: string) => {
    time(lap.ms, table, lap.id);
    for (const sector of lap.sectors ?? []) time(sector, table, lap.id, 1);
    if (lap.sectors !== undefined && lap.ms !== undefined && lap.sectors.length > 0) {
      const sum = lap.sectors.reduce((all, one) => all + one, 0);
      if (Math.abs(sum - lap.ms) > 500 * lap.sectors.length + 502)
        say(table, lap.id, `sectors sum to ${sum}`);
    }
    if (!Number.isFinite(lap.n)) say(table, lap.id, "no place");
    for (const remark of lap.remarks) between(remark.corner, 1, 999, table, lap.id);
  };
  for (const run of rows.runs) {
    at(run.startedAt, "runs", run, true);
    at(run.endedAt, "runs", run, true);
    time(run.summary?.bestMs, "runs", run.id);
    time(run.summary?.usualMs, "runs", run.id);
    between(run.summary?.laps, 0, 9999, "runs", run.id);
    between(run.fuelLitres, 0, 1000, "runs", run.id);
    for (const lap of run.laps) lapIs(lap, "laps");
  }
  for (const { id, ms } of rows.references) time(ms, "references", id);
  for (const row of rows.rigs) {
    const { id, from, screen, view, wheel } = row;
    dated(from, "rigs", row, false);
    for (const length of [screen.width, screen.height]) between(length, 0.05, 10, "rigs", id);
    between(screen.eyeDistance, 0.1, 10, "rigs", id);
    between(view.degrees, 1, 360, "rigs", id);
    between(wheel.torque, 0, 100, "rigs", id);
  }
  for (const row of rows.targets) {
    dated(row.by, "targets", row, false);
    dated(row.setOn, "targets", row, true);
    at(row.setAt, "targets", row, true);
  }
  for (const row of rows.pages) at(row.from, "pages", row, true);
  for (const row of rows.cornerReviews) dated(row.on, "cornerReviews", row, true);
  for (const row of rows.forecasts) {
    dated(row.madeOn, "forecasts", row, true);
    dated(row.by, "forecasts", row, false);
  }
  for (const { id, length } of rows.layouts) between(length, 50, 100_000, "layouts", id);
  for (const { id } of rows.preferences)
    if (id !== "00000000-0000-7000-8000-000000000001") say("preferences", id, "not their id");
  for (const [table, list] of Object.entries(rows) as [TableName, readonly object[]][])
    for (const row of list) {
      if (Object.getPrototypeOf(row) !== Object.prototype) say(table, "?", "its prototype is another");
      if (JSON.stringify(row).includes('"__proto__":')) say(table, "?", "a field named __proto__");
    }
  return wrong;
}

type Say = (table: string, id: unknown, what: string) => void;

/** Every id stands once, and every link leads into its own table; a link a row can be without may lead nowhere. */
function linksAreRight(rows: AllRows, say: Say): void {
  const home = new Map<string, string>();
  const enter = (id: string, table: string) => {
    if (home.has(id)) say(table, id, `its id stands in ${home.get(id)} too`);
    home.set(id, table);
  };
  for (const [table, list] of Object.entries(rows)) for (const { id } of list) enter(id, table);
  for (const { laps } of rows.runs) for (const { id } of laps) enter(id, "laps");
  const must = (from: string, id: string, link: string, table: string) => {
    if (home.get(link) !== table) say(from, id, `names ${home.get(link) ?? "nothing"} as one of ${table}`);
  };
  const may = (from: string, id: string, link: string | undefined, table: string) => {
    if (link !== undefined && home.has(link)) must(from, id, link, table);
  };
  for (const { id, trackId } of rows.layouts) must("layouts", id, trackId, "tracks");
  for (const { id, carId, layoutId } of rows.combos) {
    must("combos", id, carId, "cars");
    must("combos", id, layoutId, "layouts");
  }
  for (const table of [
    "pages",
    "references",
    "sessions",
    "runs",
    "targets",
    "forecasts",
    "rigTests",
    "cornerReviews",
  ] as const)
    for (const { id, comboId } of rows[table]) must(table, id, comboId, "combos");
  for (const { id, sessionId, rigId } of rows.runs) {
    must("runs", id, sessionId, "sessions");
    may("runs", id, rigId, "rigs");
  }
  for (const { id, targetId } of rows.forecasts) must("forecasts", id, targetId, "targets");
  for (const { id, sessionId } of rows.cornerReviews) may("cornerReviews", id, sessionId, "sessions");
  for (const { id, rigA, rigB, pairs } of rows.rigTests) {
    for (const rig of [rigA, rigB]) may("rigTests", id, rig, "rigs");
    for (const { runA, runB } of pairs) for (const run of [runA, runB]) may("rigTests", id, run, "runs");
  }
}
