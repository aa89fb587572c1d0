/** What the logbook should hold, kept outside the browser: sessions of runs of lap times in ms. */
export class Model {
  readonly sessions: number[][][] = [];

  /** The run being driven; a run without laps is not there until its first one. */
  get run(): number[] {
    const run = this.sessions.at(-1)?.at(-1);
    if (run === undefined) throw new Error("no session has been started");
    return run;
  }

  startSession(): void {
    this.sessions.push([[]]);
  }

  endRun(): void {
    this.sessions.at(-1)?.push([]);
  }

  /** Runs that hold laps, session by session; what `stored` gives must be the same. */
  get held(): number[][][] {
    return this.sessions.map((runs) => runs.filter((laps) => laps.length > 0));
  }
}

type Row = Readonly<Record<string, unknown>>;
interface LapRow {
  readonly n: number;
  readonly id: string;
  readonly ms?: number;
  readonly deletedAt?: number;
}

/** The same from the rows of the browser: live laps of live runs, in the order the driver sees. */
export function stored(sessions: readonly Row[], runs: readonly Row[]): number[][][] {
  const byStart = [...sessions].sort((a, b) => Number(a["startedAt"]) - Number(b["startedAt"]));
  return byStart.map((session) =>
    runs
      .filter((run) => run["sessionId"] === session["id"] && run["deletedAt"] === undefined)
      .sort((a, b) => Number(a["n"]) - Number(b["n"]))
      .map((run) =>
        [...(run["laps"] as readonly LapRow[])]
          .filter(({ deletedAt }) => deletedAt === undefined)
          .sort((a, b) => a.n - b.n || (a.id < b.id ? -1 : 1))
          .map(({ ms = Number.NaN }) => ms),
      )
      .filter((laps) => laps.length > 0),
  );
}
