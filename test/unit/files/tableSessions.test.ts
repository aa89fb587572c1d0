import { expect, test } from "vitest";
import { readLaps, readTable, tableSessions } from "#files";

const about = { zone: "Europe/Berlin", dayStartsAt: 4 };

function sessionsOf(text: string) {
  let made = 0;
  const newId = () => {
    made += 1;
    return `s${made}`;
  };
  const table = readTable(text, {}, { cars: [], tracks: [] });
  const read = readLaps(table, { car: "club hatch", track: "Varnholt Ring" }, "2026-11-25");
  const { sessions, repeated } = tableSessions(read.laps, { ...about, newId });
  const told = sessions.map(({ date, startedAt, isTimeOfDayKnown, runs }) => ({
    date,
    start: new Date(startedAt).toISOString(),
    isTimeOfDayKnown,
    runs: runs.map(({ laps }) => laps.map(({ lap }) => lap.ms)),
  }));
  return { told, repeated, unread: read.unread, sessions };
}

test("laps past midnight belong to the evening before", () => {
  const { told } = sessionsOf(
    "date,lap time\n2026-10-14 23:50,1:23.4\n2026-10-15 00:10,1:23.5\n2026-10-15 21:00,1:23.6\n",
  );
  expect(told).toEqual([
    {
      date: "2026-10-14",
      start: "2026-10-14T21:50:00.000Z",
      isTimeOfDayKnown: true,
      runs: [[83_400, 83_500]],
    },
    { date: "2026-10-15", start: "2026-10-15T19:00:00.000Z", isTimeOfDayKnown: true, runs: [[83_600]] },
  ]);
});

test("without a time of day the session stands at noon, and says that it is not known", () => {
  expect(sessionsOf("date,lap time\n2026-10-14,1:23.4\n").told).toEqual([
    { date: "2026-10-14", start: "2026-10-14T10:00:00.000Z", isTimeOfDayKnown: false, runs: [[83_400]] },
  ]);
});

test("runs follow their numbers and laps theirs, wherever their rows stand", () => {
  const { told } = sessionsOf(
    "date,run,lap,lap time\n2026-10-14,2,1,1:23.4\n2026-10-14,1,2,1:23.5\n2026-10-14,1,1,1:23.6\n",
  );
  expect(told[0]?.runs).toEqual([[83_600, 83_500], [83_400]]);
});

test("a run ends where its tyres or its surface change", () => {
  const { told } = sessionsOf(
    "date,surface,lap time\n2026-10-14,dry,1:23.4\n2026-10-14,dry,1:23.5\n2026-10-14,wet,1:33.6\n",
  );
  expect(told[0]?.runs).toEqual([[83_400, 83_500], [93_600]]);
});

test("a row that repeats a lap in the same place is counted, not taken twice", () => {
  const { told, repeated } = sessionsOf(
    "date,lap,lap time\n2026-10-14,1,1:23.4\n2026-10-14,1,1:23.4\n2026-10-14,2,1:23.4\n",
  );
  expect([told[0]?.runs, repeated]).toEqual([[[83_400, 83_400]], 1]);
});

test("sectors alone add up to the lap, and sectors that do not fit their lap are refused", () => {
  const { told, unread } = sessionsOf(
    "date,lap time,s1,s2\n2026-10-14,,40.1,43.2\n2026-10-14,1:23.3,40.1,43.2\n2026-10-14,1:25.0,40.1,43.2\n2026-10-14,,40.1,\n",
  );
  expect(told[0]?.runs).toEqual([[83_300, 83_300]]);
  expect(unread.map(({ line, wrong }) => `${line} ${wrong}`)).toEqual([
    "4 The sectors add up to 1:23.3, 1.700 s less than “1:25.0”.",
    "5 The lap time is missing, and so is sector 2.",
  ]);
});

test("a lap of a day to come is refused, but for tomorrow, which has begun somewhere", () => {
  const { told, unread } = sessionsOf("date,lap time\n2026-11-26,1:23.4\n2026-11-27,1:23.5\n");
  expect(told[0]?.runs).toEqual([[83_400]]);
  expect(unread.map(({ wrong }) => wrong)).toEqual(["2026-11-27 has not come yet."]);
});

test("different notes of one session are all kept", () => {
  const { sessions } = sessionsOf(
    "date,lap time,session note\n2026-10-14,1:23.4,early\n2026-10-14,1:23.5,late\n2026-10-14,1:23.6,early\n",
  );
  expect(sessions[0]?.note).toBe("early\nlate");
});

test("cells of a million signs are refused like others", () => {
  const long = `1${" ".repeat(1_000_000)}1`;
  const { told, unread } = sessionsOf(
    `date,lap time,remarks,time of day\n${long},1:23.4,,\n2026-10-14,${long},,\n2026-10-14,1:23.4,${long},\n2026-10-14,1:23.4,,${long}\n`,
  );
  expect(told).toEqual([]);
  expect(unread.map(({ line }) => line)).toEqual([2, 3, 4, 5]);
});
