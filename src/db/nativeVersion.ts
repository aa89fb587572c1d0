/**
 * Version number the browser keeps for a database, or undefined where there is none; makes and changes nothing.
 * Asked before Dexie opens it, because Dexie opens a newer database without a word and adds what it misses there.
 */
export function nativeVersion(name: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    let isNew = false;
    request.onupgradeneeded = () => {
      isNew = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => {
      const { version } = request.result;
      request.result.close();
      resolve(version);
    };
    request.onerror = (event) => {
      event.preventDefault();
      if (isNew) resolve(undefined);
      else reject(request.error);
    };
  });
}
