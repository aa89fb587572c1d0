/** How long the browser may take to begin a download before its address is given back. */
const keptFor = 60_000;

/**
 * Hands a file to the browser as a download. What becomes of it (asked where to, stored, refused) is between browser
 * and driver: the page is not told.
 * @param name a name made by `fileName`
 */
export function saveFile(name: string, content: Blob | string, type = "application/json"): void {
  const blob = typeof content === "string" ? new Blob([content], { type }) : content;
  const address = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), keptFor);
}
