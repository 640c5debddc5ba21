/** Ties each number to the unit after it, for columns so narrow that they would part. */
export function tied(text: string): string {
  return text.replaceAll(/(\d) (?=\S)/g, '$1\u00a0');
}
