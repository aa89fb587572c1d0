import { beforeEach, expect, test } from "vitest";
import { type Deed, useUndo } from "#state/undo.ts";

beforeEach(() => useUndo.getState().forget());

/** A deed that says in a list when it is taken back, and can be done again. */
function aDeed(what: string, said: string[]): Deed {
  return {
    what,
    takeBack: async () => {
      said.push(`${what} taken back`);
      return { what, takeBack: async () => aDeed(what, said) };
    },
  };
}

test("what is undone while a write is under way is that write, not the deed before it", async () => {
  const said: string[] = [];
  const { push, follow, undo } = useUndo.getState();
  push(aDeed("lap 4 deleted", said));
  let end: () => void = () => undefined;
  const write = new Promise<void>((resolve) => {
    end = () => {
      push(aDeed("lap 3 deleted", said));
      resolve();
    };
  });
  follow(write);
  const undoing = undo();
  end();
  await undoing;
  expect(said).toEqual(["lap 3 deleted taken back"]);
});

test("a write that fails holds nothing up", async () => {
  const said: string[] = [];
  const { push, follow, undo } = useUndo.getState();
  push(aDeed("lap 1 added", said));
  const failing = Promise.reject(new Error("no space"));
  follow(failing);
  await expect(failing).rejects.toThrow("no space");
  await undo();
  expect(said).toEqual(["lap 1 added taken back"]);
});

test("undone twice and done again twice at once, deeds keep their order", async () => {
  const said: string[] = [];
  const { push, undo, redo } = useUndo.getState();
  for (const what of ["first", "second"]) push(aDeed(what, said));
  await Promise.all([undo(), undo()]);
  expect(said).toEqual(["second taken back", "first taken back"]);
  await Promise.all([redo(), redo()]);
  expect(useUndo.getState().done.map(({ what }) => what)).toEqual(["first", "second"]);
  expect(useUndo.getState().undone).toEqual([]);
});
