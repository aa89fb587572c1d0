import { expect, test } from "vitest";
import { datedFile, datedName, newestOfOthers, writeDated } from "#files";
import { aFolder } from "../../support/aFolder.ts";

const at = (n: number) => Date.UTC(2026, 10, 25, 17, n);
const bytes = (n: number) => new TextEncoder().encode(`state ${n}`);
const write = (folder: ReturnType<typeof aFolder>, n: number, tag = "a3f9") =>
  writeDated(folder.handle, { name: datedName("Evenings", tag, at(n), "json.gz"), tag }, bytes(n));

test("a file is named by title, device and instant, and read again from its name", () => {
  const name = datedName("Evenings / rain", "a3f9", at(5), "json.gz");
  expect(name).toBe("Evenings-rain-a3f9-2026-11-25T170500Z.json.gz");
  expect(datedFile(name)).toEqual({ name, tag: "a3f9", at: "2026-11-25T170500Z" });
  expect(datedFile(datedName("x".repeat(300), "a3f9", at(5), "json"))).toMatchObject({ tag: "a3f9" });
  expect(datedFile(datedName("…", "a3f9", at(5), "json"))).toMatchObject({ tag: "a3f9" });
  expect(datedFile("Lap-Ledger-Evenings-2026-11-25.json")).toBeUndefined();
});

test("the last ten of this device stay; those of others and the driver's own files are not touched", async () => {
  const folder = aFolder({ "letter.txt": "dear", "Evenings-2026-11-25.json": "{}" });
  await write(folder, 1, "zzzz");
  for (let n = 1; n <= 12; n += 1) await write(folder, n);
  const names = folder.names();
  expect(names.filter((name) => datedFile(name)?.tag === "a3f9")).toHaveLength(10);
  expect(names).not.toContain(datedName("Evenings", "a3f9", at(2), "json.gz"));
  expect(names).toContain(datedName("Evenings", "a3f9", at(3), "json.gz"));
  expect(names).toEqual(
    expect.arrayContaining([
      "letter.txt",
      "Evenings-2026-11-25.json",
      datedName("Evenings", "zzzz", at(1), "json.gz"),
    ]),
  );
});

test("a write that fails half way leaves every older file, and no half one", async () => {
  for (const fails of ["createWritable", "write", "close"] as const) {
    const folder = aFolder({});
    for (let n = 1; n <= 10; n += 1) await write(folder, n);
    const before = folder.names();
    folder.failNext(fails);
    await expect(write(folder, 11)).rejects.toMatchObject({ name: "QuotaExceededError" });
    expect(folder.names()).toEqual(before);
  }
});

test("of each other device the newest file is found, none of this one", async () => {
  const folder = aFolder({});
  for (const [n, tag] of [
    [1, "bbbb"],
    [3, "bbbb"],
    [2, "cccc"],
    [4, "a3f9"],
  ] as const)
    await write(folder, n, tag);
  expect(
    (await newestOfOthers(folder.handle, "a3f9", "2026-11-25")).map(({ tag, at: when }) => [tag, when]),
  ).toEqual([
    ["bbbb", "2026-11-25T170300Z"],
    ["cccc", "2026-11-25T170200Z"],
  ]);
});

/** A file of a clock that stood in 2036. */
const ahead = (folder: ReturnType<typeof aFolder>, n: number, tag = "a3f9") =>
  writeDated(
    folder.handle,
    { name: datedName("Evenings", tag, Date.UTC(2036, 2, 4, 17, n), "json.gz"), tag },
    bytes(n),
  );

test("a file just written is never let go, and files dated 2036 push out no good one", async () => {
  const folder = aFolder({});
  for (let n = 1; n <= 10; n += 1) await ahead(folder, n);
  for (let n = 1; n <= 10; n += 1) {
    await write(folder, n);
    expect(folder.names()).toContain(datedName("Evenings", "a3f9", at(n), "json.gz"));
    expect(folder.names()).toHaveLength(10);
  }
  expect(folder.names().filter((name) => name.includes("2036"))).toEqual([]);
});

test("a file of another device dated 2036 does not hide what that device wrote since", async () => {
  const folder = aFolder({});
  await ahead(folder, 1, "bbbb");
  await ahead(folder, 2, "bbbb");
  await write(folder, 3, "bbbb");
  await write(folder, 4, "bbbb");
  const found = await newestOfOthers(folder.handle, "a3f9", "2026-11-25");
  expect(found.map(({ at: when }) => when)).toEqual(["2036-03-04T170200Z", "2026-11-25T170400Z"]);
});

test("a file whose name holds an instant that does not exist is none of ours", () => {
  expect(datedFile("Evenings-a3f9-2026-99-99T170500Z.json")).toBeUndefined();
});
