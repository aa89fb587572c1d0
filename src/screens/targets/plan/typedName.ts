import { type FormReading, type Id, longestName } from "#domain";

/** The name of a template as it is being typed. */
export interface TypedName {
  /** The template that gets another name; null where the plan is to be kept. */
  readonly templateId: Id | null;
  readonly name: string;
}

export const blankName: TypedName = { templateId: null, name: "" };

/** Reads a name, or says what is wrong with it. */
export function readName({ name: text }: TypedName): FormReading<string, "name"> {
  const name = text.trim();
  if (name === "")
    return {
      ok: false,
      problems: { name: { wrong: "Nothing stands there.", right: "Type a name to find it by." } },
    };
  if (name.length > longestName)
    return {
      ok: false,
      problems: {
        name: { wrong: `${name.length} signs are too many.`, right: `At most ${longestName} are kept.` },
      },
    };
  return { ok: true, value: name };
}
