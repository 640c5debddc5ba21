/** Text and tables as HTML: whatever a person typed stays text. */

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** For text and for quoted attributes. */
export function escaped(text: string): string {
  return text.replaceAll(/[&<>"']/g, (character) => ENTITIES[character]);
}

export function paragraph(text: string): string {
  return `<p>${escaped(text)}</p>`;
}

export function list(items: readonly string[], kind: 'ul' | 'ol' = 'ul', styled?: string): string {
  const open = styled === undefined ? kind : `${kind} class="${styled}"`;
  return items.length === 0 ? '' : `<${open}>${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</${kind}>`;
}

/** @param numbers Columns set flush right. */
export function htmlTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  numbers: readonly number[] = [],
): string {
  const cell = (tag: 'td' | 'th', text: string, column: number): string =>
    `<${tag}${tag === 'th' ? ' scope="col"' : ''}${numbers.includes(column) ? ' class="number"' : ''}>` +
    `${escaped(text)}</${tag}>`;
  const row = (tag: 'td' | 'th', cells: readonly string[]): string =>
    `<tr>${cells.map((text, column) => cell(tag, text, column)).join('')}</tr>`;
  return (
    `<table><thead>${row('th', head)}</thead><tbody>${rows.map((cells) => row('td', cells)).join('')}` +
    `</tbody></table>`
  );
}

/** @param parts HTML. */
export function section(id: string, title: string, parts: readonly string[]): string {
  return `<section id="${escaped(id)}"><h2>${escaped(title)}</h2>${parts.join('')}</section>`;
}
