import { expect, test } from "vitest";
import { browserSha256 } from "#files";

test("the checksum of “abc” is the example of FIPS 180-2, appendix B.1 (from memory)", async () => {
  expect(await browserSha256()?.("abc")).toBe(
    "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});
