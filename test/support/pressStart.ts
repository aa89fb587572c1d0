import { screen } from "@testing-library/react";
import { renderLog } from "./logPage.tsx";

/** Log of a browser without a session, in which a start with a target of the day has been typed and pressed. */
export async function pressStart() {
  const { user } = await renderLog(undefined, "#/log", Date.UTC(2026, 11, 2, 18));
  await user.type(await screen.findByRole("combobox", { name: "Car" }), "Kart");
  await user.type(screen.getByRole("combobox", { name: "Track layout" }), "Varnholt Ring");
  await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
  await user.type(screen.getByLabelText("Target of the day"), "1:25.000");
  await user.click(screen.getByRole("button", { name: "Start the session" }));
  return user;
}
