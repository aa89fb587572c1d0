/**
 * Asks the driver for a file. Resolves with undefined when the dialog is closed without one. Call it from a click.
 * @param accept what the dialog offers, as in the `accept` of a file field: ".json,.gz"
 */
export function pickFile(accept: string): Promise<File | undefined> {
  return new Promise((resolve) => {
    const field = document.createElement("input");
    field.type = "file";
    field.accept = accept;
    field.hidden = true;
    const done = (file: File | undefined) => {
      field.remove();
      resolve(file);
    };
    field.addEventListener("change", () => done(field.files?.[0]));
    field.addEventListener("cancel", () => done(undefined));
    document.body.append(field);
    field.click();
  });
}
