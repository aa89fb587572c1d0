import { createHash } from "node:crypto";
import { noRows, type PlannedRun, type Run, type Session, type Target } from "#domain";
import { writeBackup } from "#files";

const day = 86_400_000;
const lapsOfRun = 10;
const runsOfSession = 5;
const start = Date.UTC(2020, 0, 1, 18);
/** Written down afterwards: what a clock of before the app has dated would stand in no figure. */
const writtenAt = Date.UTC(2026, 5, 1);

/** The line of the plan that the open run drives: more laps than a bench types. */
const line: Omit<PlannedRun, "id"> = {
  ...{ purpose: "Clean laps", kind: "pace", effort: "full", laps: 200 },
  ...{ attendTo: "room to spare at the edges", goodWhen: "180 of 200 laps clean", rule: "mistakes" },
  check: { figure: "clean", value: 180 },
};

/**
 * The backup of a logbook with so many laps of one combo: sessions of five runs of ten laps, one a day, the last one
 * still open. Invented times, the same at every call.
 * @param isPlanned the open session has a plan whose first line its run drives, and the combo two targets
 */
export function backupWithLaps(laps: number, isPlanned = false): Promise<string> {
  let made = 0;
  const id = (at: number) => {
    made += 1;
    const time = at.toString(16).padStart(12, "0");
    const tail = made.toString(16).padStart(12, "0");
    return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${tail}`;
  };
  const stamps = (at: number) => ({ id: id(at), createdAt: writtenAt, updatedAt: writtenAt });
  const car = { ...stamps(start), name: "club hatch" };
  const track = { ...stamps(start), name: "Varnholt Ring" };
  const layout = { ...stamps(start), trackId: track.id, name: "", corners: [] };
  const combo = { ...stamps(start), carId: car.id, layoutId: layout.id };
  const lineIds = [id(start), id(start), id(start)];
  const sessions: Session[] = [];
  const runs: Run[] = [];
  const count = Math.ceil(laps / (lapsOfRun * runsOfSession));
  for (let s = 0; s < count; s++) {
    const at = start + s * day;
    const isLast = s === count - 1;
    const session: Session = {
      ...stamps(at),
      comboId: combo.id,
      startedAt: at,
      isTimeOfDayKnown: true,
      date: new Date(at).toISOString().slice(0, 10),
      zone: "Europe/Berlin",
      focus: "free",
      note: "",
      ...(isLast ? {} : { endedAt: at + day / 24 }),
      ...(isLast && isPlanned && { plan: lineIds.map((of) => ({ ...line, id: of })) }),
    };
    sessions.push(session);
    for (let r = 0; r < runsOfSession; r++) {
      const from = at + r * 900_000;
      runs.push({
        ...stamps(from),
        sessionId: session.id,
        comboId: combo.id,
        n: r + 1,
        startedAt: from,
        kind: "pace",
        effort: "full",
        surface: "dry",
        note: "",
        ...(isLast && r === runsOfSession - 1
          ? isPlanned && { line: lineIds[0] as string }
          : { endedAt: from + 900_000 }),
        laps: Array.from({ length: lapsOfRun }, (_, n) => ({
          ...stamps(from + n * 85_000),
          n: n + 1,
          ms: 84_000 + ((s * 7919 + r * 104_729 + n * 1_299_709) % 1500),
          decimals: 3,
          source: "typed" as const,
          remarks: [],
        })),
      });
    }
  }
  const aTarget = (kind: Target["kind"], value: number): Target => ({
    ...stamps(start),
    ...{ comboId: combo.id, kind, value, setAt: start, setOn: "2020-01-01" },
  });
  const rows = {
    ...noRows,
    cars: [car],
    tracks: [track],
    layouts: [layout],
    combos: [combo],
    sessions,
    runs,
    targets: isPlanned ? [aTarget("best", 83_900), aTarget("median", 84_500)] : [],
  };
  return writeBackup(rows, {
    title: `${laps} laps`,
    schema: 1,
    sha256: async (text) => createHash("sha256").update(text).digest("hex"),
  });
}
