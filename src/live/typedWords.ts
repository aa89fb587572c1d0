/** The words typed into a form, one after the other: "Club hatch · Varnholt Ring". Ids and figures are not among them. */
export function typedWords(value: unknown): string {
  if (typeof value === "string") return value.trim();
  if (typeof value !== "object" || value === null) return "";
  return Object.entries(value)
    .map(([name, one]) => (/^id$|Id$/.test(name) ? "" : typedWords(one)))
    .filter((words) => words !== "")
    .join(" · ");
}
