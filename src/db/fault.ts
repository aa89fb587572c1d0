/** What went wrong with the book, for code to decide on; the message is for the driver. */
export type FaultCode =
  | "newer"
  | "newerTab"
  | "gone"
  | "closed"
  | "quota"
  | "refused"
  | "missing"
  /** A row is there and the browser cannot read it. */
  | "unreadable"
  | "invalid"
  | "cancelled"
  | "failed";

/** A fault of the book: thrown, never swallowed. `message` says in plain words what was not done and what helps. */
export class LedgerFault extends Error {
  readonly code: FaultCode;

  constructor(code: FaultCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? {} : { cause });
    this.name = "LedgerFault";
    this.code = code;
  }
}

/** Names of an error and of those inside it: a full disk comes as AbortError with the true one in `inner`. */
function namesOf(error: unknown): string[] {
  const names: string[] = [];
  for (let e = error; typeof e === "object" && e !== null && names.length < 8; ) {
    const { name, inner, cause } = e as { name?: unknown; inner?: unknown; cause?: unknown };
    if (typeof name === "string") names.push(name);
    e = inner ?? cause;
  }
  return names;
}

/** Whether an error is that of a connection the browser has lost, as phones do with a page in the background. */
export function isLostConnection(error: unknown): boolean {
  return namesOf(error).some((name) => name === "InvalidStateError" || name === "UnknownError");
}

const ofOneValue = new Set(["UnknownError", "NotReadableError", "DataError"]);

/** Whether an error may be that of a value the browser holds and cannot read, by the names browsers give it. */
export function mayBeUnreadable(error: unknown): boolean {
  return namesOf(error).some((name) => ofOneValue.has(name));
}

const sentences: readonly (readonly [string, FaultCode, string])[] = [
  [
    "QuotaExceededError",
    "quota",
    "this browser has no space left for it. Save a backup to a file, make room, then try again.",
  ],
  [
    "SecurityError",
    "refused",
    "this browser does not let the page store anything. Allow site data for this address, then reload.",
  ],
  [
    "MissingAPIError",
    "refused",
    "this browser offers no database to pages. A current version of it does; private windows may not.",
  ],
  [
    "DatabaseClosedError",
    "closed",
    "the logbook is closed in this tab. Reload the page; typed text is kept.",
  ],
  [
    "InvalidStateError",
    "closed",
    "the browser lost its connection to the logbook. Reload the page; typed text is kept.",
  ],
  ["UnknownError", "closed", "the browser could not reach the logbook. Reload the page; typed text is kept."],
];

/**
 * Any error as a LedgerFault.
 * @param what what was not done, in past tense words with a capital: "Lap not stored"
 * @param reason what else is known of the reason: the error of the transaction
 */
export function faultOf(error: unknown, what: string, reason?: unknown): LedgerFault {
  if (error instanceof LedgerFault) return error;
  const names = [...namesOf(error), ...namesOf(reason)];
  const inside =
    typeof error === "object" && error !== null ? (error as { inner?: unknown }).inner : undefined;
  if (inside instanceof LedgerFault) return inside;
  for (const [name, code, sentence] of sentences)
    if (names.includes(name)) return new LedgerFault(code, `${what}: ${sentence}`, error);
  return new LedgerFault(
    "failed",
    `${what}: the browser's database gave up (${names[0] ?? "no reason given"}). Nothing was changed; try again.`,
    error,
  );
}

/**
 * Whether an error is that of a logbook that is closed: it was left for another one meanwhile, and nobody waits for the
 * answer, or the browser lost it, which the page says by itself.
 */
export function isClosed(error: unknown): boolean {
  return namesOf(error).includes("DatabaseClosedError");
}
