import { beforeEach, expect, it, vi } from "vitest";

const goTo = vi.hoisted(() => vi.fn());
vi.mock("../../../src/state/address.ts", () => ({ goTo }));

const { firstOf, useComparing } = await import("#state/comparing.ts");
const run = (id: string) => ({ kind: "run" as const, id, name: `run ${id}` });
const { choose, forget } = useComparing.getState();
const first = () => useComparing.getState().first;

beforeEach(() => {
  forget();
  goTo.mockClear();
});

it("the first one waits, the second leads to both, and nothing is left chosen", () => {
  choose(run("a"));
  expect([first()?.id, goTo.mock.calls]).toEqual(["a", []]);
  choose(run("b"));
  expect(goTo).toHaveBeenCalledWith({ place: "review", part: "compare", kind: "run", ids: ["a", "b"] });
  expect(first()).toBeUndefined();
});

it("the same one again is let go, and one of another kind takes its place", () => {
  choose(run("a"));
  choose(run("a"));
  expect(first()).toBeUndefined();
  choose(run("a"));
  choose({ kind: "session", id: "s", name: "Sat" });
  expect([first()?.id, goTo.mock.calls]).toEqual(["s", []]);
});

it("a list offers what is of its kind", () => {
  expect(firstOf(run("a"), { kind: "run", id: "b" })).toEqual({ name: "run a", isThis: false });
  expect(firstOf(run("a"), { kind: "session", id: "a" })).toBeUndefined();
});
