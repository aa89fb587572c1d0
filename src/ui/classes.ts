/** Joins the class names that are there: `classes(styles["row"], isSoft && styles["soft"])`. */
export function classes(...names: (string | false | undefined)[]): string {
  return names.filter((name) => typeof name === "string" && name !== "").join(" ");
}
