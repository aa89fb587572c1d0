/** The heading of the page, where it takes the focus. */
export const pageHeading = () => document.querySelector<HTMLElement>("h1[tabindex]");
