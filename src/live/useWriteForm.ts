import { useRef } from "react";
import type { Change, Logbook } from "#db";
import { canonicalText, type FormReading } from "#domain";
import { type Form, type Press, type Typed, useForm } from "./useForm.ts";
import { useWrite, type WriteOptions } from "./useWrite.ts";

interface WriteFormOf<T, V, C extends Change> extends WriteOptions {
  readonly typed: Typed<T>;
  readonly reading: FormReading<V, keyof T & string>;
  /** Whether to go on; what has to be asked first, the form then asks. */
  readonly isAgreed?: (value: V, press: Press) => boolean;
  readonly write: (book: Logbook, value: V) => Promise<C>;
  /** What happens once it is stored: the form closes, the focus goes on. */
  readonly onStored?: (change: C) => void;
}

/**
 * A form that stores what it read in one write. What was typed is forgotten only when it is in the book, and only as far
 * as it is: what is typed meanwhile stays. A write that fails leaves everything as it is, and has told the driver.
 */
export function useWriteForm<T extends object, V, C extends Change, E extends HTMLElement = HTMLFormElement>({
  typed,
  reading,
  isAgreed = () => true,
  write,
  onStored,
  ...options
}: WriteFormOf<T, V, C>): Form<T, E> {
  const run = useWrite();
  const now = useRef(typed);
  now.current = typed;
  return useForm<T, V, E>({
    typed,
    reading,
    onRead: async (value, press) => {
      if (!isAgreed(value, press)) return;
      const stored = await run((book) => write(book, value), options);
      if (stored === undefined) return;
      if (canonicalText(now.current.value) === canonicalText(typed.value)) typed.set(undefined);
      onStored?.(stored);
    },
  });
}
