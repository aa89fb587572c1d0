import { readFile } from "node:fs/promises";
import fc from "fast-check";
import { expect, test } from "vitest";
import { noRows } from "#domain";
import { browserSha256, readBackup, writeBackup } from "#files";

const text = await readFile(new URL("../../fixtures/logbooks/v1.json", import.meta.url), "utf8");
const schemas = { lowest: 1, newest: 1, sha256: browserSha256() };
const problemOf = async (file: string, known = schemas) => {
  const read = await readBackup(file, known);
  return read.ok ? undefined : read.problem.wrong;
};

test("the whole file is read, with its checksum", async () => {
  const read = await readBackup(text, schemas);
  expect(read).toMatchObject({
    ok: true,
    backup: { title: "Evenings at Marlow Fen", schema: 1, isVerified: true },
  });
});

test("a file cut at any of fifty places is said to be incomplete", async () => {
  for (let part = 1; part <= 50; part += 1) {
    const cut = text.slice(0, Math.floor((text.trimEnd().length * part) / 51));
    expect(await problemOf(cut)).toMatch(/^This is not a complete Lap Ledger backup: .*signs were read/);
  }
  expect(await problemOf(text.slice(0, text.indexOf('"targets":[')))).toContain("in the table rigs");
});

const others: readonly (readonly [string, string, RegExp])[] = [
  ["empty", "", /is empty/],
  ["only spaces", " \n\uFEFF", /is empty/],
  ["a table of laps", "lap;time\n1;1:23.456\n", /not a Lap Ledger backup/],
  ["another app's JSON", '{"version":3,"rows":[]}', /from another app/],
  ["a list", "[1,2,3]", /from another app/],
  ["JSON null", "null", /from another app/],
  ["a kind that is inherited only", '{"__proto__":{"kind":"lap-ledger backup"}}', /from another app/],
  ["no schema", '{"kind":"lap-ledger backup"}', /which version made it/],
  [
    "no tables",
    '{"kind":"lap-ledger backup","schema":1,"title":"","madeAt":1,"counts":{}}',
    /a part of it is missing/,
  ],
  [
    "tables that are none",
    '{"kind":"lap-ledger backup","schema":1,"title":"","madeAt":1,"counts":{},"tables":{"runs":[1]}}',
    /a part of it is missing/,
  ],
];

for (const [what, file, wrong] of others)
  test(`a file that is ${what} is refused by name`, async () => {
    expect(await problemOf(file)).toMatch(wrong);
  });

test("a backup made by a newer version is refused with both versions named", async () => {
  expect(await problemOf(text.replace('"schema":1', '"schema":3'))).toBe(
    "This backup was made by a newer version of Lap Ledger: schema 3, this app reads up to 1.",
  );
});

test("a row taken out is noticed by the counts, a time altered by the checksum", async () => {
  const lines = text.split("\n");
  const at = lines.findIndex((line) => line.startsWith('{"carId"'));
  expect(at).toBeGreaterThan(0);
  const without = [
    ...lines.slice(0, at),
    (lines[at] ?? "").replace(/^\{.*\}/, ""),
    ...lines.slice(at + 1),
  ].join("\n");
  expect(await problemOf(without)).toContain("it should hold 1 rows of combos, it holds 0");
  expect(await problemOf(text.replace("83456", "83356"))).toContain("its checksum does not fit");
});

test("where the browser cannot compute a checksum the file is read by its counts, and that is said", async () => {
  const read = await readBackup(text, { ...schemas, sha256: undefined });
  expect(read).toMatchObject({ ok: true, backup: { isVerified: false } });
  const bare = await writeBackup(noRows, { title: "x", schema: 1, sha256: undefined });
  expect(bare).not.toContain("sha256");
  expect(await readBackup(bare, schemas)).toMatchObject({ ok: true, backup: { isVerified: false } });
});

test("the same rows in another order give the same bytes", async () => {
  const car = (id: string) => ({ id, name: "x", createdAt: 1, updatedAt: 2 });
  const turned = (id: string) => ({ updatedAt: 2, name: "x", createdAt: 1, id });
  const head = { title: "x", schema: 1, sha256: schemas.sha256 };
  const one = await writeBackup({ ...noRows, cars: [car("a"), car("b")] }, head);
  expect(await writeBackup({ ...noRows, cars: [turned("b"), turned("a")] }, head)).toBe(one);
  expect(one).toContain('"madeAt":2');
});

test("a file nested a million deep is refused without a fall", async () => {
  const deep = `${"[".repeat(1_000_000)}${"]".repeat(1_000_000)}`;
  const start =
    '{"kind":"lap-ledger backup","schema":1,"title":"","madeAt":1,"counts":{},"sha256":"x","tables":{"cars":[{"x":';
  expect(await problemOf(`${start}${deep}}]}}`)).toMatch(/checksum|not a complete/);
});

const changed = (change: (file: Record<string, unknown>) => void) => {
  const file = JSON.parse(text) as Record<string, unknown>;
  change(file);
  return JSON.stringify(file);
};

test("counts that are no numbers, or are not there, are refused with the table named", async () => {
  const withCounts = (counts: unknown) => problemOf(changed((file) => Object.assign(file, { counts })));
  const { counts } = JSON.parse(text) as { counts: Record<string, number> };
  for (const cars of [{ toString: 1 }, { valueOf: 1 }, "3", null, 1e308, -1, [2]])
    expect(await withCounts({ ...counts, cars })).toMatch(/how many rows of cars|should hold/);
  const { cars: _, ...others } = counts;
  expect(await withCounts(others)).toContain("does not say how many rows of cars");
  expect(await withCounts({ ...counts, ["x".repeat(1e6)]: 1 })).toHaveLength(
    "This is not a complete Lap Ledger backup: it should hold 1 rows of , it holds 0.".length + 60,
  );
});

test("a checksum that is no text is none to trust", async () => {
  for (const sha256 of [1, null, {}, [], true])
    expect(await problemOf(changed((file) => Object.assign(file, { sha256 })))).toMatch(
      /its checksum is none/,
    );
});

test("an instant no calendar holds is not known, and a title of a million signs is cut", async () => {
  const file = changed((head) =>
    Object.assign(head, { madeAt: Number.MAX_SAFE_INTEGER, title: "🏁".repeat(1e6) }),
  );
  const read = await readBackup(file, schemas);
  expect(read).toMatchObject({ ok: true, backup: { madeAt: 0, title: "🏁".repeat(2000) } });
});

test("whatever the head of a backup holds, it is read or refused with a reason", async () => {
  const fields = ["kind", "schema", "title", "madeAt", "counts", "sha256", "tables", "__proto__"];
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...fields), fc.jsonValue(), async (field, value) => {
      const json = text.replace(/^\{/, `{${JSON.stringify(field)}:${JSON.stringify(value)},`);
      for (const file of [json, changed((head) => Object.assign(head, { [field]: value }))]) {
        const read = await readBackup(file, schemas);
        if (!read.ok) expect(read.problem.wrong).toMatch(/\.$/);
      }
    }),
    { seed: 3, numRuns: 500 },
  );
});
