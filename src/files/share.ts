/** Whether this browser offers to hand a file to another app or device. */
export function canShare(file: File): boolean {
  return typeof navigator.canShare === "function" && navigator.canShare({ files: [file] });
}

/**
 * Hands a file to the share sheet of the device. Call it from a click. False when the driver closed the sheet; any
 * other failure is thrown.
 */
export async function shareFile(file: File): Promise<boolean> {
  try {
    await navigator.share({ files: [file], title: file.name });
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return false;
    throw error;
  }
}
