import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { pack, readText } from "#files";

const fileOf = (...bytes: readonly number[]) => new Blob([Uint8Array.from(bytes)]);
const wrongIn = async (file: Blob, limits = {}) => {
  const read = await readText(file, limits);
  return read.ok ? undefined : read.problem.wrong;
};

test("a text in UTF-8 is read as it is, packed or not", async () => {
  const whole = { ok: true, text: "Märlow 走", encoding: "UTF-8", broken: 0 };
  expect(await readText(new Blob(["Märlow 走"]))).toEqual(whole);
  expect(await readText(new Blob([await pack("Märlow 走")]))).toEqual(whole);
  expect(await readText(new Blob([]))).toMatchObject({ ok: true, text: "" });
});

test("a photo, a picture and a packed folder are refused by name", async () => {
  expect(await wrongIn(fileOf(0xff, 0xd8, 0xff, 0xe0))).toBe("This file is a photo (JPEG).");
  expect(await wrongIn(fileOf(0x89, 0x50, 0x4e, 0x47, 13))).toBe("This file is a picture (PNG).");
  expect(await wrongIn(fileOf(0x50, 0x4b, 0x03, 0x04))).toBe("This file is a packed folder (ZIP).");
  expect(await wrongIn(fileOf(0xc3, 0x28, 0x41))).toBe("This file is not text in UTF-8.");
});

test("UTF-16 is refused by name in a backup and read in a table", async () => {
  for (const file of [fileOf(0xff, 0xfe, 0x31, 0), fileOf(0xfe, 0xff, 0, 0x31), fileOf(0x31, 0, 0x32, 0)]) {
    expect(await wrongIn(file)).toContain("UTF-16");
    expect((await readText(file, { mayBeOld: true })) as object).toMatchObject({ ok: true });
  }
  expect(await readText(fileOf(0xff, 0xfe, 0x31, 0), { mayBeOld: true })).toEqual({
    ok: true,
    text: "1",
    encoding: "UTF-16",
    broken: 0,
  });
});

test("a table in Windows-1252 is read where that is allowed", async () => {
  expect(await readText(fileOf(0x4d, 0xe4, 0x72), { mayBeOld: true })).toEqual({
    ok: true,
    text: "Mär",
    encoding: "Windows-1252",
    broken: 0,
  });
  expect(await readText(fileOf(0x4d, 0xe4, 0x81), { mayBeOld: true })).toMatchObject({ broken: 1 });
});

test("UTF-8 with a broken byte stays UTF-8, and the broken signs are counted", async () => {
  const bytes = [...new TextEncoder().encode("Märlow Fén"), 0xc3, 0x2c];
  expect(await readText(fileOf(...bytes), { mayBeOld: true })).toEqual({
    ok: true,
    text: "Märlow Fén\uFFFD,",
    encoding: "UTF-8",
    broken: 1,
  });
});

test("a packed file that grows without end is stopped", async () => {
  const bomb = new Blob([Uint8Array.from(gzipSync(Buffer.alloc(20_000_000)))]);
  expect(bomb.size).toBeLessThan(25_000);
  expect(await wrongIn(bomb, { mostBytes: 5_000_000 })).toContain(
    "larger than 5 MB: too large to be a logbook",
  );
  expect(await wrongIn(new Blob(["x".repeat(101)]), { mostBytes: 100 })).toContain("too large");
});

test("a packed file cut short is said to be damaged", async () => {
  const packed = gzipSync(Buffer.from("lap ".repeat(1000)));
  expect(await wrongIn(new Blob([Uint8Array.from(packed.subarray(0, packed.length / 2))]))).toContain(
    "not complete",
  );
});
