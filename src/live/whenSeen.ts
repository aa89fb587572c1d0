/** Calls back whenever the driver comes to this page from elsewhere. Returns the function that ends it. */
export function whenSeen(tell: () => void): () => void {
  const see = () => {
    if (document.visibilityState === "visible") tell();
  };
  window.addEventListener("focus", see);
  document.addEventListener("visibilitychange", see);
  return () => {
    window.removeEventListener("focus", see);
    document.removeEventListener("visibilitychange", see);
  };
}
