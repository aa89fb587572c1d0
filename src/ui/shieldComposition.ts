/** What browsers report for a key that an input method has taken. WebKit sends it after the composition has ended. */
const takenByInputMethod = 229;

const belongsToComposition = (event: KeyboardEvent) =>
  event.isComposing || event.keyCode === takenByInputMethod;

/** Escape empties a field of searching and cancels a dialog, Enter sends a form; in a text of many lines it does not. */
const doesMore = ({ key, target }: KeyboardEvent) =>
  key === "Escape" || (key === "Enter" && !(target instanceof HTMLTextAreaElement));

/**
 * Keeps the keys of a composition (an input method's, a dead key's) from every handler below the window, React's
 * included: Enter takes a reading there and Escape leaves it, which is no answer to the page. What such a key sets off by
 * itself, a form sent, a dialog cancelled, does not happen either. The text still arrives: the input method has had the
 * key before the page. Gives what takes the shield away.
 * Source: UI Events (W3C), "Composition Events" and `keyCode` of keys processed by an input method.
 */
export function shieldComposition(page: Window): () => void {
  let isHeld = false;
  const onKey = (event: KeyboardEvent) => {
    const isTaken = belongsToComposition(event);
    isHeld = isTaken && event.type !== "keyup";
    if (!isTaken) return;
    event.stopImmediatePropagation();
    if (doesMore(event)) event.preventDefault();
  };
  const onConsequence = (event: Event) => {
    if (!isHeld) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  // A pointer, or a focus that moves on, begins something new even where an engine never lets the key go.
  const letGo = () => {
    isHeld = false;
  };
  const whileOn = new AbortController();
  const first = { capture: true, signal: whileOn.signal };
  for (const type of ["keydown", "keypress", "keyup"] as const) page.addEventListener(type, onKey, first);
  for (const type of ["submit", "cancel"]) page.addEventListener(type, onConsequence, first);
  for (const type of ["pointerdown", "focusin"]) page.addEventListener(type, letGo, first);
  return () => whileOn.abort();
}
