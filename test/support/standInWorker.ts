import { vi } from "vitest";

/** A worker that does nothing by itself: a test reads what it was sent and answers in its place. */
export class StandInWorker {
  static made: StandInWorker[] = [];
  onmessage: ((event: { readonly data: unknown }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  readonly sent: Record<string, unknown>[] = [];
  isEnded = false;
  readonly script: string;
  readonly options: WorkerOptions | undefined;

  constructor(script: URL | string, options?: WorkerOptions) {
    this.script = String(script);
    this.options = options;
    StandInWorker.made.push(this);
  }
  postMessage(message: Record<string, unknown>): void {
    this.sent.push(structuredClone(message));
  }
  terminate(): void {
    this.isEnded = true;
  }
  /** What the script would post. */
  say(message: object): void {
    this.onmessage?.({ data: message });
  }
  /** The script fails as a whole. */
  fail(message: string): void {
    this.onerror?.({ message });
  }
}

/** Puts stand-ins in the place of the browser's workers; gives those made since. */
export function standInWorkers(): readonly StandInWorker[] {
  StandInWorker.made = [];
  vi.stubGlobal("Worker", StandInWorker);
  return StandInWorker.made;
}
