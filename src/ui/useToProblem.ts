import { type RefObject, useEffect, useRef, useState } from "react";

/** When a form is refused, the focus goes to its first field that is wrong. */
export function useToProblem(): {
  readonly form: RefObject<HTMLFormElement | null>;
  readonly toProblem: () => void;
} {
  const form = useRef<HTMLFormElement>(null);
  const [refusals, setRefusals] = useState(0);
  useEffect(() => {
    if (refusals > 0) form.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [refusals]);
  return { form, toProblem: () => setRefusals((count) => count + 1) };
}
