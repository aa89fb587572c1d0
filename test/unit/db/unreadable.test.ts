import { expect, test } from "vitest";
import { asideRow } from "#domain";
import { makeStatus } from "../../../src/db/status.ts";
import { makeUnreadable } from "../../../src/db/unreadable.ts";

const row = (id: string, table = "cars") => ({ table, id });
const aside = asideRow("cars", { name: 7 }, "name: not a text", 3);

/** A list, and how often its listener was told. */
function listened() {
  const source = makeUnreadable();
  const told = { times: 0 };
  const end = source.subscribe(() => {
    told.times += 1;
  });
  return { source, told, end };
}

test("rows are noted in the order in which they were found, each once, and listeners told of new ones", () => {
  const { source, told } = listened();
  expect(source.get()).toEqual([]);
  source.note([row("a"), row("b")]);
  source.note([row("b"), row("c")]);
  expect(source.get()).toEqual([row("a"), row("b"), row("c")]);
  expect(told.times).toBe(2);
});

test("the list is the same one until there are more, and nobody is told of what is known", () => {
  const { source, told } = listened();
  source.note([row("a")]);
  const list = source.get();
  source.note([row("a")]);
  source.note([]);
  expect(source.get()).toBe(list);
  expect(told.times).toBe(1);
});

test("rows of one id are told apart by their table, and by what they hold", () => {
  const { source } = listened();
  const held = { ...row("a"), aside, key: "a" };
  const rows = [row("a"), row("a", "tracks"), held, { ...held, aside: { ...aside, id: "other" } }];
  source.note(rows);
  expect(source.get()).toEqual(rows);
});

test("what was dealt with is struck out, and is noted again when it is found again", () => {
  const { source, told } = listened();
  source.note([row("a"), row("b")]);
  source.forget([row("a"), row("unknown")]);
  expect(source.get()).toEqual([row("b")]);
  expect(told.times).toBe(2);
  source.forget([row("a")]);
  expect(told.times).toBe(2);
  source.note([row("a")]);
  expect(source.get()).toEqual([row("b"), row("a")]);
});

test("who has ended to listen is told no more", () => {
  const { source, told, end } = listened();
  end();
  source.note([row("a")]);
  expect(told.times).toBe(0);
});

test("a logbook's status begins as ok, and listeners are told of each change and of no repetition", () => {
  const status = makeStatus();
  const seen: string[] = [];
  const end = status.subscribe(() => seen.push(status.get().kind));
  expect(status.get()).toEqual({ kind: "ok" });
  status.set("ok");
  status.set("blocked");
  status.set("blocked");
  status.set("gone");
  expect(seen).toEqual(["blocked", "gone"]);
  end();
  status.set("ok");
  expect(seen).toHaveLength(2);
  expect(status.get()).toEqual({ kind: "ok" });
});
