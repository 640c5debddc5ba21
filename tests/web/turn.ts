/** One turn of the event loop: by then whatever waited for a settled promise has run. */
export function turn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
