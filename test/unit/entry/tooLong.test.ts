import { expect, test } from "vitest";
import { tooLong } from "#entry";

test("a text as long as what is kept is taken, a longer one is told by how long it is", () => {
  expect(tooLong("abc", 3)).toBeUndefined();
  expect(tooLong("abcd", 3)).toEqual({ wrong: "4 signs are too many.", right: "At most 3 are kept." });
});
