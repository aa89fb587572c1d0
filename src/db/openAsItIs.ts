/** A database by the browser's own means, at the version it stands at; undefined where there is none, and none is made. */
export function openAsItIs(name: string): Promise<IDBDatabase | undefined> {
  return new Promise((resolve, reject) => {
    // Without a version the browser opens it as it is.
    const request = indexedDB.open(name);
    let isNew = false;
    request.onupgradeneeded = () => {
      isNew = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      if (isNew) resolve(undefined);
      else reject(request.error);
    };
  });
}
