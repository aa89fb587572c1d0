/** What a stored value is, for the checks of rows and for the mends of what the app itself wrote. */
export const isText = (value: unknown): value is string => typeof value === "string";

export const isCount = (value: unknown): value is number => Number.isInteger(value) && (value as number) >= 0;

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);
