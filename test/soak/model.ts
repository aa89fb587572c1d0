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

  /** Runs that hold laps, of every session; what `stored` gives must be the same. */
  get held(): number[][][] {
    return inSomeOrder(this.sessions.map((runs) => runs.filter((laps) => laps.length > 0)));
  }
}

/** Under a clock that jumps the sessions have no order that both sides know: both are sorted by what they hold. */
const inSomeOrder = (sessions: readonly number[][][]) =>
  sessions.toSorted((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));

type Row = Readonly<Record<string, unknown>>;
interface LapRow {
  readonly n: number;
  readonly id: string;
  readonly ms?: number;
  readonly deletedAt?: number;
}

/** The same from the rows of the browser: live laps of live runs, runs and laps in the order they were driven and typed in. */
export function stored(sessions: readonly Row[], runs: readonly Row[]): number[][][] {
  const held = sessions.map((session) =>
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
  return inSomeOrder(held);
}
