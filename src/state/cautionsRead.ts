import { useDevice } from "./device.ts";

/** Whether a caution has been read on this device, and the way to note that it was. */
export function useCautionRead(name: string): { readonly isRead: boolean; readonly onRead: () => void } {
  const isRead = useDevice(({ cautionsRead = [] }) => cautionsRead.includes(name));
  const change = useDevice((device) => device.change);
  const onRead = () =>
    change(({ cautionsRead = [] }) => ({ cautionsRead: [...new Set([...cautionsRead, name])] }));
  return { isRead, onRead };
}
