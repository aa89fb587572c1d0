const minute = 60_000;

/** Looks every minute, and whenever the page is looked at again: time passes, and devices travel, while it stands open. */
export function eachMinute(look: () => void): () => void {
  const timer = setInterval(look, minute);
  document.addEventListener("visibilitychange", look);
  return () => {
    clearInterval(timer);
    document.removeEventListener("visibilitychange", look);
  };
}
