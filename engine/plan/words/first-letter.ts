/** Made large: a sentence that begins with what stands inside others. */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Made small: what begins a sentence elsewhere, inside one. */
export function uncapital(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}
