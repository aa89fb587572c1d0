import { focuses, isCalendarDate, remarkKinds, type SearchTerms } from "#domain";

/** Reads what is looked for out of the query of an address; what it does not understand is not asked for. */
export function parseSearch(asked: string): SearchTerms {
  const query = new URLSearchParams(asked);
  const text = (key: string) => query.get(key) || undefined;
  const date = (key: string) => {
    const value = query.get(key) ?? "";
    return isCalendarDate(value) ? value : undefined;
  };
  const time = (key: string) => {
    const value = query.get(key) ?? "";
    return /^\d{1,8}$/.test(value) ? Number(value) : undefined;
  };
  const found = {
    words: text("words"),
    remark: remarkKinds.find(({ kind }) => kind === query.get("remark"))?.kind,
    focus: focuses.find(({ focus }) => focus === query.get("focus"))?.focus,
    tyres: text("tyres"),
    from: date("from"),
    to: date("to"),
    shortest: time("shortest"),
    longest: time("longest"),
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined));
}

/** What is looked for as the query of an address; "" where nothing is. */
export function printSearch(terms: SearchTerms): string {
  const query = new URLSearchParams();
  for (const [key, value] of Object.entries(terms)) if (value !== undefined) query.set(key, String(value));
  return query.toString();
}
