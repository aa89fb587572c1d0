/** In the place of the combos driven last until they have been read: on a phone what stands under them waits for it. */
export const LatelyComing = () => <span data-coming />;
