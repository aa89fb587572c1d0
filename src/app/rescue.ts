/**
 * What stands on the page when the app's own script fails before it has drawn anything: a sentence, and a backup of what is
 * stored, made by a worker that shares no code with what failed. A script of its own, run before the app's; it imports
 * nothing.
 */
window.addEventListener("error", ({ message }) => {
  const root = document.getElementById("root");
  if (root === null || root.hasChildNodes()) return;
  const said = document.createElement("p");
  said.setAttribute("role", "status");
  root.append(
    element("h1", "Lap Ledger cannot begin"),
    element("p", `A part of the app failed: ${message}. What is stored has not been changed.`),
    button("Save a backup", () => saveBackups((text) => said.replaceChildren(text))),
    button("Reload", () => window.location.reload()),
    said,
  );
});

function element<K extends keyof HTMLElementTagNameMap>(tag: K, text: string): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}

function button(name: string, onClick: () => void): HTMLButtonElement {
  const made = element("button", name);
  made.type = "button";
  made.addEventListener("click", onClick);
  return made;
}

/** One file for each logbook of this browser. */
function saveBackups(say: (text: string) => void): void {
  const worker = new Worker(new URL("./rescueWorker.ts", import.meta.url), { type: "module" });
  worker.addEventListener("message", ({ data }: MessageEvent<{ file?: string; text: string }>) => {
    const { file, text } = data;
    if (file === undefined) return say(text);
    const link = element("a", file);
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = file;
    link.click();
    say(`Backup handed to this browser’s downloads as ${file}.`);
  });
  worker.addEventListener("error", ({ message }) =>
    say(`Backup not saved: ${message}. Reload and try again.`),
  );
}
