import { act, screen, waitFor } from "@testing-library/react";
import { useEffect, useState } from "react";
import { expect, it } from "vitest";
import { useNotices } from "#state/notices.ts";
import { renderAt } from "../../support/renderAt.tsx";

const page = (
  <>
    <h1 tabIndex={-1}>Targets</h1>
    <Archived />
    <input aria-label="Entry" />
    <form>
      <label>
        Width <input />
      </label>
    </form>
  </>
);

function Archived() {
  const [isThere, setThere] = useState(true);
  useEffect(() => {
    const onUndo = () => setThere(false);
    window.addEventListener("undone", onUndo);
    return () => window.removeEventListener("undone", onUndo);
  }, []);
  return isThere ? <button type="button">Archive</button> : null;
}

async function say(kind: "done" | "fault", run: () => void = () => undefined, offers = ["Undo"]) {
  act(() => {
    const actions = offers.map((name) => ({ name, run }));
    useNotices.getState().say({ kind, text: `It is ${kind}.`, actions });
  });
  await screen.findByText(`It is ${kind}.`, { selector: "p" });
}

function go(hash: string) {
  act(() => {
    window.location.hash = hash;
    window.dispatchEvent(new HashChangeEvent("hashchange"));
  });
}

it("what was done is not said any more in another place, but for what the way there has done; what went wrong is", async () => {
  const { user } = await renderAt("#/targets", page);
  await screen.findByRole("heading");
  await say("fault");
  await say("done", undefined, []);
  await user.keyboard("{Tab}");
  go("#/targets/01890000-0000-7000-8000-000000000000");
  expect(screen.getAllByText("It is done.", { selector: "p" })).toHaveLength(1);
  go("#/rig");
  await waitFor(() => expect(screen.queryByText("It is done.", { selector: "p" })).toBeNull());
  expect(screen.getByText("It is fault.", { selector: "p" })).toBeVisible();
  await user.keyboard("{Tab}");
  await say("done");
  go("#/targets");
  expect(screen.getByText("It is done.", { selector: "p" })).toBeVisible();
  await user.keyboard("{Tab}");
  go("#/rig");
  await waitFor(() => expect(screen.queryByText("It is done.", { selector: "p" })).toBeNull());
});

it("what the way to a place has done is not said in the next one, also where no press leads there", async () => {
  const { user } = await renderAt("#/targets", page);
  await screen.findByRole("heading");
  await user.keyboard("{Tab}");
  await say("done");
  go("#/rig");
  expect(screen.getByText("It is done.", { selector: "p" })).toBeVisible();
  go("#/targets");
  await waitFor(() => expect(screen.queryByText("It is done.", { selector: "p" })).toBeNull());
});

it("what was done is not said any more once a form is being filled in; the entry line is no form", async () => {
  const { user } = await renderAt("#/log", page);
  await screen.findByRole("heading");
  await say("done");
  await user.type(screen.getByLabelText("Entry"), "1");
  expect(screen.getByText("It is done.", { selector: "p" })).toBeVisible();
  await user.type(screen.getByLabelText("Width"), "1");
  expect(screen.queryByText("It is done.", { selector: "p" })).toBeNull();
});

it("after Undo the focus is back where it came from, or at the heading if that is gone", async () => {
  const { user } = await renderAt("#/targets", page);
  const archive = await screen.findByRole("button", { name: "Archive" });
  archive.focus();
  await say("done");
  await user.click(screen.getByRole("button", { name: "Undo" }));
  await waitFor(() => expect(archive).toHaveFocus());

  await say("done", () => window.dispatchEvent(new Event("undone")));
  screen.getByRole("button", { name: "Undo" }).focus();
  await user.keyboard("{Enter}");
  await waitFor(() => expect(screen.getByRole("heading")).toHaveFocus());
});
