/** What the schema checker found; `requirement` is the bound or the text that was asked for. */
interface Issue {
  readonly type: string;
  readonly message: string;
  readonly expected: string | null;
  readonly received: string;
  readonly requirement?: unknown;
}

const kinds: Readonly<Record<string, string>> = {
  string: "not a text",
  number: "not a number",
  finite: "not a number",
  integer: "not a whole number",
  safe_integer: "not a whole number",
  boolean: "not true or false",
  array: "not a list",
  loose_object: "not made of fields",
};

/** What is wrong with a field, in words a driver knows. Checks of our own bring theirs with them. */
export function sayIssue({ type, message, expected, received, requirement }: Issue): string {
  if (!message.startsWith("Invalid ")) return message;
  if (received === "undefined") return "missing";
  if (type === "picklist" || type === "literal")
    return `none of these: ${(expected ?? "").replace(/[()"]/g, "").replaceAll(" | ", ", ")}`;
  if (type === "min_value") return `below ${requirement}`;
  if (type === "max_value") return `above ${requirement}`;
  if (type === "max_length") return `longer than ${requirement}`;
  return kinds[type] ?? message;
}
