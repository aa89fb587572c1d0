/** A number of things typed into a field: empty is none; anything else must be a whole number from 0 or 1 up. */
export type WholeNumber =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly problem: string };

/**
 * Reads a whole number typed into a field.
 * @param name the field's label, for the message
 */
export function wholeNumber(text: string, name: string, most: number): WholeNumber {
  const trimmed = text.trim();
  if (trimmed === "") return { ok: true, value: undefined };
  if (!/^\d{1,6}$/.test(trimmed) || Number(trimmed) > most)
    return {
      ok: false,
      problem: `${name}: “${trimmed.slice(0, 40)}” is not a whole number up to ${most}. Write it in digits, for example 8.`,
    };
  return { ok: true, value: Number(trimmed) };
}
