/** What browsers report for a key that an input method has taken. WebKit sends it after the composition has ended. */
const takenByInputMethod = 229;

const belongsToComposition = (event: KeyboardEvent) =>
  event.isComposing || event.keyCode === takenByInputMethod;

/**
 * Keeps the keys of a composition (an input method's, a dead key's) from every handler below the window, React's
 * included: Enter takes a reading there and Escape leaves it, which is no answer to the page. What such a key sets off by
 * itself, a form sent or a dialog cancelled, does not happen either. The text still arrives. Gives what undoes it.
 * Source: UI Events (W3C), "Composition Events" and `keyCode` of keys processed by an input method.
 */
export function shieldComposition(page: Window): () => void {
  let isHeld = false;
  const onKey = (event: KeyboardEvent) => {
    const isTaken = belongsToComposition(event);
    isHeld = isTaken && event.type !== "keyup";
    if (isTaken) event.stopImmediatePropagation();
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
