import { create } from "zustand";

/** Set when the driver has confirmed that everything is to be erased; the app then shows nothing else. */
export const useErasing = create<{ readonly isAsked: boolean }>(() => ({ isAsked: false }));
