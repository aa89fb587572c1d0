import { type RefObject, useEffect, useRef, useState } from "react";
import type { FieldProblem, FormReading } from "#domain";

/** What is typed into a form: kept beside the logbook (`useDraft`), or only as long as it is open (`useTyped`). */
export interface Typed<T> {
  readonly value: T;
  /** Undefined goes back to what stands there where nothing is typed. */
  readonly set: (value: T | undefined) => void;
}

/** What a field is given: its text, and the problem it shows. */
export interface FormField<V> {
  readonly value: V;
  readonly onChange: (value: V) => void;
  readonly problem: FieldProblem | undefined;
}

/** A press of the button, or Enter. */
export interface Press {
  readonly timeStamp: number;
  readonly preventDefault: () => void;
}

export interface Form<T, E extends HTMLElement> {
  /** The element around all fields. */
  readonly box: RefObject<E | null>;
  readonly texts: T;
  readonly set: (patch: Partial<T>) => void;
  readonly field: <K extends keyof T & string>(key: K) => FormField<T[K]>;
  /** It was pressed with something wrong in it, and that has not been mended since. */
  readonly isRefused: boolean;
  /** What it was pressed for is not over: another press does nothing. */
  readonly isBusy: boolean;
  readonly submit: (press: Press) => void;
}

interface FormOf<T, V> {
  readonly typed: Typed<T>;
  /** What the texts mean. */
  readonly reading: FormReading<V, keyof T & string>;
  /** What the form is for. */
  readonly onRead: (value: V, press: Press) => void | Promise<void>;
}

/**
 * The one way of a form: it is pressed, read, and does what it is for, or is refused. Then each problem is shown at its
 * field, as long as it is there, and the first field that has one gets the focus. No text is ever changed by it.
 */
export function useForm<T extends object, V, E extends HTMLElement = HTMLFormElement>({
  typed,
  reading,
  onRead,
}: FormOf<T, V>): Form<T, E> {
  const box = useRef<E>(null);
  const isAtWork = useRef(false);
  const [isBusy, setBusy] = useState(false);
  const [isRefused, setRefused] = useState(false);
  const [refusals, setRefusals] = useState(0);
  useEffect(() => {
    if (refusals > 0) box.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [refusals]);

  // Mended, it is as if it had never been pressed: what is typed next is not refused before it is pressed again.
  if (reading.ok && isRefused) setRefused(false);
  const problems: { readonly [K in keyof T & string]?: FieldProblem | undefined } =
    reading.ok || !isRefused ? {} : reading.problems;
  const set = (patch: Partial<T>) => typed.set({ ...typed.value, ...patch });
  const press = async (pressed: Press) => {
    if (isAtWork.current) return;
    if (!reading.ok) {
      setRefused(true);
      setRefusals((count) => count + 1);
      return;
    }
    isAtWork.current = true;
    setBusy(true);
    try {
      await onRead(reading.value, pressed);
    } finally {
      isAtWork.current = false;
      setBusy(false);
    }
  };
  return {
    box,
    texts: typed.value,
    set,
    field: (key) => ({
      value: typed.value[key],
      // The key is one of the texts, so this is a patch of them.
      onChange: (value) => set({ [key]: value } as unknown as Partial<T>),
      problem: problems[key],
    }),
    isRefused,
    isBusy,
    submit: (pressed) => {
      pressed.preventDefault();
      void press(pressed);
    },
  };
}

/**
 * Texts of a form that nothing is lost with: they last as long as it is open.
 * @param start what stands there when it opens, and again once they are forgotten
 */
export function useTyped<T extends object>(start: T): Typed<T> {
  const [first] = useState(start);
  const [value, setValue] = useState(first);
  return { value, set: (next = first) => setValue(next) };
}
