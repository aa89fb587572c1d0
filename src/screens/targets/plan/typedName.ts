import { type FormReading, type Id, longestName, type Plan, sameName } from "#domain";
import { tooLong } from "#entry";

/** The name of a template as it is being typed. */
export interface TypedName {
  /** The template that gets another name; null where the plan is to be kept. */
  readonly templateId: Id | null;
  readonly name: string;
}

export const blankName: TypedName = { templateId: null, name: "" };

/** Reads a name, or says what is wrong with it: two templates of one name could not be told apart. */
export function readName(
  { templateId, name: text }: TypedName,
  templates: readonly Plan[],
): FormReading<string, "name"> {
  const name = text.trim();
  if (name === "")
    return {
      ok: false,
      problems: { name: { wrong: "Nothing stands there.", right: "Type a name to find it by." } },
    };
  const problem = tooLong(name, longestName);
  if (problem !== undefined) return { ok: false, problems: { name: problem } };
  const twin = templates.find(
    (one) => one.id !== templateId && one.name !== undefined && sameName(one.name, name),
  );
  if (twin !== undefined)
    return {
      ok: false,
      problems: {
        name: {
          wrong: `There is a template “${twin.name}” already.`,
          right: "Type another name, or delete that one.",
        },
      },
    };
  return { ok: true, value: name };
}
